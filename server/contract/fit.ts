import { z } from "zod";
import type { GroupFit, PublishedFit } from "../../model/fit/group.ts";
import type { Safety } from "../../model/safety.ts";
import { end, exactly, num, pair, trimmed } from "./quantities.ts";
import { safety } from "./safety.ts";

const covariance = z.tuple([pair, pair]).meta(exactly(2));

/** A version that was kept by another release may have had more. */
export const publishedFit = trimmed({
  version: z.string(),
  published_at: z.string().nullable(),
  code: z.string(),
  estimator: z.string().describe("Tells one estimator from another"),
  settings: z.record(z.string(), num).describe("Numbers that were chosen, not fitted"),
  rows_sha256: z.string().nullable().describe("Sum modulo 2^256 of the SHA-256 of each row"),
  demo: z.boolean(),
  groups: z.array(
    trimmed({
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
      dose: trimmed({
        ln_uL: num,
        ln_sd: num,
        covariance: z.tuple([num, num, num]).meta(exactly(3)),
      })
        .nullable()
        .describe("ln dose between heaters, and its covariance with itself, intercept and slope"),
      night: num.describe("ln density of nights without a temperature against the standard's"),
      shares: trimmed({
        honest: num,
        never_retuned: num,
        anything: num,
        second_crowd: num,
        feet: num,
        slips: num,
      }),
      second_crowd: trimmed({ probability: num, shift: num, tilt: num, sd: num }).nullable(),
      contributors: num,
      votes: num,
      tunes: num,
      rejected: num,
      may_copy: num.describe("Share of the votes that may have copied the atlas"),
      density_range: pair.nullable(),
    }) satisfies z.ZodType<GroupFit>,
  ),
  alarms: z.array(
    trimmed({
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

const listedFit = z.strictObject({
  version: z.string(),
  published_at: z.string().nullable(),
  code: z.string(),
  estimator: z.string(),
  tunes: num,
  tunes_more: num.nullable().describe("Than in the version before it"),
  most_moved: z
    .strictObject({ heat_kW: num, end, change_pct: num })
    .nullable()
    .describe("The average at sea level against the version before; plus is richer"),
  alarms: z.array(z.string()),
});

/** One version of the fit among those kept, and what it changed. */
export type ListedFit = z.infer<typeof listedFit>;

export const fits = z.strictObject({
  fits: z.array(listedFit).describe("Newest first, at most 100 of those that are kept"),
});
