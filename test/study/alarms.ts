import type { StudyAlarms } from "../../client/atlas/bands/report.ts";
import { standardDensity } from "../../model/air.ts";
import { alarmsOf } from "../../model/alarms.ts";
import { fitAtlas } from "../../model/fit/fit.ts";
import type { Alarm, PublishedFit } from "../../model/fit/group.ts";
import type { FitRow } from "../../model/fit/row.ts";
import { lnRatio } from "./airs.ts";
import { crowd } from "./crowd.ts";
import { FIXED, type Seeded, seeded } from "./population.ts";
import { tradeRows } from "./scenarios/trade.ts";
import { tradeCrowd } from "./trade/crowd.ts";

/** Honest owners when one begins to look, and versions from then on, each of one owner more. */
const CROWDS = [10, 40, 150];
const VERSIONS = 20;
/** Versions that one growing crowd is looked at in. */
export const VERSIONS_EACH = CROWDS.length * VERSIONS;
const MOST = Math.max(...CROWDS) + VERSIONS;

/** A patient liar sends one tune from up high a version, each under a new key, so many times too rich. */
const LIE = { times: 1.25, elevation_m: 3000 };
const CODES: Alarm["code"][] = ["drift", "second_crowd", "copies", "curvature"];

type Owners = FitRow[][];

/** How often alarms go off while honest crowds grow, and whether they do while one liar works patiently. */
export function alarmsOfCrowds(crowds: number, seed: number): StudyAlarms[] {
  if (crowds === 0) return [];
  return (["first", "trade"] as const).flatMap((generator) => {
    const runs = Array.from({ length: crowds }, (_, run) => {
      const random = seeded(seed + run);
      return { random, owners: honest(generator, random) };
    });
    return [false, true].map((liar) => figures(generator, liar, runs));
  });
}

function honest(generator: "first" | "trade", random: Seeded): Owners {
  const rows: FitRow[] =
    generator === "first"
      ? crowd(random, FIXED, MOST)
      : tradeRows(tradeCrowd(random, { owners: MOST }).rows);
  return [...Map.groupBy(rows, ({ contributor }) => contributor).values()];
}

function figures(
  generator: "first" | "trade",
  liar: boolean,
  runs: readonly { random: Seeded; owners: Owners }[],
): StudyAlarms {
  const going = runs.flatMap(({ random, owners }) =>
    CROWDS.map((first) => {
      const known = owners.slice(0, first);
      const more = liar ? lies(known, random) : owners.slice(first, first + VERSIONS);
      return grown(known, more);
    }),
  );
  const fits = going.flat();
  const share = (of: number, all: number) => (100 * of) / all;
  return {
    generator,
    liar,
    fits: fits.length,
    with_alarm_pct: share(fits.filter((codes) => codes.size > 0).length, fits.length),
    by_code_pct: Object.fromEntries(
      CODES.map((code) => [
        code,
        share(fits.filter((codes) => codes.has(code)).length, fits.length),
      ]),
    ),
    crowds_with_alarm_pct: share(
      going.filter((versions) => versions.some((codes) => codes.size > 0)).length,
      going.length,
    ),
  };
}

/** The alarms of each version while these owners come one by one. */
function grown(known: Owners, more: Owners): Set<Alarm["code"]>[] {
  const rows = known.flat();
  const history: PublishedFit[] = [];
  const publish = () => {
    const { groups } = fitAtlas(rows);
    const alarms = alarmsOf(history, groups, rows);
    history.push({ groups, alarms } as PublishedFit);
    return new Set(alarms.map(({ code }) => code));
  };
  publish();
  return more.map((owner) => {
    rows.push(...owner);
    return publish();
  });
}

function lies(known: Owners, random: Seeded): Owners {
  const { groups } = fitAtlas(known.flat());
  const [first] = known.flat() as [FitRow];
  const [group] = groups;
  if (!group) throw new Error("No group.");
  return Array.from({ length: VERSIONS }, (_, k) => {
    const density_kg_m3 = standardDensity(LIE.elevation_m + 300 * random.normal());
    const x = lnRatio(density_kg_m3);
    const ratio = LIE.times * Math.exp(group.intercept + group.slope * x + 0.02 * random.normal());
    return [
      {
        ...first,
        row: `lie ${k}`,
        contributor: `liar ${k}`,
        cell: `liar's ${k}`,
        density_kg_m3,
        fan_rpm: 1600,
        pump_Hz: 1.6 * ratio,
        temperature_assumed: false,
      },
    ];
  });
}
