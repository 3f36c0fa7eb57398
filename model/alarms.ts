import { averageAt } from "./fit/bands.ts";
import type { Alarm, GroupFit, PublishedFit } from "./fit/group.ts";
import { type FitRow, xOf } from "./fit/row.ts";
import { asideOf, residualOf } from "./fit/standing.ts";

/** Below so many owners everything is news. */
export const ENOUGH = 8;

/** So many versions are looked back over. */
export const LOOKED_BACK = 20;

/**
 * From where on a steward should look. Drift: the decision interval of a two-sided CUSUM, with which standard normal
 * changes would alarm once in 1,300 versions (Siegmund 1985, ch. 2). Second crowd: its posterior probability. Copies: how far
 * the spread has fallen. Curvature: Student's t of a parabola. The study says how often honest crowds cross them.
 */
export const THRESHOLDS = {
  drift: 6,
  second_crowd: 0.5,
  copies: 1.25,
  curvature: 4,
} as const satisfies Record<Alarm["code"], number>;

/** A CUSUM's allowance, in standard errors a version: half of the change it is to find (Page 1954). */
const ALLOWANCE = 0.5;
/** A spread may fall; while so large a share more of the votes may copy, that is news. */
const MORE_COPIES = 0.1;

/** Where in x = ln(density/1.225) a drift is looked for: at the sea, and at about 3,500 m. */
const LOOKED_AT = [0, -0.35];

/**
 * What a steward should look at in a new version.
 * @param before the versions before it, oldest first, by the same estimator unless versions are held back; {@link LOOKED_BACK} are enough
 * @param groups the new version's
 * @param rows what it was fitted to
 */
export function alarmsOf(
  before: readonly PublishedFit[],
  groups: readonly GroupFit[],
  rows: readonly FitRow[],
): Alarm[] {
  return groups.flatMap((group) => {
    const { heat_kW, end } = group;
    if (group.contributors < ENOUGH) return [];
    const history = before
      .slice(-LOOKED_BACK)
      .flatMap(({ groups: old }) => old.filter((g) => g.heat_kW === heat_kW && g.end === end))
      .filter(({ contributors }) => contributors >= ENOUGH);
    const found = [
      ...drift([...history, group]),
      ...(group.second_crowd ? [secondCrowd(group, group.second_crowd)] : []),
      ...copies(history, group),
      ...curvature(
        group,
        rows.filter((row) => row.heat_kW === heat_kW && row.end === end),
      ),
    ];
    return found
      .filter(({ code, value }) => value > THRESHOLDS[code])
      .map((alarm) => ({ ...alarm, heat_kW, end, threshold: THRESHOLDS[alarm.code] }));
  });
}

type Found = Pick<Alarm, "code" | "value" | "sentence">;

/**
 * Changes of the average tune that add up (Page's CUSUM, 1954). A version's change is measured against what so many more
 * votes should change it by: its variance falls as the inverse of their number.
 */
function drift(versions: readonly GroupFit[]): Found[] {
  const first = versions[0] as GroupFit;
  const last = versions.at(-1) as GroupFit;
  const sums = LOOKED_AT.map((x) => {
    let [up, down] = [0, 0];
    for (let k = 1; k < versions.length; k++) {
      const [old, now] = [versions[k - 1] as GroupFit, versions[k] as GroupFit];
      const { centre, variance } = averageAt(now, x);
      const news = Math.max(1, Math.abs(now.votes - old.votes)) / Math.max(1, old.votes);
      const z = (centre - averageAt(old, x).centre) / Math.sqrt(variance * news);
      up = Math.max(0, up + z - ALLOWANCE);
      down = Math.max(0, down - z - ALLOWANCE);
    }
    return {
      value: Math.max(up, down),
      change: averageAt(last, x).centre - averageAt(first, x).centre,
    };
  });
  const most = sums.reduce((a, b) => (b.value > a.value ? b : a));
  const count = versions.length - 1;
  return [
    {
      code: "drift",
      value: most.value,
      sentence: `The average tune has moved by ${percent(most.change)} over the last ${count} version${count === 1 ? "" : "s"}, more steadily one way than chance moves it.`,
    },
  ];
}

function secondCrowd(group: GroupFit, crowd: NonNullable<GroupFit["second_crowd"]>): Found {
  const way = crowd.shift > 0 ? "richer" : "leaner";
  return {
    code: "second_crowd",
    value: crowd.probability,
    sentence: `About ${Math.round(100 * group.shares.second_crowd)} % of the votes stand together ${percent(Math.abs(crowd.shift))} ${way} than the others: a wrong dose or heater size may be among them, or somebody who agreed on what to send.`,
  };
}

/** A spread that falls while more and more may copy the atlas: they agree with it, not with one another. */
function copies(history: readonly GroupFit[], group: GroupFit): Found[] {
  const earlier = history.filter(({ may_copy }) => group.may_copy - may_copy > MORE_COPIES);
  if (earlier.length === 0) return [];
  const widest = Math.max(...earlier.map(({ spread }) => spread));
  const copying = Math.round(100 * group.may_copy);
  return [
    {
      code: "copies",
      value: widest / group.spread,
      sentence: `Heaters seem to differ by ${percent(group.spread)}, and seemed to by ${percent(widest)} before; ${copying} % of the votes may be copies of what the atlas suggested.`,
    },
  ];
}

/**
 * Whether the owners' residuals bend: Student's t of the square of x beside the line, owners as units, by weighted least
 * squares. Rows in feet, or of owners who never re-tune, bend it; so would a wrong model.
 */
function curvature(group: GroupFit, rows: readonly FitRow[]): Found[] {
  const byOwner = new Map<string, FitRow[]>();
  for (const row of rows) {
    if (asideOf(group, row)) continue;
    const own = byOwner.get(row.contributor);
    if (own) own.push(row);
    else byOwner.set(row.contributor, [row]);
  }
  const owners = [...byOwner.values()].map((own) => {
    const n = own.length;
    const mean = (of: (row: FitRow) => number) => own.reduce((sum, row) => sum + of(row), 0) / n;
    return {
      weight: 1 / (group.between ** 2 + group.within ** 2 / n),
      x: mean((row) => xOf(row.density_kg_m3)),
      square: mean((row) => xOf(row.density_kg_m3) ** 2),
      residual: mean((row) => residualOf(group, row).residual),
    };
  });
  if (owners.length < ENOUGH) return [];
  const sum = (of: (owner: (typeof owners)[number]) => number) =>
    owners.reduce((total, owner) => total + owner.weight * of(owner), 0);
  const all = sum(() => 1);
  const [x, square, residual] = [
    sum((o) => o.x) / all,
    sum((o) => o.square) / all,
    sum((o) => o.residual) / all,
  ];
  const moment = (p: "x" | "square" | "residual", q: "x" | "square" | "residual") =>
    sum((o) => (o[p] - { x, square, residual }[p]) * (o[q] - { x, square, residual }[q]));
  // What of the square the line does not explain, and its share in the residuals (Frisch & Waugh 1933).
  const along = moment("x", "square") / moment("x", "x");
  const left = moment("square", "square") - along * moment("x", "square");
  const bend = (moment("square", "residual") - along * moment("x", "residual")) / left;
  const line = moment("x", "residual") / moment("x", "x");
  const scatter =
    (moment("residual", "residual") - line * moment("x", "residual") - bend ** 2 * left) /
    (owners.length - 3);
  const value = Math.abs(bend) / Math.sqrt(scatter / left);
  if (!Number.isFinite(value)) return [];
  return [
    {
      code: "curvature",
      value,
      sentence: `Pump rate against density bends ${bend > 0 ? "up" : "down"} at both ends of the air that was tuned in: feet given for metres, owners who never re-tune or one place's habit may do that.`,
    },
  ];
}

function percent(change: number): string {
  return `${(100 * Math.expm1(change)).toFixed(1)} %`;
}
