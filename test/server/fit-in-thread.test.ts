import { afterEach, expect, test } from "vitest";
import type { FitRow } from "../../model/fit/row.ts";
import { seeded } from "../../seed-demo/random.ts";
import { FitThread } from "../../server/fit-in-thread.ts";
import { fitted } from "../../server/fitted.ts";

const thread = new FitThread();
afterEach(() => thread.close());

function rows(count: number): FitRow[] {
  const random = seeded(3);
  return Array.from({ length: count }, (_, k) => {
    const x = -0.4 * random.uniform();
    return {
      row: k,
      contributor: `owner ${k % Math.ceil(count / 2)}`,
      heat_kW: 5,
      end: "low" as const,
      density_kg_m3: 1.225 * Math.exp(x),
      pump_Hz: 1.1 * Math.exp(0.9 * x + 0.08 * random.normal()),
      fan_rpm: 1650,
    };
  });
}

test("a fit made in the thread is the same, to the last bit, and another after it too", async () => {
  for (const count of [40, 60]) {
    expect(await thread.fit(rows(count), [])).toEqual(fitted(rows(count), []));
  }
});

test("this thread's timers go on while a fit is made", async () => {
  let ticks = 0;
  const timer = setInterval(() => ticks++, 1);
  await thread.fit(rows(3000), []);
  clearInterval(timer);
  expect(ticks).toBeGreaterThan(20);
});

test("a fit that fails says why, and the next one is made", async () => {
  const [first, ...rest] = rows(20) as [FitRow, ...FitRow[]];
  await expect(thread.fit([{ ...first, pump_Hz: Number.NaN }, ...rest], [])).rejects.toThrow(
    "pump_Hz must be a positive number",
  );
  expect((await thread.fit(rows(20), [])).groups).toHaveLength(1);
});
