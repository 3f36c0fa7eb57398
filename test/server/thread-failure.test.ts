import { expect, test } from "vitest";
import { StorageBusy, StorageFull, troubleOf } from "../../db/storage-trouble.ts";
import { errorOf, failureOf } from "../../server/thread-failure.ts";

/** As one thread hands it to another. */
const carried = (error: unknown) => errorOf(structuredClone(failureOf(error)));
const ofSystem = (code: string) => Object.assign(new Error("The system's."), { code });

test.each([
  ["ENOSPC", ofSystem("ENOSPC"), "full"],
  ["EDQUOT", ofSystem("EDQUOT"), "full"],
  ["EIO", ofSystem("EIO"), "failing"],
  ["EROFS", ofSystem("EROFS"), "failing"],
  ["a full database", new Error("The library's.", { cause: new StorageFull() }), "full"],
  ["a held one", new Error("The library's.", { cause: new StorageBusy(new Error()) }), "busy"],
])("%s is the same trouble in the thread that answers", (_, error, trouble) => {
  expect(troubleOf(carried(error))).toBe(trouble);
});

test("what is nothing of the storage's stays what it was, without what wraps it", () => {
  const error = new Error("Tune 17 failed.", { cause: new RangeError("It must be positive.") });
  expect(carried(error)).toEqual(new RangeError("It must be positive."));
  expect(troubleOf(carried(error))).toBeUndefined();
});
