import type { End } from "./end.ts";
import { type AtlasFit, fitAtlas } from "./fit/fit.ts";
import type { GroupFit } from "./fit/group.ts";
import type { FitRow, RejectedRow } from "./fit/row.ts";
import { asideOf, asideSentence } from "./fit/standing.ts";
import type { Uncounted } from "./fit-in-steps.ts";

/**
 * Of so many owners of a heater size and end at most the fit is made. It then knows the average to about spread ÷ √10,000: 0.1 %
 * where heaters differ by 10 %, a fraction of any controller's step.
 */
export const OWNERS_MOST = 10_000;

/** So many times as many are held before the sample is cut again: sorting now and then costs less than keeping order. */
const SLACK = 1.1;

type Group = { heat_kW: number; end: End };
const nameOf = ({ heat_kW, end }: Group) => `${heat_kW} ${end}`;

/** What is known of one size and end while rows are passed over. */
interface Drawn {
  /** Rows of those who may still be among the first, by owner. */
  rows: Map<string, FitRow[]>;
  /** Whoever comes after this one by name is not among the first; undefined while there are few. */
  last: string | undefined;
}

/**
 * The rows that the fit is made of: of each heater size and end those of the first owners by pseudonym. Pseudonyms are
 * random, so this is a simple random sample; and one more owner changes one of its members at most. Takes rows in any
 * order, in one pass, and never holds more than a tenth more owners than it keeps.
 */
export class OwnersSample {
  readonly #most: number;
  readonly #groups = new Map<string, Drawn>();

  constructor(most = OWNERS_MOST) {
    this.#most = most;
  }

  add(row: FitRow): void {
    const name = nameOf(row);
    let group = this.#groups.get(name);
    if (!group) {
      group = { rows: new Map(), last: undefined };
      this.#groups.set(name, group);
    }
    const { contributor } = row;
    if (group.last !== undefined && contributor > group.last) return;
    const own = group.rows.get(contributor);
    if (own) own.push(row);
    else group.rows.set(contributor, [row]);
    if (group.rows.size > SLACK * this.#most) this.#cut(group);
  }

  /** Whether all owners are in it. */
  get isWhole(): boolean {
    return [...this.#groups.values()].every(
      ({ rows, last }) => last === undefined && rows.size <= this.#most,
    );
  }

  rows(): FitRow[] {
    return [...this.#groups.values()].flatMap((group) => {
      this.#cut(group);
      return [...group.rows.values()].flat();
    });
  }

  #cut(group: Drawn): void {
    if (group.rows.size <= this.#most) return;
    const names = [...group.rows.keys()].sort();
    group.last = names[this.#most - 1];
    for (const name of names.slice(this.#most)) group.rows.delete(name);
  }
}

/** Counts all rows beside what was fitted to the sample: what is published of their number is about all of them. */
export class RowCount {
  readonly #groups: Map<string, GroupFit>;

  /** @param owners how many there are of a heater size and end, those that are not in the sample included */
  constructor(fitted: readonly Uncounted[], owners: (of: Group) => number) {
    this.#groups = new Map(
      fitted.map((group) => [
        nameOf(group),
        {
          ...group,
          contributors: owners(group),
          ...{ tunes: 0, rejected: 0, density_range: null },
        },
      ]),
    );
  }

  /** @returns the row with the reason where the fit sets it aside; null where it counts */
  add(row: FitRow): RejectedRow | null {
    const group = this.#groups.get(nameOf(row));
    if (!group) throw new Error(`Nothing is fitted to ${nameOf(row)}.`);
    const aside = asideOf(group, row);
    if (aside) {
      group.rejected++;
      const { heat_kW, end } = row;
      return { row: row.row, heat_kW, end, reason: asideSentence(aside, end) };
    }
    group.tunes++;
    const { density_kg_m3 } = row;
    const [least, most] = group.density_range ?? [density_kg_m3, density_kg_m3];
    group.density_range = [Math.min(least, density_kg_m3), Math.max(most, density_kg_m3)];
    return null;
  }

  get groups(): GroupFit[] {
    return [...this.#groups.values()];
  }
}

/**
 * The fit of rows that are all in memory, as the atlas makes it of its tunes: to the same last bit, rows in any order.
 * @param progress told after each size and end how many of all have been fitted
 * @param most owners of a size and end that are fitted at most
 * @throws RangeError naming the row and field of a number that is not finite and positive
 */
export function fitBounded(
  rows: readonly FitRow[],
  progress?: (done: number, of: number) => void,
  most = OWNERS_MOST,
): AtlasFit {
  const sample = new OwnersSample(most);
  for (const row of rows) sample.add(row);
  const owners = ownersOf(rows);
  const count = new RowCount(
    fitAtlas(sample.rows(), progress).groups,
    (of) => owners.get(nameOf(of))?.size ?? 0,
  );
  const rejected = rows.flatMap((row) => count.add(row) ?? []);
  return { groups: count.groups, rejected };
}

function ownersOf(rows: readonly FitRow[]): Map<string, Set<string>> {
  const owners = new Map<string, Set<string>>();
  for (const row of rows) {
    const known = owners.get(nameOf(row));
    if (known) known.add(row.contributor);
    else owners.set(nameOf(row), new Set([row.contributor]));
  }
  return owners;
}
