import { lineVariance } from "./bands.ts";
import type { Alarm, End, GroupFit, PublishedFit } from "./group.ts";

/** Where contributors of a class and end came together in greatest number. */
export interface Surge {
  heat_kW: number;
  end: End;
  /** Place and month. */
  home: string;
  there: number;
  contributors: number;
}

/** Below so many contributors everything is news. */
const ENOUGH = 8;

/**
 * Thresholds that simulated honest crowds of 8 to 1,000 contributors, some of whose tunes carry a slip, cross less
 * than once in a hundred fits; a test holds them to it.
 */
export const THRESHOLDS = {
  drift: 1.5,
  many_new_keys: 1.2,
  slope_against_own_steps: 2.2,
  two_populations: 8,
} as const satisfies Record<Alarm["code"], number>;

/** Where in x = ln(density/1.225) a drift is looked for: at the sea, and at about 3,500 m. */
const LOOKED_AT = [0, -0.35];

/** What a steward should look at in a new version, against the one before. */
export function alarmsOf(
  before: PublishedFit,
  groups: readonly GroupFit[],
  surges: readonly Surge[],
): Alarm[] {
  return groups.flatMap((group) => {
    const { heat_kW, end } = group;
    if (group.contributors < ENOUGH) return [];
    const same = (g: { heat_kW: number; end: End }) => g.heat_kW === heat_kW && g.end === end;
    const old = before.groups.find(same);
    const surge = surges.find(same);
    const found = [
      ...(old && old.contributors >= ENOUGH ? [drift(old, group)] : []),
      ...(surge ? [manyNewKeys(surge)] : []),
      slopeAgainstSteps(group),
      twoPopulations(group),
    ];
    return found
      .filter(({ code, value }) => value > THRESHOLDS[code])
      .map((alarm) => ({ ...alarm, heat_kW, end, threshold: THRESHOLDS[alarm.code] }));
  });
}

type Found = Pick<Alarm, "code" | "value" | "sentence">;

/** Change of the average tune, in standard errors of the version before. */
export function drift(old: GroupFit, group: GroupFit): Found {
  const moved = LOOKED_AT.map((x) => {
    const change = group.intercept - old.intercept + (group.slope - old.slope) * x;
    return { change, errors: Math.abs(change) / Math.sqrt(lineVariance(old, x)) };
  });
  const most = moved.reduce((a, b) => (b.errors > a.errors ? b : a));
  return {
    code: "drift",
    value: most.errors,
    sentence: `The average tune moved by ${percent(most.change)} since the version before, ${most.errors.toFixed(1)} of its standard errors.`,
  };
}

/** Contributors at home in one place and month, against the square root of all. */
export function manyNewKeys({ home, there, contributors }: Surge): Found {
  return {
    code: "many_new_keys",
    value: there / Math.sqrt(contributors),
    sentence: `${there} of ${contributors} contributors tuned in one place in one month (${home}).`,
  };
}

export function slopeAgainstSteps({ against_steps }: GroupFit): Found {
  const way = against_steps < 0 ? "less" : "more";
  return {
    code: "slope_against_own_steps",
    value: Math.abs(against_steps),
    sentence: `Between contributors pump rate follows density ${way} than within them, by ${Math.abs(against_steps).toFixed(1)} standard errors: some may have agreed on what they sent.`,
  };
}

export function twoPopulations({ second_population: { gain, shift, share } }: GroupFit): Found {
  const way = shift > 0 ? "richer" : "leaner";
  return {
    code: "two_populations",
    value: gain,
    sentence: `About ${Math.round(100 * share)} % of the votes stand together ${percent(Math.abs(shift))} ${way} than the others: a wrong dose or heat class may be among them.`,
  };
}

function percent(change: number): string {
  return `${(100 * Math.expm1(change)).toFixed(1)} %`;
}
