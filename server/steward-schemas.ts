import { z } from "zod";
import { TUNES_AT_ONCE } from "../db/steward.ts";
import { STEWARD_VERDICTS, type StewardVerdict, USUAL_REASONS } from "../model/steward-reasons.ts";
import * as answers from "./answers.ts";
import type {
  AlarmsAnswer,
  AuditTrail,
  ClustersAnswer,
  Counted,
  Decided,
  HeldTunes,
  Publication,
  RecordedDecision,
  StewardsTune,
  StewardsTunes,
  WaitingAnswer,
  WithoutAnswer,
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
        new RegExp(`^[0-9a-z]{1,64}(,[0-9a-z]{1,64}){0,${IN_ADDRESS - 1}}$`, "i"),
        `Ids are separated by commas, at most ${IN_ADDRESS} of them.`,
      )
      .optional()
      .describe(`Separated by commas, at most ${IN_ADDRESS}`),
  })
  .refine(({ contributor, ids }) => (contributor === undefined) !== (ids === undefined), {
    path: ["ids"],
    message: "Give either ids or a contributor.",
  });

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

const ids = z
  .array(z.string().min(1, MANY).max(64, MANY), asked("Tunes", MANY))
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

const recorded = answers.keptTune.shape.decisions.element.extend({
  number: z.number(),
  tune: z
    .string()
    .nullable()
    .describe("Null where it is about no tune, or about one that was withdrawn"),
}) satisfies z.ZodType<RecordedDecision>;
const next = z.number().nullable().describe("To ask for the next page with, as after");

const stewardsTune = z.object({
  ...answers.keptTune.pick({ id: true, tune: true, cell: true, air: true }).shape,
  ...answers.keptTune.pick({ verdict: true, reasons: true, compared: true }).shape,
  contributor: z.string().describe("Pseudonym"),
  waits: z.boolean().describe("Its contributor is new, so it does not count yet"),
  submitted_on: z.string().describe("Month"),
  decisions: z.array(recorded).describe("Oldest first"),
}) satisfies z.ZodType<StewardsTune>;
const cautions = { accepted_means: z.string(), safety: answers.safety };

export const heldAnswer = z.object({
  held: z.number().describe("How many there are in all of those asked about"),
  tunes: z.array(stewardsTune),
  next,
  ...cautions,
}) satisfies z.ZodType<HeldTunes>;

export const tunesAnswer = z.object({
  tunes: z.array(stewardsTune),
  ...cautions,
}) satisfies z.ZodType<StewardsTunes>;

export const trailAnswer = z.object({
  decisions: z.array(recorded),
  next,
}) satisfies z.ZodType<AuditTrail>;

export const decidedAnswer = z.object({
  decisions: z.array(recorded).describe("Made by this, one a tune"),
  gone: z.array(z.string()).describe("Ids of tunes that are not there"),
  ...cautions,
}) satisfies z.ZodType<Decided>;

const byEnd = z.object({ low: z.number(), high: z.number() });

export const clustersAnswer = z.object({
  clusters: z
    .array(
      z.object({
        place: z.string().nullable().describe("H3 cell of resolution 3"),
        month: z.string(),
        heat_kW: z.number(),
        shift_pct: byEnd.describe("Against the average heater in their air; plus is richer"),
        contributors: z.number(),
        new_contributors: z.number(),
        as_suggested: z.number().describe("Tunes set as the atlas suggested"),
        chance: z.number().describe("At most the probability that chance makes it here"),
        tunes: z.array(z.string()).describe("Ids"),
      }),
    )
    .describe("The least probable first"),
  looked_at: z.number().describe("So many of the newest tunes were looked at"),
}) satisfies z.ZodType<ClustersAnswer>;

const pair = z.tuple([z.number(), z.number()]);
const averageHere = z.object({
  pump_Hz_per_krpm: z.number(),
  mean_band: pair.describe("95 % confidence band of the average heater's tune"),
  new_heater_band: pair.describe("Where 8 in 10 heaters lie"),
});

export const withoutAnswer = z.object({
  fit: z.string(),
  left_out: z.number().describe("How many of the tunes are in the fit"),
  tunes: z.number().describe("Tunes that are left"),
  compared: z.array(
    z.object({
      heat_kW: z.number(),
      end: z.enum(["low", "high"]),
      elevation_m: z.number().describe("In standard air"),
      published: averageHere,
      other: averageHere.describe("Without the tunes"),
      change_pct: z.number().describe("Of the average; plus is richer"),
    }),
  ),
}) satisfies z.ZodType<WithoutAnswer>;

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
    .object({
      since: z.iso.date(),
      alarms,
      kept_back_on: z.iso.date().nullable().describe("When a steward last said to hold it back"),
      let_through: z.boolean().describe("The next version is let through"),
    })
    .nullable()
    .describe("Why newer versions are not published, and since which day"),
}) satisfies z.ZodType<AlarmsAnswer>;

export const publicationAnswer = z.object({
  fit: z.string().describe("The version published until then"),
}) satisfies z.ZodType<Publication>;
