import type { Lies, TradeOptions } from "./options.ts";
import { MISTAKES, type Mistake } from "./row.ts";

/** A crowd to judge the atlas by. Copies need the study's own callbacks, so they are given as numbers here. */
export interface TradeScenario {
  id: string;
  /** What it is, in a plain sentence. */
  what: string;
  options: TradeOptions;
  /** Owners after the first honest ones who copy: tradeCrowd's `copies` without its callbacks. */
  copies?: { honestFirst: number; outright: number; halfWay: number; batch: number };
}

const CLEAN: TradeScenario[] = [8, 30, 200, 1000, 10_000].map((owners) => ({
  id: `clean-${owners}`,
  what: `${owners} careful owners, each with one heater; a quarter give no temperature.`,
  options: { owners },
}));

const MISTAKE_WORDS: Record<Mistake, string> = {
  "feet as metres": "type the elevation in feet where metres are asked for",
  "ends swapped": "swap the two ends in one of their tunes",
  "fan doubled or halved": "have a fan read-out that is twice or half the truth",
  "Fahrenheit as Celsius": "type °F where °C is asked for",
  "QNH as station pressure":
    "give sea-level pressure as station pressure, where that still looks right",
  "never retuned": "tune once and report the same setting everywhere",
  careless: "tune with 2 to 3 times the usual scatter",
};
const MISTAKE_SHARES = [0.1, 0.2, 0.4];

const MISTAKEN: TradeScenario[] = MISTAKES.flatMap((mistake) =>
  MISTAKE_SHARES.map((share) => ({
    id: `${mistake.toLowerCase().replaceAll(" ", "-")}-${share * 100}`,
    what: `Of 200 owners ${share * 100} % ${MISTAKE_WORDS[mistake]}.`,
    options: { mistakes: { [mistake]: share } },
  })),
);

const LIE_WORDS: Record<Lies["where"], string> = {
  everywhere: "wherever they are",
  sea: "and send only from the sea",
  high: "and send only from up high",
  "sea true, high false": "up high, and the truth by the sea",
  "one place": "in rows invented for one high camp",
};
const LIES: [Lies["where"], number][] = [
  ["everywhere", 1.25],
  ["sea", 1.25],
  ["high", 1.25],
  ["sea true, high false", 1.4],
  ["one place", 1.4],
];

const LYING: TradeScenario[] = LIES.flatMap(([where, factor]) =>
  [0.1, 0.2, 0.4].map((share) => ({
    id: `lies-${where.replaceAll(/,? /g, "-")}-${share * 100}`,
    what: `Of 200 owners ${share * 100} % tell ${factor} times the true pump rate ${LIE_WORDS[where]}.`,
    options: { lies: { share, factor, where } },
  })),
);

const LYING_APART: TradeScenario[] = [
  {
    id: "lies-apart-20",
    what: "Of 200 owners 20 % lie everywhere, each by a factor of its own from 1.1 to 1.6.",
    options: { lies: { share: 0.2, factor: [1.1, 1.6], where: "everywhere" } },
  },
  {
    id: "lies-lean-20",
    what: "Of 200 owners 20 % tell 0.8 times the true pump rate wherever they are.",
    options: { lies: { share: 0.2, factor: 0.8, where: "everywhere" } },
  },
];

const COPYING: TradeScenario[] = [3, 30, 300].flatMap((honestFirst) =>
  [0.5, 0.8].map((share) => ({
    id: `copies-${share * 100}-from-${honestFirst}`,
    what: `After ${honestFirst} honest owners 300 more come, of whom ${share * 100} % set what the atlas suggests or go half-way to it.`,
    options: { owners: honestFirst + 300 },
    copies: { honestFirst, outright: 0.7 * share, halfWay: 0.3 * share, batch: 30 },
  })),
);

const HABITS: TradeScenario[] = [
  {
    id: "clubs",
    what: "Ten clubs of 12 tune at one meeting each, with habits that differ by 6 %; 80 owners tune alone.",
    options: { clubs: { number: 10, members: 12, habit_sd: 0.06 } },
  },
  {
    id: "no-temperature-cold",
    what: "Nobody gives a temperature, and the nights are 12 K colder than usual.",
    options: { temperatureStated: 0, colderNights_K: 12 },
  },
  {
    id: "half-temperature-cold",
    what: "Half give a temperature, and the nights are 12 K colder than usual.",
    options: { temperatureStated: 0.5, colderNights_K: 12 },
  },
  {
    id: "all-temperature",
    what: "Everyone gives a temperature and an exact elevation.",
    options: { temperatureStated: 1, vagueElevation: 0 },
  },
  {
    id: "vague-elevation-humid",
    what: "Half know their elevation only roughly, and most nights are near saturation.",
    options: { vagueElevation: 0.5, humidNights: 0.8 },
  },
  {
    id: "room-alarms",
    what: "Most meters show nothing below 30 ppm, and a third leave the CO out.",
    options: { roomAlarms: 0.8, coLeftOut: 0.33 },
  },
  ...[0.15, 0.3, 0.6].map((stopEarly) => ({
    id: `stopped-early-${stopEarly * 100}`,
    what: `${stopEarly * 100} % of tunes stop when good enough or at the first turning; six in ten owners say so.`,
    options: { stopEarly },
  })),
  {
    id: "one-key-70",
    what: "One key sends 70 % of all rows, from one heater; 60 owners send the rest.",
    options: { owners: 60, oneKey: 0.7 },
  },
  {
    id: "three-sizes",
    what: "Three heater sizes, the largest with one owner in 25.",
    options: {
      owners: 300,
      sizes: [
        { heat_kW: 2, share: 0.4 },
        { heat_kW: 5, share: 0.56 },
        { heat_kW: 8, share: 0.04 },
      ],
    },
  },
];

const DOSES: TradeScenario[] = (["lognormal", "two sizes"] as const).flatMap((doses) =>
  [1, 0.5, 0].map((doseStated) => ({
    id: `doses-${doses.replace(" ", "-")}-stated-${doseStated * 100}`,
    what: `Pumps of ${doses === "lognormal" ? "any size" : "two sizes"}; ${doseStated * 100} % of owners state the dose.`,
    options: { doses, doseStated },
  })),
);

const MIXED: TradeScenario[] = [
  {
    id: "as-people-are",
    what: "A little of everything: 10 % make some mistake, 3 % lie, 15 % of tunes stop early, two clubs.",
    options: {
      mistakes: Object.fromEntries(MISTAKES.map((m) => [m, 0.015])),
      lies: { share: 0.03, factor: [1.1, 1.6], where: "everywhere" },
      stopEarly: 0.15,
      clubs: { number: 2, members: 8, habit_sd: 0.05 },
    },
  },
];

export const TRADE_SCENARIOS: readonly TradeScenario[] = [
  ...CLEAN,
  ...HABITS,
  ...DOSES,
  ...MISTAKEN,
  ...LYING,
  ...LYING_APART,
  ...COPYING,
  ...MIXED,
];
