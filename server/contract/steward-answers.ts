import { z } from "zod";
import type { TwoFits } from "../../model/two-fits.ts";
import { byEnd, end, num, pair } from "./quantities.ts";
import { cautions } from "./safety.ts";
import { decision, keptTune } from "./tunes.ts";

// What the steward's routes answer.
const recorded = decision.extend({
  number: num,
  tune: z
    .string()
    .nullable()
    .describe("Null where it is about no tune, or about one that was withdrawn"),
});

/** One decision as the audit trail records it. */
export type RecordedDecision = z.infer<typeof recorded>;

const next = num.nullable().describe("To ask for the next page with, as after");

const stewardsTune = z.strictObject({
  ...keptTune.pick({ id: true, tune: true, cell: true, air: true }).shape,
  ...keptTune.pick({ verdict: true, reasons: true, compared: true }).shape,
  contributor: z.string().describe("Pseudonym"),
  waits: z.boolean().describe("Its contributor is new, so it does not count yet"),
  submitted_on: z.string().describe("Month"),
  decisions: z.array(recorded).describe("Oldest first"),
});

/** A tune as the steward sees it: no receipt, and of its contributor the pseudonym alone. */
export type StewardsTune = z.infer<typeof stewardsTune>;

export const heldAnswer = z.strictObject({
  held: num.describe("How many there are in all of those asked about"),
  tunes: z.array(stewardsTune),
  next,
  ...cautions,
});

/** A page of held tunes, oldest first. */
export type HeldTunes = z.infer<typeof heldAnswer>;

export const tunesAnswer = z.strictObject({
  tunes: z.array(stewardsTune),
  ...cautions,
});

/** Tunes asked for by their ids or their contributor, at most a hundred. */
export type StewardsTunes = z.infer<typeof tunesAnswer>;

export const trailAnswer = z.strictObject({
  decisions: z.array(recorded),
  next,
});

/** A page of the audit trail, newest first. */
export type AuditTrail = z.infer<typeof trailAnswer>;

export const decidedAnswer = z.strictObject({
  decisions: z.array(recorded).describe("Made by this, one a tune"),
  gone: z.array(z.string()).describe("Ids of tunes that are not there"),
  ...cautions,
});

/** Answer to what a steward decides, or takes back. */
export type Decided = z.infer<typeof decidedAnswer>;

const cluster = z.strictObject({
  place: z.string().nullable().describe("H3 cell of resolution 3"),
  month: z.string(),
  heat_kW: num,
  shift_pct: byEnd.describe("Against the average heater in their air; plus is richer"),
  contributors: num,
  new_contributors: num,
  as_suggested: num.describe("Tunes set as the atlas suggested"),
  chance: num.describe("At most the probability that chance makes it here"),
  tunes: z.array(z.string()).describe("Ids"),
});

/** Tunes of one place, month and heater size that agree more than heaters do, most of them of new contributors. */
export type StewardsCluster = z.infer<typeof cluster>;

export const clustersAnswer = z.strictObject({
  clusters: z.array(cluster).describe("The least probable first"),
  looked_at: num.describe("So many of the newest tunes were looked at"),
});

export type ClustersAnswer = z.infer<typeof clustersAnswer>;

const averageHere = z.strictObject({
  pump_Hz_per_krpm: num,
  mean_band: pair.describe("95 % confidence band of the average heater's tune"),
  new_heater_band: pair.describe("Where 8 in 10 heaters lie"),
});

export const withoutAnswer = z.strictObject({
  fit: z.string(),
  left_out: num.describe("How many of the tunes are in the fit"),
  tunes: num.describe("Tunes that are left"),
  compared: z.array(
    z.strictObject({
      heat_kW: num,
      end,
      elevation_m: num.describe("In standard air"),
      published: averageHere,
      other: averageHere.describe("Without the tunes"),
      change_pct: num.describe("Of the average; plus is richer"),
    }) satisfies z.ZodType<TwoFits>,
  ),
});

/** What the fit would be without some tunes, beside the published one. */
export type WithoutAnswer = z.infer<typeof withoutAnswer>;

export const waitingAnswer = z.strictObject({
  waiting: z
    .array(
      z.strictObject({
        contributor: z.string().describe("Pseudonym"),
        since: z.iso.date().describe("Day of the first tune"),
        crowded: z.boolean().describe("Whether too many others came at the same time"),
      }),
    )
    .describe("Who wait with an accepted tune, in the order in which they come to count"),
  next: z.string().nullable().describe("What to ask for as after; null on the last page"),
  sizes: z
    .array(
      z.strictObject({
        heat_kW: num,
        owners_needed: num.describe("Its tunes count once so many of its owners do not wait"),
        owners: z
          .array(
            z.strictObject({
              contributor: z.string().describe("Pseudonym"),
              tunes: num.describe("Accepted ones of this size"),
              waits: z.boolean().describe("Whether they are new and wait themselves"),
            }),
          )
          .describe(
            "Who have accepted tunes of it; all who wait for nothing else first, then some of those who are new",
          ),
      }),
    )
    .describe(
      "Heater sizes that wait for owners; one whom a steward lets count lets the size count",
    ),
});

export type WaitingAnswer = z.infer<typeof waitingAnswer>;

export const countedAnswer = z.strictObject({
  contributor: z.string(),
  tunes: num,
});

/** A contributor whom a steward lets count, and how many tunes that is. */
export type Counted = z.infer<typeof countedAnswer>;

const alarm = z.strictObject({
  code: z.string(),
  heat_kW: num,
  end,
  sentence: z.string(),
  value: num,
  threshold: num,
});

/** Something about the published fit that a steward should look into. */
export type Alarm = z.infer<typeof alarm>;

const alarms = z.array(alarm);

export const alarmsAnswer = z.strictObject({
  fit: z.string(),
  alarms,
  refused: z
    .strictObject({
      since: z.iso.date(),
      alarms,
      kept_back_on: z.iso.date().nullable().describe("When a steward last said to hold it back"),
      let_through: z.boolean().describe("The next version is let through"),
    })
    .nullable()
    .describe("Why newer versions are not published, and since which day"),
});

export type AlarmsAnswer = z.infer<typeof alarmsAnswer>;

export const publicationAnswer = z.strictObject({
  fit: z.string().describe("The version published until then"),
});

/** Answer to a steward who lets the next version through, or holds it back for another week. */
export type Publication = z.infer<typeof publicationAnswer>;
