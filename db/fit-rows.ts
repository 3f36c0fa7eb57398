import { and, asc, gt, sql } from "drizzle-orm";
import type { FitRow } from "../model/fit/row.ts";
import type { Database } from "./database.ts";
import { at, inFileOrder } from "./file-order.ts";
import { tunes } from "./schema.ts";
import type { TuneRow } from "./tunes.ts";
import { counts } from "./waiting.ts";

/** Both ends of a tune as the fit sees them. */
export function fitRows(tune: Pick<TuneRow, FitColumn>): [FitRow, FitRow] {
  const both = {
    row: tune.id,
    contributor: tune.pseudonym,
    cell: tune.home ?? undefined,
    heat_kW: tune.heat_kW,
    density_kg_m3: tune.density_kg_m3,
    ln_density_sd: tune.ln_density_sd,
    temperature_assumed: tune.density_assumed.split(",").includes("temperature"),
    dose_uL: tune.dose_uL ?? undefined,
    found: tune.found ?? undefined,
  };
  return [
    {
      ...both,
      end: "low",
      pump_Hz: tune.low_pump_Hz,
      fan_rpm: tune.low_fan_rpm,
      co_ppm: tune.low_co_ppm ?? undefined,
      co_below_ppm: tune.low_co_below_ppm ?? undefined,
      suggested_Hz_per_krpm: tune.low_suggested_Hz_per_krpm ?? undefined,
    },
    {
      ...both,
      end: "high",
      pump_Hz: tune.high_pump_Hz,
      fan_rpm: tune.high_fan_rpm,
      co_ppm: tune.high_co_ppm ?? undefined,
      co_below_ppm: tune.high_co_below_ppm ?? undefined,
      suggested_Hz_per_krpm: tune.high_suggested_Hz_per_krpm ?? undefined,
    },
  ];
}

/** What the fit needs of a tune. */
export const fitColumns = {
  id: tunes.id,
  pseudonym: tunes.pseudonym,
  home: tunes.home,
  heat_kW: tunes.heat_kW,
  density_kg_m3: tunes.density_kg_m3,
  ln_density_sd: tunes.ln_density_sd,
  density_assumed: tunes.density_assumed,
  dose_uL: tunes.dose_uL,
  low_co_below_ppm: tunes.low_co_below_ppm,
  high_co_below_ppm: tunes.high_co_below_ppm,
  low_co_ppm: tunes.low_co_ppm,
  high_co_ppm: tunes.high_co_ppm,
  low_pump_Hz: tunes.low_pump_Hz,
  low_fan_rpm: tunes.low_fan_rpm,
  high_pump_Hz: tunes.high_pump_Hz,
  high_fan_rpm: tunes.high_fan_rpm,
  found: tunes.found,
  low_suggested_Hz_per_krpm: tunes.low_suggested_Hz_per_krpm,
  high_suggested_Hz_per_krpm: tunes.high_suggested_Hz_per_krpm,
};
export type FitColumn = keyof typeof fitColumns;

/**
 * The rows of both ends of every tune that counts, in the order in which they lie in the file.
 * @param page so many tunes at a time
 */
export async function* acceptedFitRows(
  db: Database,
  page: number,
): AsyncGenerator<[FitRow, FitRow][], void> {
  const read = (after: number) =>
    db
      .select({ at, ...fitColumns })
      .from(tunes)
      .where(and(gt(at, after), counts(db)))
      .orderBy(asc(at))
      .limit(page);
  for await (const rows of inFileOrder(page, read)) yield rows.map(fitRows);
}

/** How many contributors of each heater size count. */
export async function ownersOfSizes(db: Database): Promise<Map<number, number>> {
  const rows = await db
    .select({
      heat_kW: tunes.heat_kW,
      owners: sql<number>`count(distinct ${tunes.contributor})`,
    })
    .from(tunes)
    .where(counts(db))
    .groupBy(tunes.heat_kW);
  return new Map(rows.map(({ heat_kW, owners }) => [heat_kW, owners]));
}
