import { watch } from "./looking.ts";
import { QUIET, type SeasonKind } from "./season.ts";

/** `npm run study:drift -- [SEASONS]`: how often a drift is spoken of, with none there and with one. */
const SEASONS = Number(process.argv[2] ?? 1000);
const SEED = 20261126;

if (!(Number.isInteger(SEASONS) && SEASONS > 1)) {
  console.error("npm run study:drift -- [SEASONS]: a whole number of seasons above 1.");
  process.exit(2);
}

const RISES = Math.log(31 / 12) / 1.4;
const kinds: [name: string, kind: Partial<SeasonKind>][] = [
  ["none, 10 entries", { entries: 10 }],
  ["none, 20 entries", {}],
  ["none, 40 entries", { entries: 40 }],
  ["none, 40 entries, 2 cleanings", { entries: 40, cleanings: 2 }],
  ["none, 40 entries, one place", { entries: 40, travels: false }],
  ["none, 40 entries, heavy tails", { entries: 40, tails: "heavy" }],
  ["none, 40 entries, a fifth carried over", { entries: 40, carried: 0.2 }],
  ["none, 40 entries, two fifths carried over", { entries: 40, carried: 0.4 }],
  ["none, 40 entries, floor 10 ppm", { entries: 40, floor_ppm: 10 }],
  ["12 to 31 ppm in 140 h, 10 entries", { entries: 10, co_rise: RISES }],
  ["12 to 31 ppm in 140 h, 20 entries", { co_rise: RISES }],
  ["half of that, 20 entries", { co_rise: RISES / 2 }],
  ["half of that, 40 entries", { entries: 40, co_rise: RISES / 2 }],
  ["12 to 31 ppm in 140 h, 40 entries, 2 cleanings", { entries: 40, cleanings: 2, co_rise: RISES }],
  ["12 to 31 ppm in 140 h, 20 entries, floor 30 ppm", { floor_ppm: 30, co_rise: RISES }],
  ["5 % richer in 100 h, 20 entries", { mixture_change: 0.05 }],
  ["3 % richer in 100 h, 40 entries", { entries: 40, mixture_change: 0.03 }],
];
for (const [name, change] of kinds) {
  const watched = watch({ ...QUIET, ...change }, SEASONS, SEED);
  const parts = Object.entries(watched).map(
    ([key, value]) => `${key} ${value === null ? "never" : Number(value.toFixed(1))}`,
  );
  console.log(`${name}: ${parts.join(", ")}`);
}
