import { averageAt } from "./bands.ts";
import type { Alarm, GroupFit, PublishedFit } from "./group.ts";

/** Below so many owners everything is news. */
const ENOUGH = 8;

/** Thresholds that simulated honest crowds cross in less than one fit of a hundred; a test holds them to it. */
export const THRESHOLDS = {
  drift: 1.5,
  second_crowd: 0.5,
} as const satisfies Partial<Record<Alarm["code"], number>>;

/** Where in x = ln(density/1.225) a drift is looked for: at the sea, and at about 3,500 m. */
const LOOKED_AT = [0, -0.35];

/** What a steward should look at in a new version, against the one before. */
export function alarmsOf(before: PublishedFit, groups: readonly GroupFit[]): Alarm[] {
  return groups.flatMap((group) => {
    const { heat_kW, end } = group;
    if (group.contributors < ENOUGH) return [];
    const old = before.groups.find((g) => g.heat_kW === heat_kW && g.end === end);
    const found = [
      ...(old && old.contributors >= ENOUGH ? [drift(old, group)] : []),
      ...(group.second_crowd ? [secondCrowd(group, group.second_crowd)] : []),
    ];
    return found
      .filter(({ code, value }) => value > THRESHOLDS[code])
      .map((alarm) => ({ ...alarm, heat_kW, end, threshold: THRESHOLDS[alarm.code] }));
  });
}

interface Found {
  code: keyof typeof THRESHOLDS;
  value: number;
  sentence: string;
}

/** Change of the average tune, in standard errors of the version before. */
function drift(old: GroupFit, group: GroupFit): Found {
  const moved = LOOKED_AT.map((x) => {
    const before = averageAt(old, x);
    const change = averageAt(group, x).centre - before.centre;
    return { change, errors: Math.abs(change) / Math.sqrt(before.variance) };
  });
  const most = moved.reduce((a, b) => (b.errors > a.errors ? b : a));
  return {
    code: "drift",
    value: most.errors,
    sentence: `The average tune moved by ${percent(most.change)} since the version before, ${most.errors.toFixed(1)} of its standard errors.`,
  };
}

function secondCrowd(group: GroupFit, crowd: NonNullable<GroupFit["second_crowd"]>): Found {
  const way = crowd.shift > 0 ? "richer" : "leaner";
  return {
    code: "second_crowd",
    value: crowd.probability,
    sentence: `About ${Math.round(100 * group.shares.second_crowd)} % of the votes stand together ${percent(Math.abs(crowd.shift))} ${way} than the others: a wrong dose or heater size may be among them, or somebody who agreed on what to send.`,
  };
}

function percent(change: number): string {
  return `${(100 * Math.expm1(change)).toFixed(1)} %`;
}
