import type { StewardVerdict } from "../../model/steward-reasons.ts";

/** What a single key asks for. */
export type Asked =
  | { do: "move"; by: 1 | -1 }
  | { do: "choose"; verdict: StewardVerdict }
  | { do: "reason"; number: number }
  | { do: "words" | "select" | "undo" | "owner" | "without" | "cancel" };

/** All keys, as they are listed: the same list says what they do. */
export const KEYS = {
  next: ["j", "↓"],
  previous: ["k", "↑"],
  accept: ["a"],
  hold: ["h"],
  remove: ["r"],
  digit: ["1", "2", "3", "4"],
  words: ["0"],
  select: ["x"],
  undo: ["u"],
  owner: ["o"],
  without: ["w"],
  cancel: ["Esc"],
} as const;

const ASKED: Record<string, Asked> = {
  j: { do: "move", by: 1 },
  arrowdown: { do: "move", by: 1 },
  k: { do: "move", by: -1 },
  arrowup: { do: "move", by: -1 },
  a: { do: "choose", verdict: "accepted" },
  h: { do: "choose", verdict: "held" },
  r: { do: "choose", verdict: "removed" },
  x: { do: "select" },
  u: { do: "undo" },
  o: { do: "owner" },
  w: { do: "without" },
};

/** A key as the browser tells it. */
export type Pressed = Pick<KeyboardEvent, "key" | "ctrlKey" | "metaKey" | "altKey" | "isComposing">;

/**
 * What a key asks for; nothing with a modifier, which is the browser's or the system's.
 * @param choosing whether a reason is being chosen: then digits choose one, and all else but leaving waits
 */
export function askedBy(pressed: Pressed, choosing: boolean): Asked | null {
  if (pressed.ctrlKey || pressed.metaKey || pressed.altKey || pressed.isComposing) return null;
  const key = pressed.key.toLowerCase();
  if (!choosing) return ASKED[key] ?? null;
  if (key === "escape") return { do: "cancel" };
  if (key === "0") return { do: "words" };
  return /^[1-9]$/.test(key) ? { do: "reason", number: Number(key) } : null;
}

/** Kinds of input that no letter is typed into. */
const NO_TEXT = ["checkbox", "radio", "button", "submit"];

/** Whether somebody types where the key went, or moves within something that has arrow keys of its own. */
export function isTakenBy(target: EventTarget | null, key: string): boolean {
  if (!(target instanceof Element)) return false;
  if (target instanceof HTMLElement && target.isContentEditable) return true;
  const field = target.closest("input, textarea, select");
  if (field) return !(field instanceof HTMLInputElement && NO_TEXT.includes(field.type));
  return key.startsWith("Arrow") && target.closest(".scrolls") !== null;
}
