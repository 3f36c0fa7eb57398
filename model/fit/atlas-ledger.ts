import type { Surge } from "./alarms.ts";
import { type FittedGroup, fitGroup } from "./fit-group.ts";
import { ENDS, type End, type FitRow, type GroupFit } from "./group.ts";
import { GroupLedger } from "./group-ledger.ts";
import { heldShares } from "./held.ts";
import { pooledPrior } from "./pooling.ts";
import { PHYSICS } from "./prior.ts";

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
  readonly #groups = new Map<string, Kept>();

  /** Loads rows into an empty ledger. */
  load(rows: Iterable<FitRow>): void {
    const byGroup = new Map<string, FitRow[]>();
    for (const row of rows) {
      requirePositive(row);
      const name = nameOf(row);
      const group = byGroup.get(name);
      if (group) group.push(row);
      else byGroup.set(name, [row]);
    }
    for (const of of byGroup.values()) this.#group(of[0] as FitRow).ledger.load(of);
  }

  put(row: FitRow): void {
    requirePositive(row);
    const group = this.#group(row);
    group.ledger.put(row);
    group.alone = null;
  }

  drop(row: Pick<FitRow, "row" | "contributor" | "heat_kW" | "end">): void {
    const group = this.#groups.get(nameOf(row));
    if (!group) return;
    group.ledger.drop(row);
    group.alone = null;
    if (group.ledger.contributors === 0) this.#groups.delete(nameOf(row));
  }

  /** Remembers which rows the fit before set aside. */
  knownAside(isAside: (row: FitRow) => boolean): void {
    for (const { ledger } of this.#groups.values()) ledger.knownAside(isAside);
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
  fit(changes?: { row: FitRow; aside: boolean }[]): GroupFit[] {
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
        discounts: ledger.discounts(),
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

  #group(of: Pick<FitRow, "heat_kW" | "end">): Kept {
    const name = nameOf(of);
    let group = this.#groups.get(name);
    if (!group) {
      group = { heat_kW: of.heat_kW, end: of.end, ledger: new GroupLedger(), alone: null };
      this.#groups.set(name, group);
    }
    return group;
  }

  #sorted(): Kept[] {
    return [...this.#groups.values()].sort(
      (a, b) => a.heat_kW - b.heat_kW || (a.end === "low" ? -1 : 1),
    );
  }
}

function nameOf({ heat_kW, end }: Pick<FitRow, "heat_kW" | "end">): string {
  return `${heat_kW} ${end}`;
}

const POSITIVE = ["heat_kW", "density_kg_m3", "pump_Hz", "fan_rpm"] as const;

function requirePositive(row: FitRow): void {
  for (const field of POSITIVE) {
    if (!(Number.isFinite(row[field]) && row[field] > 0)) {
      throw new RangeError(
        `Row ${row.row}: ${field} must be a positive number, not ${row[field]}.`,
      );
    }
  }
  if (!ENDS.includes(row.end)) {
    throw new RangeError(`Row ${row.row}: end must be "low" or "high", not "${row.end}".`);
  }
}
