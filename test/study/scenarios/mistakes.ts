import { crowd } from "../crowd.ts";
import { type Lie, withFakes, withFlood, withLazy } from "../dishonest.ts";
import { type SlipName, withSlips } from "../slips.ts";
import { OTHER, otherCrowd } from "./other-crowd.ts";
import type { Scenario } from "./scenario.ts";

const CROWD = 200;
const SHARES = [10, 20, 30, 40];

/** Slips that are simulated at every share. */
const TELLING: readonly string[] = ["feet", "ends_swapped"];

type Contaminated = Pick<Scenario, "id" | "title" | "family" | "make">;

const contaminated = (of: Contaminated): Scenario => ({
  ...of,
  truth: "fixed",
  contributors: CROWD,
});

const NAMED_SLIPS: Record<SlipName, string> = {
  feet: "elevation in feet stated as metres",
  decimal: "a decimal point slipped",
  half_or_double: "half or double",
  pulses_a_minute: "pulses a minute stated as Hz",
  ends_swapped: "ends swapped",
  fan_in_tens: "fan speed in tens",
  fan_in_hundreds: "fan speed in hundreds",
  fahrenheit: "a temperature in °F stated as °C",
  sea_level_pressure: "a pressure reduced to sea level stated as the station's",
  junk: "junk",
};

const slips = (id: string, title: string, pct: number, kinds?: SlipName[]): Scenario =>
  contaminated({
    id: `${id}-${pct}pct`,
    title: `${pct} % of tunes: ${title}`,
    family: "slips",
    make: (random, truth) => ({
      rows: withSlips(random, crowd(random, truth, CROWD), pct / 100, kinds),
    }),
  });

const lazy = (pct: number): Scenario =>
  contaminated({
    id: `lazy-${pct}pct`,
    title: `${pct} % of owners never re-tune`,
    family: "lazy",
    make: (random, truth) => ({
      rows: withLazy(random, truth, crowd(random, truth, CROWD), pct / 100),
    }),
  });

const flood = (pct: number): Scenario =>
  contaminated({
    id: `flood-${pct}pct`,
    title: `one owner sends ${pct} % of all tunes, 1.6 × at 4,000 m`,
    family: "flood",
    make: (random, truth) => ({
      rows: withFlood(random, crowd(random, truth, CROWD), pct / 100, truth),
    }),
  });

const fakes = (id: string, title: string, pct: number, lie: Omit<Lie, "share">): Scenario =>
  contaminated({
    id: `fakes-${id}-${pct}pct`,
    title: `${pct} % fake owners ${title}, ${lie.times} ×`,
    family: "fakes",
    make: (random, truth) => ({
      rows: withFakes(random, truth, crowd(random, truth, CROWD), { ...lie, share: pct / 100 }),
    }),
  });

const onePlace = (times: number) => (pct: number) =>
  fakes(`one-place-${times}x`, "at one place at 4,000 m", pct, { times, at_m: 4000 });
const spread = (times: number) => (pct: number) =>
  fakes(`spread-${times}x`, "spread over high places", pct, { times, at_m: "high places" });
const everywhere = (times: number) => (pct: number) =>
  fakes(`everywhere-${times}x`, "at all heights", pct, { times, at_m: "anywhere" });
const bySea = (times: number) => (pct: number) =>
  fakes(`by-the-sea-${times}x`, "by the sea", pct, { times, at_m: "the sea" });
const leverage = (pct: number) =>
  fakes("leverage-1.6x", "at one place at 5,500 m", pct, { times: 1.6, at_m: 5500 });
const sly = (rows: "two high" | "true and false", title: string) =>
  fakes(`sly-${rows.replaceAll(" ", "-")}`, title, 20, { times: 1.25, at_m: "high places", rows });

const everyday = (contributors: number): Scenario => ({
  id: `everyday-other-${contributors}`,
  title: `${contributors} owners simulated by other means: one tune in ten a slip, one owner in ten never re-tunes`,
  family: "slips",
  truth: "fixed",
  contributors,
  make: (random) => {
    const rows = withSlips(random, otherCrowd(random, contributors), 0.1);
    return { rows: withLazy(random, OTHER, rows, 0.1), truth: OTHER };
  },
});

const fakesAmongOthers = (pct: number): Scenario =>
  contaminated({
    id: `fakes-other-one-place-1.35x-${pct}pct`,
    title: `${pct} % fake owners at one place at 4,000 m, 1.35 ×, the others simulated by other means`,
    family: "fakes",
    make: (random) => {
      const lie = { share: pct / 100, times: 1.35, at_m: 4000 };
      return { rows: withFakes(random, OTHER, otherCrowd(random, CROWD), lie), truth: OTHER };
    },
  });

export const MISTAKES: readonly Scenario[] = [
  ...SHARES.map((pct) => slips("slips", "feet, decimal, half or double, junk", pct)),
  ...Object.entries(NAMED_SLIPS).flatMap(([kind, title]) =>
    (TELLING.includes(kind) ? SHARES : [20, 40]).map((pct) =>
      slips(`slip-${kind.replaceAll("_", "-")}`, title, pct, [kind as SlipName]),
    ),
  ),
  ...SHARES.map(lazy),
  ...[30, 200].map(everyday),
  ...[30, 70, 90].map(flood),
  ...[1.25, 1.6].flatMap((times) => [20, 40].map(onePlace(times))),
  ...[20, 30].map(fakesAmongOthers),
  ...[1.25, 1.6].flatMap((times) => SHARES.map(spread(times))),
  ...[20, 40].map(leverage),
  ...[1.1, 1.35, 1.6].flatMap((times) => SHARES.map(everywhere(times))),
  ...[1.1, 1.35].flatMap((times) => [20, 40].map(bySea(times))),
  ...SHARES.map(spread(1.1)),
  sly("two high", "spread over high places, two tunes each"),
  sly("true and false", "spread over high places, each with a true tune by the sea"),
];
