import { expect, test } from "vitest";
import { AnswersOfState, Latest } from "../../server/prepared.ts";

/** Makes what it is told to, when it is told to. */
function maker() {
  const made: PromiseWithResolvers<string>[] = [];
  const make = () => {
    const one = Promise.withResolvers<string>();
    made.push(one);
    return one.promise;
  };
  return { made, make };
}

test("what takes long is answered as it was while it is made anew, once, and then as it is", async () => {
  const [latest, { made, make }] = [new Latest<string>(), maker()];
  const first = latest.get("1", make, true);
  expect(latest.get("1", make, true)).toBe(first);
  made[0]?.resolve("one");
  expect(await first).toBe("one");
  // The making took no time to speak of, so the rest after it is short.
  await new Promise((done) => setTimeout(done, 50));
  expect(await latest.get("2", make, true)).toBe("one");
  expect(await latest.get("3", make, true)).toBe("one");
  expect(made).toHaveLength(2);
  made[1]?.resolve("two");
  await Promise.resolve();
  await expect.poll(() => latest.get("2", make, true)).toBe("two");
  expect(made).toHaveLength(2);
});

test("where nothing may be old everybody waits for the newest", async () => {
  const [latest, { made, make }] = [new Latest<string>(), maker()];
  latest.get("1", make);
  made[0]?.resolve("one");
  const second = latest.get("2", make);
  made[1]?.resolve("two");
  expect(await second).toBe("two");
});

test("what is forgotten is answered to nobody, neither what was made nor what was being made; a failure neither", async () => {
  const [latest, { made, make }] = [new Latest<string>(), maker()];
  latest.get("1", make, true);
  made[0]?.resolve("with what was withdrawn");
  await new Promise((done) => setTimeout(done, 50));
  void latest.get("2", make, true);
  latest.forget();
  const after = latest.get("3", make, true);
  made[1]?.resolve("with it, too");
  made[2]?.resolve("without");
  expect(await after).toBe("without");
  expect(await latest.get("3", make, true)).toBe("without");
  await new Promise((done) => setTimeout(done, 50));
  void latest.get("4", make, true);
  made[3]?.reject(new Error("ended"));
  await new Promise((done) => setTimeout(done));
  const again = latest.get("4", make, true);
  made[4]?.resolve("again");
  expect(await again).toBe("again");
});

test("an answer is kept for its question and state, and not what was made before something was withdrawn", async () => {
  const [answers, { made, make }] = [new AnswersOfState(), maker()];
  const first = answers.get("1", "5 kW", make);
  made[0]?.resolve("one");
  expect([await first, await answers.get("1", "5 kW", make)]).toEqual(["one", "one"]);
  const other = answers.get("1", "2 kW", make);
  answers.forget();
  made[1]?.resolve("with a tune that is gone");
  await other;
  const again = answers.get("2", "2 kW", make);
  made[2]?.resolve("without it");
  expect(await again).toBe("without it");
  expect(made).toHaveLength(3);
});

test("of many questions the last few are kept", async () => {
  const answers = new AnswersOfState();
  let made = 0;
  const ask = (n: number) => answers.get("1", `${n} kW`, async () => `${++made}`);
  for (let n = 0; n < 20; n++) await ask(n);
  await ask(19);
  expect(made).toBe(20);
  await ask(0);
  expect(made).toBe(21);
});
