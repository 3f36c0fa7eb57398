import { expect, test } from "vitest";
import { askedBy, KEYS, type Pressed } from "../../client/steward/shortcuts.ts";
import { USUAL_REASONS } from "../../model/steward-reasons.ts";

const pressed = (key: string, of: Partial<Pressed> = {}): Pressed => ({
  ...{ key, ctrlKey: false, metaKey: false, altKey: false, isComposing: false },
  ...of,
});
/** As a browser names them. */
const NAMES: Record<string, string> = { "↓": "ArrowDown", "↑": "ArrowUp", Esc: "Escape" };

test("every key that is listed does something, and no other letter does", () => {
  const listed = Object.values(KEYS).flat();
  expect(new Set(listed).size).toBe(listed.length);
  for (const key of listed) {
    const asked = [false, true].map((choosing) => askedBy(pressed(NAMES[key] ?? key), choosing));
    expect(asked.filter(Boolean), key).toHaveLength(1);
  }
  for (const key of "abcdefghijklmnopqrstuvwxyz") {
    const asked = askedBy(pressed(key), false);
    expect(asked !== null, key).toBe((listed as string[]).includes(key));
  }
});

test("there is a digit for every usual reason", () => {
  for (const reasons of Object.values(USUAL_REASONS)) {
    expect(Object.keys(reasons).length).toBeLessThanOrEqual(KEYS.digit.length);
  }
});

test("capitals are the same keys; what has a modifier is the browser's, what is composed is not whole yet", () => {
  expect(askedBy(pressed("A"), false)).toEqual({ do: "choose", verdict: "accepted" });
  for (const of of [
    { ctrlKey: true },
    { metaKey: true },
    { altKey: true },
    { isComposing: true },
  ]) {
    expect(askedBy(pressed("a", of), false)).toBeNull();
    expect(askedBy(pressed("1", of), true)).toBeNull();
  }
});

test("while a reason is chosen nothing moves on, and no verdict is given by a digit before", () => {
  for (const key of ["j", "k", "a", "h", "r", "u", "x"]) {
    expect(askedBy(pressed(key), true)).toBeNull();
  }
  for (const key of ["1", "0", "Escape"]) expect(askedBy(pressed(key), false)).toBeNull();
});
