import { z } from "zod";
import type { Advice } from "../model/advice.ts";
import type { Air } from "../model/air.ts";
import type { FinalCo } from "../model/co-reading.ts";
import type { Compared } from "../model/compare.ts";
import type { Band } from "../model/fit/bands.ts";
import type { GroupFit, PublishedFit } from "../model/fit/group.ts";
import type { ListedPlace } from "../model/geography/listed-place.ts";
import type { OwnEnd, OwnHeater } from "../model/own-start.ts";
import type { Safety } from "../model/safety.ts";
import type { ScalingCurvePoint } from "../model/scaling-curve.ts";
import type { Reason, Verdict } from "../model/screen.ts";
import type { StartTune } from "../model/start.ts";
import { STEWARD_VERDICTS } from "../model/steward-reasons.ts";
import { tuneSchema } from "../model/tune.ts";
import type { TwoFits } from "../model/two-fits.ts";
import { challenge, HOW_TO_SOLVE } from "./proof-schema.ts";

export type { Advice } from "../model/advice.ts";
export type { ListedPlace as Place } from "../model/geography/listed-place.ts";
export type { ScalingCurvePoint } from "../model/scaling-curve.ts";
export type { Reason, Verdict } from "../model/screen.ts";

/**
 * What the API answers, said once. From these schemas follow the types, against which routes and page are compiled,
 * and the description of the API; tests parse real answers with them. What the model makes has its type there,
 * and its schema is held to it (`satisfies`).
 */

const num = z.number();
const end = z.enum(["low", "high"]);

export const safety = z.object({
  notice: z.string(),
  not_for: z.array(z.string()),
  defer_to: z.array(z.string()),
}) satisfies z.ZodType<Safety>;

export const air = z.object({
  density_kg_m3: num,
  density_ratio: num.describe("Against 1.225 kg/m³"),
  pressure_hPa: num.describe("Station pressure"),
  temperature_C: num,
  humidity_pct: num,
  density_altitude_m: num,
  assumed: z.array(z.enum(["temperature", "pressure", "humidity"])),
  ln_density_sd: num.describe("Standard deviation of ln density that the assumptions bring"),
}) satisfies z.ZodType<Air>;

const reason = z.object({
  code: z.string(),
  field: z.string(),
  sentence: z.string(),
  suggestion: num.optional(),
}) satisfies z.ZodType<Reason>;

const advice = z.object({
  code: z.enum(["final_co_high"]),
  field: z.enum(["low.co_ppm", "high.co_ppm"]),
  value: num.describe("The figure it is about"),
  sentence: z.string(),
}) satisfies z.ZodType<Advice>;
const adviceList = z
  .array(advice)
  .describe(
    "What the owner should know of the heater, whatever the verdict: never a reason to hold",
  );

const compared = z.object({
  end,
  mixture_shift_pct: num.describe("Plus is rich, minus is lean"),
  inside_band: z.boolean(),
  sentence: z.string(),
}) satisfies z.ZodType<Compared>;

const verdict = z.enum(["accepted", "held"]) satisfies z.ZodType<Verdict>;
const countsFrom = z.iso
  .date()
  .nullable()
  .describe(
    "A new contributor's tunes wait: the day from which they are expected to count if accepted. Null: at once",
  );
const ownersNeeded = z
  .int()
  .nullable()
  .describe(
    "Tunes of a heater size wait until so many owners of it count, or a steward lets one of them; its starting settings rest on physics until then. Null: they do not wait",
  );

export const submitted = z.object({
  id: z.string(),
  receipt: z
    .string()
    .exactOptional()
    .describe("Shown once: reading, revising and withdrawing need nothing else"),
  verdict,
  reasons: z.array(reason),
  counts_from: countsFrom,
  owners_needed: ownersNeeded,
  advice: adviceList,
  air,
  compared: z.array(compared),
  accepted_means: z.string(),
  safety,
});
/** Answer to POST and PUT of a tune. */
export type Submitted = z.infer<typeof submitted>;

const standing = z
  .enum(["kept", "rejected", "not in it"])
  .describe("What the newest published fit makes of it");

const decision = z.object({
  decided_on: z.string().describe("Month of a decision on a tune, day of what is about none"),
  by: z.string().describe("screening, fit, waiting (days that passed), steward or contributor"),
  verdict: z.enum([...STEWARD_VERDICTS, "rejected", "withdrawn"]),
  reasons: z.array(reason),
});

export const keptTune = z.object({
  id: z.string(),
  tune: tuneSchema.omit({ contributor: true }),
  cell: z.string().nullable(),
  verdict: z
    .enum(STEWARD_VERDICTS)
    .describe("Removed by a steward: nobody else sees it; revised, it is looked at again"),
  reasons: z.array(reason),
  counts_from: countsFrom,
  owners_needed: ownersNeeded,
  advice: adviceList,
  fit: z.object({ version: z.string(), low: standing, high: standing }),
  air,
  compared: z.array(compared),
  accepted_means: z.string(),
  decisions: z.array(decision),
  safety,
});
/** Answer to GET of a tune with its receipt: as kept, and what became of it. */
export type KeptTune = z.infer<typeof keptTune>;

const band = z.object({ level: num, lower: num, upper: num }) satisfies z.ZodType<Band>;

const startEnd = z.object({
  fan_rpm: num,
  pump_Hz: num.describe("Rounded to what a controller can be set to"),
  pump_Hz_exact: num,
  mean_band_Hz: band,
  new_heater_bands_Hz: z.array(band),
  fuel_L_h: num.optional(),
  heat_kW: num.optional(),
});
const keepFan = z.object({ low: startEnd, high: startEnd, heat_fraction: num });

export const startTune = z.object({
  site: z.object({ elevation_m: num, elevation_sd_m: num, elevation_source: z.string() }),
  air,
  low: startEnd,
  high: startEnd,
  strategies: z.object({
    keep_fan: keepFan,
    keep_heat: keepFan.extend({ fan_suffices: z.boolean(), fan_limit_rpm: num }),
  }),
  basis: z.object({
    heat_kW: num,
    tunes: num,
    contributors: num,
    density_range: z.tuple([num, num]).nullable(),
    extrapolated: z.boolean(),
    prior_only: z.boolean(),
    fit: z.string(),
    demo: z.boolean(),
  }) satisfies z.ZodType<StartTune["basis"]>,
  safety,
});

const ownEnd = z.object({
  fan_rpm: num,
  pump_Hz: num.describe("Rounded to what a controller can be set to"),
  pump_Hz_exact: num,
  next_tune_bands_Hz: z.array(band).describe("Where this heater's next tune is expected"),
  best_bands_Hz: z.array(band).describe("Where its best setting lies: no tune hits it"),
}) satisfies z.ZodType<OwnEnd>;
const tuneNumber = num.describe("Which of own_tunes, counted from 1");

export const ownStartTune = startTune.extend({
  own_heater: z.object({
    tunes: num.describe("How many own tunes count at one end at least"),
    set_aside: z.array(
      z.object({
        tune: tuneNumber,
        end: end.nullable().describe("Null: both"),
        code: z.string(),
        field: z
          .string()
          .optional()
          .describe("Path of the figure that looks mistyped, such as low.pump_Hz"),
        sentence: z.string(),
      }),
    ),
    contradictions: z.array(z.object({ tunes: z.array(tuneNumber), end, sentence: z.string() })),
    low: ownEnd,
    high: ownEnd,
  }) satisfies z.ZodType<OwnHeater>,
});

const pair = z.tuple([num, num]);
const covariance = z.tuple([pair, pair]);

export const publishedFit = z.object({
  version: z.string(),
  published_at: z.string().nullable(),
  code: z.string(),
  estimator: z.string().describe("Tells one estimator from another"),
  settings: z.record(z.string(), num).describe("Numbers that were chosen, not fitted"),
  rows_sha256: z.string().nullable().describe("Sum modulo 2^256 of the SHA-256 of each row"),
  demo: z.boolean(),
  groups: z.array(
    z.object({
      heat_kW: num,
      end,
      intercept: num.describe("ln(Hz per 1,000 rpm) at density 1.225 kg/m³"),
      slope: num.describe("Per ln(density/1.225)"),
      covariance,
      line_df: num.nullable(),
      spread: num.describe(
        "Standard deviation in ln of one tune of one heater at sea-level density",
      ),
      between: num.describe("Of it, between heaters of one dose"),
      own_slope: num.describe("Standard deviation of heaters' own slopes"),
      within: num.describe("Of it, between tunes of one heater"),
      step_Hz: num.describe("Root mean square of the steps in which the pumps were set"),
      spread_df: num,
      tail_df: num.describe("Degrees of freedom of Student's t between heaters"),
      dose: z
        .object({ ln_uL: num, ln_sd: num, covariance: z.tuple([num, num, num]) })
        .nullable()
        .describe("ln dose between heaters, and its covariance with itself, intercept and slope"),
      night: num.describe("ln density of nights without a temperature against the standard's"),
      shares: z.object({
        honest: num,
        never_retuned: num,
        anything: num,
        second_crowd: num,
        feet: num,
        slips: num,
      }),
      second_crowd: z.object({ probability: num, shift: num, tilt: num, sd: num }).nullable(),
      contributors: num,
      votes: num,
      tunes: num,
      rejected: num,
      may_copy: num.describe("Share of the votes that may have copied the atlas"),
      density_range: pair.nullable(),
    }) satisfies z.ZodType<GroupFit>,
  ),
  alarms: z.array(
    z.object({
      code: z.enum(["drift", "second_crowd", "copies", "curvature"]),
      heat_kW: num,
      end,
      sentence: z.string(),
      value: num,
      threshold: num,
    }),
  ),
  safety,
}) satisfies z.ZodType<PublishedFit & { safety: Safety }>;
/** The published fit as the API answers it, with the cautions. */
export type FitAnswer = z.infer<typeof publishedFit>;

const foundPlace = z.object({
  name: z.string(),
  region: z.string().nullable(),
  country: z.string().nullable(),
  lat: num,
  lon: num,
  elevation_m: num.nullable(),
  elevation_sd_m: num
    .nullable()
    .describe("Standard deviation of the elevation of someone within a kilometre of the place"),
  population: num,
  kind: z.enum(["place", "pass"]),
  match: z
    .enum(["name", "beginning", "nearly"])
    .describe("Nearly: it is called otherwise than was asked"),
}) satisfies z.ZodType<ListedPlace>;
export type FoundPlace = z.infer<typeof foundPlace>;

export const places = z.object({ places: z.array(foundPlace), credit: z.string() });
export type PlacesAnswer = z.infer<typeof places>;

export const elevation = z.object({
  lat: num,
  lon: num,
  elevation_m: num,
  sd_m: num,
  uncertainty_68_m: num,
  uncertainty_95_m: num,
  source: z.string(),
  nearest: z.object({ name: z.string().nullable(), distance_m: num }).nullable(),
  credit: z.string(),
});
export type ElevationAnswer = z.infer<typeof elevation>;

const asideReason = z.object({ code: z.string(), figures: z.record(z.string(), num) });
/** Why a tune does not count: a stable short name, and the figures that a sentence of it needs. */
export type AsideReason = z.infer<typeof asideReason>;

const scalingPoint = z.object({
  contributor: z
    .string()
    .describe("Pseudonym: joins one contributor's tunes at several elevations"),
  elevation_m: num,
  density_kg_m3: num,
  pump_Hz: num,
  fan_rpm: num,
  pump_Hz_per_krpm: num,
  status: z.enum(["kept", "rejected", "held"]),
  reason: z.string().nullable().describe("Why it was rejected or held"),
  aside: asideReason.nullable().describe("The same for a page of another language"),
});
export type ScalingPoint = z.infer<typeof scalingPoint>;

export const scaling = z.object({
  heat_kW: num,
  end,
  fit: z.string(),
  prior_only: z.boolean(),
  demo: z.boolean(),
  points: z.array(scalingPoint).describe("At most 2,000: an even sample, if there are more"),
  points_total: num,
  curve: z.array(
    z.object({
      density_kg_m3: num,
      elevation_m: num,
      pump_Hz_per_krpm: num,
      mean_band: band,
      new_heater_bands: z.array(band),
    }) satisfies z.ZodType<ScalingCurvePoint>,
  ),
  safety,
});
export type ScalingAnswer = z.infer<typeof scaling>;

const byEnd = z.object({ low: num, high: num });

const cell = z.object({
  cell: z
    .string()
    .describe(
      "H3, resolution 3 to 5: coarser where fewer than 5 contributors would show; 2 for those who tuned in several; 1 for several cells in one",
    ),
  lat: num,
  lon: num,
  tunes: num,
  contributors: num,
  elevation_m: num.describe("Mean of its tunes, to 100 m"),
  mixture_shift_pct: byEnd.describe("Median against the fit; plus is richer"),
  cells_within: num
    .optional()
    .describe(
      "It stands for so many cells, which /api/cells/{cell} names: the whole world is told in such where there are many. Contributors are counted once in each",
    ),
});
export type Cell = z.infer<typeof cell>;

export const cells = z.object({
  parent: z.string(),
  cells: z.array(cell),
  demo: z.boolean(),
  safety,
});
export type CellsAnswer = z.infer<typeof cells>;

const finalCo = {
  co_ppm: num.nullable(),
  co_below_ppm: num.nullable().describe("The meter's floor where it showed nothing"),
} satisfies Record<keyof FinalCo, z.ZodType>;

/** One end of an accepted tune as it was set. */
const setEnd = z.object({ pump_Hz: num, fan_rpm: num, ...finalCo });

const cellTune = z.object({
  heat_kW: num,
  elevation_m: num,
  temperature_C: num.nullable(),
  density_kg_m3: num,
  month: z.string().describe("2026-10; the year alone of contributors who tuned in several places"),
  low: setEnd,
  high: setEnd,
});
/** An accepted tune as its cell shows it: no finer in place and time than the open data, and of nobody. */
export type CellTune = z.infer<typeof cellTune>;

const nearTune = cellTune.extend({
  id: z.string(),
  cell: z.string().nullable(),
  against_average_pct: byEnd.describe(
    "Against the average heater in the tune's own air: plus is richer",
  ),
});
/** An accepted tune in air like that asked about. */
export type NearTune = z.infer<typeof nearTune>;

export const near = z.object({
  heat_kW: num,
  density_kg_m3: num,
  fit: z.string(),
  tunes: z
    .array(nearTune)
    .describe("Nearest first, at most 10; those that the fit sets aside are left out"),
  demo: z.boolean(),
  safety,
});
export type NearAnswer = z.infer<typeof near>;

export const cellTunes = z.object({
  cell: z.string(),
  tunes_total: num,
  elevation_range_m: pair,
  month_range: z.tuple([z.string(), z.string()]),
  tunes: z.array(cellTune).describe("Newest month first, at most 200"),
  demo: z.boolean(),
  safety,
});
export type CellTunesAnswer = z.infer<typeof cellTunes>;

export const data = z.object({
  revision: z.string().describe("Follows from what the files hold"),
  before: z.array(z.string()).describe("Revisions before it whose files are still there"),
  fit: z.string(),
  files: z.array(
    z.object({
      name: z.string(),
      address: z.string().describe("What is there never changes"),
      media_type: z.string(),
      size_bytes: num,
      sha256: z.string().describe("Hexadecimal, of the file as it is unpacked"),
    }),
  ),
  dictionary: z.string(),
  licence: z.object({ name: z.string(), url: z.string() }),
  citation: z.string(),
  demo: z.boolean(),
  safety,
});
export type DataAnswer = z.infer<typeof data>;

const listedFit = z.object({
  version: z.string(),
  published_at: z.string().nullable(),
  code: z.string(),
  estimator: z.string(),
  tunes: num,
  tunes_more: num.nullable().describe("Than in the version before it"),
  most_moved: z
    .object({ heat_kW: num, end, change_pct: num })
    .nullable()
    .describe("The average at sea level against the version before; plus is richer"),
  alarms: z.array(z.string()),
});
/** One version of the fit among those kept, and what it changed. */
export type ListedFit = z.infer<typeof listedFit>;

export const fits = z.object({
  fits: z.array(listedFit).describe("Newest first, at most 100 of those that are kept"),
});
export type FitsAnswer = z.infer<typeof fits>;

export const health = z.object({
  ok: z.boolean(),
  demo: z.boolean(),
  tunes: num,
  fit: z.string(),
  fit_age_s: num.nullable(),
  fit_pending: z.boolean(),
  frozen: z.boolean().describe("Whether an alarm keeps newer versions from being published"),
  geography: z.boolean(),
});
export type Health = z.infer<typeof health>;

export const ready = z.object({
  ready: z.literal(true),
});
/** That new tunes are taken at this moment; what keeps them out is a 503. */
export type Ready = z.infer<typeof ready>;

export const map = z.object({
  basemap_style: z.string().nullable(),
  elevation_tiles: z.string().nullable(),
});
/** Map sources set by the configuration; null for the built-in ones. */
export type MapConfiguration = z.infer<typeof map>;

export const problem = z.object({
  type: z.string(),
  title: z.string(),
  status: num,
  detail: z.string().optional(),
  errors: z
    .array(z.object({ field: z.string(), code: z.string(), message: z.string() }))
    .optional()
    .describe("Every bad field at once"),
  challenge: challenge.optional().describe(HOW_TO_SOLVE),
});
/** RFC 9457. */
export type Problem = z.infer<typeof problem>;

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

const stewardsTune = z.object({
  ...keptTune.pick({ id: true, tune: true, cell: true, air: true }).shape,
  ...keptTune.pick({ verdict: true, reasons: true, compared: true }).shape,
  contributor: z.string().describe("Pseudonym"),
  waits: z.boolean().describe("Its contributor is new, so it does not count yet"),
  submitted_on: z.string().describe("Month"),
  decisions: z.array(recorded).describe("Oldest first"),
});
/** A tune as the steward sees it: no receipt, and of its contributor the pseudonym alone. */
export type StewardsTune = z.infer<typeof stewardsTune>;
const cautions = { accepted_means: z.string(), safety };

export const heldAnswer = z.object({
  held: num.describe("How many there are in all of those asked about"),
  tunes: z.array(stewardsTune),
  next,
  ...cautions,
});
/** A page of held tunes, oldest first. */
export type HeldTunes = z.infer<typeof heldAnswer>;

export const tunesAnswer = z.object({
  tunes: z.array(stewardsTune),
  ...cautions,
});
/** Tunes asked for by their ids or their contributor, at most a hundred. */
export type StewardsTunes = z.infer<typeof tunesAnswer>;

export const trailAnswer = z.object({
  decisions: z.array(recorded),
  next,
});
/** A page of the audit trail, newest first. */
export type AuditTrail = z.infer<typeof trailAnswer>;

export const decidedAnswer = z.object({
  decisions: z.array(recorded).describe("Made by this, one a tune"),
  gone: z.array(z.string()).describe("Ids of tunes that are not there"),
  ...cautions,
});
/** Answer to what a steward decides, or takes back. */
export type Decided = z.infer<typeof decidedAnswer>;

const cluster = z.object({
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

export const clustersAnswer = z.object({
  clusters: z.array(cluster).describe("The least probable first"),
  looked_at: num.describe("So many of the newest tunes were looked at"),
});
export type ClustersAnswer = z.infer<typeof clustersAnswer>;

const averageHere = z.object({
  pump_Hz_per_krpm: num,
  mean_band: pair.describe("95 % confidence band of the average heater's tune"),
  new_heater_band: pair.describe("Where 8 in 10 heaters lie"),
});

export const withoutAnswer = z.object({
  fit: z.string(),
  left_out: num.describe("How many of the tunes are in the fit"),
  tunes: num.describe("Tunes that are left"),
  compared: z.array(
    z.object({
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
});
export type WaitingAnswer = z.infer<typeof waitingAnswer>;

export const countedAnswer = z.object({
  contributor: z.string(),
  tunes: num,
});
/** A contributor whom a steward lets count, and how many tunes that is. */
export type Counted = z.infer<typeof countedAnswer>;

const alarm = z.object({
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
});
export type AlarmsAnswer = z.infer<typeof alarmsAnswer>;

export const publicationAnswer = z.object({
  fit: z.string().describe("The version published until then"),
});
/** Answer to a steward who lets the next version through, or holds it back for another week. */
export type Publication = z.infer<typeof publicationAnswer>;
