import { z } from "zod";
import { TUNES_AT_ONCE } from "../db/steward.ts";
import * as answers from "./answers.ts";
import type {
  AlarmsAnswer,
  AuditTrail,
  Counted,
  Decided,
  HeldTune,
  HeldTunes,
  Published,
  RecordedDecision,
  WaitingAnswer,
} from "./contract.ts";
import { fromText } from "./query.ts";

/** What the steward's routes take and answer, for checking and for the API's description. */

/** Tunes or decisions a page, unless told otherwise. */
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

export const heldQuery = z.strictObject(page);

export const waitingQuery = z.strictObject({ limit: page.limit });

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

export const decisionBody = z.strictObject(
  {
    verdict: z.enum(["accepted", "held"], asked("Verdict", 'Give "accepted" or "held".')),
    reason,
  },
  asked("The decision", "Give an object with verdict and reason."),
);

export const reasonBody = z.strictObject(
  { reason },
  asked("The decision", "Give an object with a reason."),
);

const recorded = answers.keptTune.shape.decisions.element.extend({
  number: z.number(),
  tune: z
    .string()
    .nullable()
    .describe("Null where it is about no tune, or about one that was withdrawn"),
}) satisfies z.ZodType<RecordedDecision>;
const next = z.number().nullable().describe("To ask for the next page with, as after");

export const heldAnswer = z.object({
  held: z.number().describe("How many there are in all"),
  tunes: z.array(
    z.object({
      ...answers.keptTune.pick({ id: true, tune: true, cell: true, air: true }).shape,
      ...answers.keptTune.pick({ reasons: true, compared: true }).shape,
      contributor: z.string().describe("Pseudonym"),
      submitted_on: z.string().describe("Month"),
      decisions: z.array(recorded).describe("Oldest first"),
    }) satisfies z.ZodType<HeldTune>,
  ),
  next,
  accepted_means: z.string(),
  safety: answers.safety,
}) satisfies z.ZodType<HeldTunes>;

export const trailAnswer = z.object({
  decisions: z.array(recorded),
  next,
}) satisfies z.ZodType<AuditTrail>;

export const decidedAnswer = z.object({
  id: z.string(),
  verdict: z.enum(["accepted", "held"]),
  decisions: z.array(recorded).describe("Oldest first"),
  accepted_means: z.string(),
  safety: answers.safety,
}) satisfies z.ZodType<Decided>;

export const waitingAnswer = z.object({
  waiting: z
    .array(
      z.object({
        contributor: z.string().describe("Pseudonym"),
        since: z.iso.date().describe("Day of the first tune"),
        crowded: z.boolean().describe("Whether too many others came at the same time"),
      }),
    )
    .describe("Who wait with an accepted tune, in the order in which they come to count"),
}) satisfies z.ZodType<WaitingAnswer>;

export const countedAnswer = z.object({
  contributor: z.string(),
  tunes: z.number(),
}) satisfies z.ZodType<Counted>;

const alarms = z.array(
  z.object({
    code: z.string(),
    heat_kW: z.number(),
    end: z.enum(["low", "high"]),
    sentence: z.string(),
    value: z.number(),
    threshold: z.number(),
  }),
);

export const alarmsAnswer = z.object({
  fit: z.string(),
  alarms,
  refused: z
    .object({ since: z.iso.date(), alarms })
    .nullable()
    .describe("Why newer versions are not published, and since which day"),
}) satisfies z.ZodType<AlarmsAnswer>;

export const publishedAnswer = z.object({
  fit: z.string().describe("The version published until then"),
}) satisfies z.ZodType<Published>;
