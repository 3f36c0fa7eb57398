import { AtlasLedger } from "./atlas-ledger.ts";
import type { FitRow, GroupFit, RejectedRow } from "./group.ts";
import { reasonAside } from "./standing.ts";

/** Fits of all heat classes and ends, and the rows they set aside. */
export interface AtlasFit {
  groups: GroupFit[];
  rejected: RejectedRow[];
}

/**
 * Fits every heat class and end:
 * ln(pump_Hz ÷ (fan_rpm/1000)) = intercept + slope·ln(density/1.225).
 * The same rows give the same bits in any order.
 * @throws RangeError naming the row and field of a number that is not finite and positive
 */
export function fitAtlas(rows: Iterable<FitRow>): AtlasFit {
  const ledger = new AtlasLedger();
  const all = [...rows];
  ledger.load(all);
  const groups = ledger.fit();
  const byName = new Map(groups.map((g) => [`${g.heat_kW} ${g.end}`, g]));
  const rejected = all.flatMap((row): RejectedRow[] => {
    const { heat_kW, end } = row;
    const reason = reasonAside(byName.get(`${heat_kW} ${end}`) as GroupFit, row);
    return reason === null ? [] : [{ row: row.row, heat_kW, end, reason }];
  });
  return { groups, rejected };
}
