import type { Surge } from "./alarms.ts";
import { type FittedGroup, fitGroup } from "./fit-group.ts";
import { ENDS, type End, type FitRow, type GroupFit } from "./group.ts";
import { GroupLedger } from "./group-ledger.ts";
import { heldShares } from "./held.ts";
import { pooledPrior } from "./pooling.ts";
import { PHYSICS } from "./prior.ts";
import type { Changes } from "./row-columns.ts";

interface Kept {
  heat_kW: number;
  end: End;
  ledger: GroupLedger;
  /** What its rows make of physics alone; made again when they change. */
  alone: FittedGroup | null;
}

/**
 * All rows of an atlas, and the fit of them. Rows are put in and dropped one at a time or loaded at once; the fit is
 * made from the tallies, whose size does not grow with the rows.
 */
export class AtlasLedger {
  readonly #groups: Record<End, Map<number, Kept>> = { low: new Map(), high: new Map() };

  /** Loads rows into an empty ledger. */
  load(rows: readonly FitRow[]): void {
    let group: Kept | null = null;
    for (const row of rows) {
      requirePositive(row);
      if (row.heat_kW !== group?.heat_kW || row.end !== group.end) group = this.#group(row);
      group.ledger.take(row);
    }
    for (const { ledger } of this.#sorted()) ledger.countAll();
  }

  put(row: FitRow): void {
    requirePositive(row);
    const group = this.#group(row);
    group.ledger.put(row);
    group.alone = null;
  }

  drop(row: Pick<FitRow, "row" | "contributor" | "heat_kW" | "end">): void {
    const groups = this.#groups[row.end];
    const group = groups.get(row.heat_kW);
    if (!group) return;
    group.ledger.drop(row);
    group.alone = null;
    if (group.ledger.contributors === 0) groups.delete(row.heat_kW);
  }

  /** Remembers which rows the fit before set aside. */
  knownAside(isAside: (row: FitRow) => boolean): void {
    for (const { ledger } of this.#sorted()) ledger.knownAside(isAside);
  }

  /** Where in each group contributors came together in numbers. */
  surges(): Surge[] {
    return this.#sorted().map(({ heat_kW, end, ledger }) => ({ heat_kW, end, ...ledger.surge() }));
  }

  /** Each group's ledger, by heat class and end. */
  ledgers(): { heat_kW: number; end: End; ledger: GroupLedger }[] {
    return this.#sorted();
  }

  /**
   * Every group fitted under what the others say of it, in order of heat class and end.
   * @param changes filled with the rows that this fit sets aside and the one before did not, or the reverse
   */
  fit(changes?: Changes): GroupFit[] {
    const kept = this.#sorted();
    const alone = kept.map((group) => {
      group.alone ??= fitGroup(group.heat_kW, group.end, group.ledger.tally, PHYSICS);
      return group.alone;
    });
    return kept.map(({ heat_kW, end, ledger }, i) => {
      const first = alone[i] as FittedGroup;
      const prior = pooledPrior(first, alone);
      const fitted = prior === PHYSICS ? first : fitGroup(heat_kW, end, ledger.tally, prior);
      const group: GroupFit = {
        ...fitted.fit,
        contributors: ledger.contributors,
        discounts: ledger.discounts,
        held: [],
        tunes: 0,
        rejected: 0,
        density_range: null,
      };
      return {
        ...group,
        ...ledger.judged(group, changes),
        held: heldShares(fitted, ledger.tally, group),
      };
    });
  }

  #group({ heat_kW, end }: Pick<FitRow, "heat_kW" | "end">): Kept {
    const groups = this.#groups[end];
    let group = groups.get(heat_kW);
    if (!group) {
      group = { heat_kW, end, ledger: new GroupLedger(), alone: null };
      groups.set(heat_kW, group);
    }
    return group;
  }

  #sorted(): Kept[] {
    return ENDS.flatMap((end) => [...this.#groups[end].values()]).sort(
      (a, b) => a.heat_kW - b.heat_kW || ENDS.indexOf(a.end) - ENDS.indexOf(b.end),
    );
  }
}

const POSITIVE = ["heat_kW", "density_kg_m3", "pump_Hz", "fan_rpm"] as const;

function requirePositive(row: FitRow): void {
  const { heat_kW, density_kg_m3, pump_Hz, fan_rpm, end } = row;
  // By name one after another only where one is wrong: a million rows are looked at.
  if (
    !(
      isPositive(heat_kW) &&
      isPositive(density_kg_m3) &&
      isPositive(pump_Hz) &&
      isPositive(fan_rpm)
    )
  ) {
    const field = POSITIVE.find((name) => !isPositive(row[name])) as (typeof POSITIVE)[number];
    throw new RangeError(`Row ${row.row}: ${field} must be a positive number, not ${row[field]}.`);
  }
  if (end !== "low" && end !== "high") {
    throw new RangeError(`Row ${row.row}: end must be "low" or "high", not "${end}".`);
  }
}

function isPositive(value: number): boolean {
  return value > 0 && value < Number.POSITIVE_INFINITY;
}
