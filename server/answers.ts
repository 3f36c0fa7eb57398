import { z } from "zod";
import type { Air } from "../model/air.ts";
import type { Compared } from "../model/compare.ts";
import type { Band } from "../model/fit/bands.ts";
import type { GroupFit } from "../model/fit/group.ts";
import type { OwnEnd, OwnHeater } from "../model/own-start.ts";
import type { Safety } from "../model/safety.ts";
import type { StartTune } from "../model/start.ts";
import { STEWARD_VERDICTS } from "../model/steward-reasons.ts";
import { tuneSchema } from "../model/tune.ts";
import type * as contract from "./contract.ts";
import { challenge, HOW_TO_SOLVE } from "./proof-schema.ts";

/**
 * The shapes of the API's answers as schemas, for its description. Each is held to the type the routes answer
 * with (`satisfies`), and a test parses real answers with them.
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
}) satisfies z.ZodType<contract.Reason>;

const advice = z.object({
  code: z.enum(["final_co_high"]),
  field: z.enum(["low.co_ppm", "high.co_ppm"]),
  value: num.describe("The figure it is about"),
  sentence: z.string(),
}) satisfies z.ZodType<contract.Advice>;
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

const verdict = z.enum(["accepted", "held"]);
const countsFrom = z.iso
  .date()
  .nullable()
  .describe(
    "A new contributor's tunes wait: the day from which they are expected to count if accepted. Null: at once",
  );

export const submitted = z.object({
  id: z.string(),
  receipt: z
    .string()
    .optional()
    .describe("Shown once: reading, revising and withdrawing need nothing else"),
  verdict,
  reasons: z.array(reason),
  counts_from: countsFrom,
  advice: adviceList,
  air,
  compared: z.array(compared),
  accepted_means: z.string(),
  safety,
});

const standing = z.enum(["kept", "rejected", "not in it"]);

export const keptTune = z.object({
  id: z.string(),
  tune: tuneSchema.omit({ contributor: true }),
  cell: z.string().nullable(),
  verdict: z
    .enum(STEWARD_VERDICTS)
    .describe("Removed by a steward: nobody else sees it; revised, it is looked at again"),
  reasons: z.array(reason),
  counts_from: countsFrom,
  advice: adviceList,
  fit: z.object({ version: z.string(), low: standing, high: standing }),
  air,
  compared: z.array(compared),
  accepted_means: z.string(),
  decisions: z.array(
    z.object({
      decided_on: z.string(),
      by: z.string(),
      verdict: z.enum([...STEWARD_VERDICTS, "rejected", "withdrawn"]),
      reasons: z.array(reason),
    }),
  ),
  safety,
});

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
}) satisfies z.ZodType<contract.FitAnswer>;

export const places = z.object({
  places: z.array(
    z.object({
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
      match: z.enum(["name", "beginning", "nearly"]),
    }),
  ),
  credit: z.string(),
}) satisfies z.ZodType<contract.PlacesAnswer>;

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
}) satisfies z.ZodType<contract.ElevationAnswer>;

export const scaling = z.object({
  heat_kW: num,
  end,
  fit: z.string(),
  prior_only: z.boolean(),
  demo: z.boolean(),
  points: z.array(
    z.object({
      contributor: z.string(),
      elevation_m: num,
      density_kg_m3: num,
      pump_Hz: num,
      fan_rpm: num,
      pump_Hz_per_krpm: num,
      status: z.enum(["kept", "rejected", "held"]),
      reason: z.string().nullable(),
      aside: z.object({ code: z.string(), figures: z.record(z.string(), num) }).nullable(),
    }),
  ),
  points_total: num,
  curve: z.array(
    z.object({
      density_kg_m3: num,
      elevation_m: num,
      pump_Hz_per_krpm: num,
      mean_band: band,
      new_heater_bands: z.array(band),
    }),
  ),
  safety,
}) satisfies z.ZodType<contract.ScalingAnswer>;

export const cells = z.object({
  parent: z.string(),
  cells: z.array(
    z.object({
      cell: z.string(),
      lat: num,
      lon: num,
      tunes: num,
      contributors: num,
      elevation_m: num,
      mixture_shift_pct: z.object({ low: num, high: num }),
    }),
  ),
  demo: z.boolean(),
  safety,
}) satisfies z.ZodType<contract.CellsAnswer>;

const setEnd = z.object({
  pump_Hz: num,
  fan_rpm: num,
  co_ppm: num.nullable(),
  co_below_ppm: num.nullable().describe("The meter's floor where it showed nothing"),
}) satisfies z.ZodType<contract.SetEnd>;

const cellTune = z.object({
  heat_kW: num,
  elevation_m: num,
  temperature_C: num.nullable(),
  density_kg_m3: num,
  month: z.string().describe("2026-10; the year alone of contributors who tuned in several places"),
  low: setEnd,
  high: setEnd,
});

export const near = z.object({
  heat_kW: num,
  density_kg_m3: num,
  fit: z.string(),
  tunes: z
    .array(
      cellTune.extend({
        id: z.string(),
        cell: z.string().nullable(),
        against_average_pct: z
          .object({ low: num, high: num })
          .describe("Against the average heater in the tune's own air: plus is richer"),
      }),
    )
    .describe("Nearest first, at most 10; those that the fit sets aside are left out"),
  demo: z.boolean(),
  safety,
}) satisfies z.ZodType<contract.NearAnswer>;

export const cellTunes = z.object({
  cell: z.string(),
  tunes_total: num,
  elevation_range_m: pair,
  month_range: z.tuple([z.string(), z.string()]),
  tunes: z.array(cellTune).describe("Newest month first, at most 200"),
  demo: z.boolean(),
  safety,
}) satisfies z.ZodType<contract.CellTunesAnswer>;

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
}) satisfies z.ZodType<contract.DataAnswer>;

export const fits = z.object({
  fits: z
    .array(
      z.object({
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
      }),
    )
    .describe("Newest first, at most 100 of those that are kept"),
}) satisfies z.ZodType<contract.FitsAnswer>;

export const health = z.object({
  ok: z.boolean(),
  demo: z.boolean(),
  tunes: num,
  fit: z.string(),
  fit_age_s: num.nullable(),
  fit_pending: z.boolean(),
  frozen: z.boolean().describe("Whether an alarm keeps newer versions from being published"),
  geography: z.boolean(),
}) satisfies z.ZodType<contract.Health>;

export const ready = z.object({
  ready: z.literal(true),
}) satisfies z.ZodType<contract.Ready>;

export const map = z.object({
  basemap_style: z.string().nullable(),
  elevation_tiles: z.string().nullable(),
}) satisfies z.ZodType<contract.MapConfiguration>;

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
