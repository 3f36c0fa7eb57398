import { ENDS } from "../end.ts";
import type { GroupFit } from "./group.ts";
import { fitGroup } from "./group-fit.ts";
import { type Prior, physicsPrior } from "./prior.ts";
import type { FitRow, RejectedRow } from "./row.ts";
import { sampleOf } from "./sample.ts";
import { pooledPrior } from "./sizes.ts";
import { asideOf, asideSentence } from "./standing.ts";
import { summaryOf } from "./summary.ts";

/** Fits of all heater sizes and ends, and the rows they set aside. */
export interface AtlasFit {
  groups: GroupFit[];
  rejected: RejectedRow[];
}

/**
 * Fits every heater size and end:
 *   ln(pump_Hz ÷ (fan_rpm/1000)) = intercept + slope·ln(density/1.225),
 * alone first, then with what the other sizes found as the prior. The same rows in any order give the same bits.
 * @param progress told after each size and end how many of all have been fitted; with several sizes each counts twice
 * @throws RangeError naming the row and field of a number that is not finite and positive
 */
export function fitAtlas(
  rows: Iterable<FitRow>,
  progress: (done: number, of: number) => void = () => {},
): AtlasFit {
  const bySize = new Map<string, FitRow[]>();
  for (const row of rows) {
    requireFinite(row);
    const name = `${row.heat_kW} ${row.end}`;
    const own = bySize.get(name);
    if (own) own.push(row);
    else bySize.set(name, [row]);
  }
  const parts = [...bySize.values()]
    .map((own) => ({ ...(own[0] as FitRow), rows: own, sample: sampleOf(own) }))
    .sort((p, q) => p.heat_kW - q.heat_kW || ENDS.indexOf(p.end) - ENDS.indexOf(q.end));
  const several = new Set(parts.map(({ heat_kW }) => heat_kW)).size > 1;
  let done = 0;
  const fitted = ({ heat_kW, end, sample }: (typeof parts)[number], prior: Prior) => {
    const summary = summaryOf(fitGroup(sample, prior), sample, prior);
    progress(++done, several ? 2 * parts.length : parts.length);
    return { heat_kW, end, ...summary };
  };
  const alone = parts.map((part) => fitted(part, physicsPrior(part.end)));
  const rejected: RejectedRow[] = [];
  const groups = parts.map((part, i) => {
    const others = alone.filter(({ heat_kW }) => heat_kW !== part.heat_kW);
    const own = alone[i] as Uncounted;
    const group = several ? fitted(part, pooledPrior(part.end, others)) : own;
    return counted(group, part.rows, rejected);
  });
  return { groups, rejected };
}

type Uncounted = Omit<GroupFit, "tunes" | "rejected" | "density_range">;

/** Counts the rows that the fit keeps; adds the others, with the reason. */
function counted(group: Uncounted, rows: readonly FitRow[], rejected: RejectedRow[]): GroupFit {
  let tunes = 0;
  let [least, most] = [Number.POSITIVE_INFINITY, 0];
  for (const row of rows) {
    const aside = asideOf(group, row);
    if (aside) {
      const { heat_kW, end } = row;
      rejected.push({ row: row.row, heat_kW, end, reason: asideSentence(aside, end) });
      continue;
    }
    tunes++;
    least = Math.min(least, row.density_kg_m3);
    most = Math.max(most, row.density_kg_m3);
  }
  const density_range: [number, number] | null = tunes > 0 ? [least, most] : null;
  return { ...group, tunes, rejected: rows.length - tunes, density_range };
}

function requireFinite(row: FitRow): void {
  for (const field of ["heat_kW", "density_kg_m3", "pump_Hz", "fan_rpm"] as const) {
    if (!(row[field] > 0 && Number.isFinite(row[field]))) {
      throw new RangeError(
        `Row ${row.row}: ${field} must be a positive number, not ${row[field]}.`,
      );
    }
  }
}
