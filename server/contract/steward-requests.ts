import { z } from "zod";
import { TUNES_AT_ONCE } from "../../db/steward.ts";
import {
  STEWARD_VERDICTS,
  type StewardVerdict,
  USUAL_REASONS,
} from "../../model/steward-reasons.ts";
import { fromText } from "./from-text.ts";

/** What the steward's routes take. */

/** Tunes, decisions or new contributors a page, unless told otherwise. */
export const PAGE = 20;
const page = {
  after: fromText(
    z
      .number({ error: "After is the number that the page before gave as next." })
      .int("After is a whole number.")
      .min(0, "After is at least 0.")
      .optional()
      .describe("The next of the page before"),
  ),
  limit: fromText(
    z
      .number({ error: "Limit must be a number." })
      .int("Limit is a whole number.")
      .min(1, "Limit is at least 1.")
      .max(TUNES_AT_ONCE, `Limit is at most ${TUNES_AT_ONCE}.`)
      .optional()
      .describe(`${PAGE} unless given`),
  ),
};

export const heldQuery = z.strictObject({
  undecided: z
    .enum(["true", "false"], { error: "Undecided is true or false." })
    .optional()
    .describe("true: only those on which no decision of a steward is in force"),
  ...page,
});

const MANY = `Give 1 to ${TUNES_AT_ONCE} ids of tunes.`;
const PSEUDONYM = "A contributor is 16 characters, 0 to 9 and a to f.";

/** As many ids as an address may have. */
const IN_ADDRESS = 60;

export const tunesQuery = z
  .strictObject({
    contributor: z
      .string()
      .regex(/^[0-9a-f]{16}$/, PSEUDONYM)
      .optional()
      .describe("Pseudonym"),
    ids: z
      .string()
      .regex(
        new RegExp(`^[0-9A-Za-z]{1,64}(,[0-9A-Za-z]{1,64}){0,${IN_ADDRESS - 1}}$`),
        `Ids are separated by commas, at most ${IN_ADDRESS} of them.`,
      )
      .optional()
      .describe(`Separated by commas, at most ${IN_ADDRESS}`),
  })
  .refine(({ contributor, ids }) => (contributor === undefined) !== (ids === undefined), {
    path: ["ids"],
    message: "Give either ids or a contributor.",
  });

export const waitingQuery = z.strictObject({
  after: z
    .string()
    .regex(/^[01]\.\d{4}-\d{2}-\d{2}\.[0-9a-f]{16}$/, "After is what the page before gave as next.")
    .optional()
    .describe("The next of the page before"),
  limit: page.limit,
});

export const trailQuery = z.strictObject({
  tune: z.string().min(1, "Give the id of a tune.").max(64, "An id is shorter.").optional(),
  by: z
    .enum(["screening", "fit", "waiting", "steward", "contributor"], {
      error: 'By is "screening", "fit", "waiting", "steward" or "contributor".',
    })
    .optional(),
  ...page,
});

/** A missing value is told from a wrong one by its sentence. */
const asked = (what: string, otherwise: string) => ({
  error: (issue: { input?: unknown }) =>
    issue.input === undefined ? `${what} is missing. ${otherwise}` : `${what}: ${otherwise}`,
});
const REASON = "Say in 3 to 300 characters why; the tune's contributor reads it.";

const reason = z.string(asked("Reason", REASON)).trim().min(3, REASON).max(300, REASON);

const ids = z
  .array(z.string({ error: MANY }).min(1, MANY).max(64, MANY), asked("Tunes", MANY))
  .min(1, MANY)
  .max(TUNES_AT_ONCE, MANY);

const codes = (verdict: StewardVerdict) => Object.keys(USUAL_REASONS[verdict]);
const usual = STEWARD_VERDICTS.flatMap(codes);

export const decisionBody = z
  .strictObject(
    {
      tunes: ids,
      verdict: z.enum(STEWARD_VERDICTS, asked("Verdict", 'Give "accepted", "held" or "removed".')),
      reason: reason.optional().describe("In words; their contributors read it"),
      usual_reason: z
        .enum(usual, { error: "This is no usual reason. Give the reason in words instead." })
        .optional()
        .describe("In place of a reason: one that owners read in their own language"),
    },
    asked("The decision", "Give an object with tunes, verdict and reason."),
  )
  .refine(({ reason, usual_reason }) => reason !== undefined || usual_reason !== undefined, {
    path: ["reason"],
    message: `Reason is missing. ${REASON}`,
    // Also where another field is wrong: all that is to be put right is named at once.
    when: ({ value }) => typeof value === "object" && value !== null && !Array.isArray(value),
  })
  .refine(({ reason, usual_reason }) => reason === undefined || usual_reason === undefined, {
    path: ["reason"],
    message: "Give a reason or a usual reason, not both.",
  })
  .refine(
    ({ verdict, usual_reason }) =>
      usual_reason === undefined || codes(verdict).includes(usual_reason),
    { path: ["usual_reason"], message: "This is no usual reason for that verdict." },
  );

const NUMBERS = `Give 1 to ${TUNES_AT_ONCE} numbers of decisions.`;
export const undoBody = z.strictObject(
  {
    decisions: z
      .array(z.int({ error: NUMBERS }).min(1, NUMBERS), asked("Decisions", NUMBERS))
      .min(1, NUMBERS)
      .max(TUNES_AT_ONCE, NUMBERS),
  },
  asked("What is to be undone", "Give an object with decisions."),
);

export const withoutBody = z.strictObject(
  { tunes: ids },
  asked("What is to be left out", "Give an object with tunes."),
);

export const reasonBody = z.strictObject(
  { reason },
  asked("The decision", "Give an object with a reason."),
);
