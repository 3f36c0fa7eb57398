import { ENDS, type End, type PublishedFit } from "../fit/group.ts";
import type { EndSetting } from "../mixture.ts";
import type { Tune } from "../tune.ts";
import { type Reason, say, tidy } from "./reason.ts";

/**
 * Pump rates and fan speeds of both ends. Each has a usual range, and so has the mixture they make together;
 * how far outside a row lies is its oddness. A slip is believed when the row is odd and undoing it takes nearly
 * all the oddness away; an odd row that nothing explains passes, unless no flame could burn so.
 */

type Settings = Record<End, EndSetting>;

/** Usual fan speeds, rpm (common practice, no source). */
const USUAL_FAN_rpm: Record<End, readonly [number, number]> = {
  low: [1200, 2400],
  high: [3500, 5000],
};

/** Usual mixture, Hz per 1,000 rpm in standard sea-level air, smallest and largest of the heat classes (our own working values). */
const USUAL_MIXTURE: Record<End, readonly [number, number]> = {
  low: [0.7, 0.95],
  high: [0.85, 1.1],
};

/** Heaters, meters and people differ by this much around what is usual for them. */
const MIXTURE_TOLERANCE = 0.35;
/** From crews that never re-tune (0) to those that cut more than the density asks for. */
const SLOPES = [0, 1.2] as const;

/** One unit of oddness: 10 % outside the usual range. */
const UNIT = 0.1;
/** A row less odd than three units at one place (about 35 % outside) is never questioned. */
const ODD = 9;
/** An undone slip must leave at most this share of the oddness. */
const LEFT_OVER = 1 / 6;
/** Low end not below high end: no heater runs so. */
const OUT_OF_ORDER = 100;
/** Ten units outside, a factor of 2.7 beyond the widest range: no flame burns so rich or so lean, no fan turns so. */
const IMPOSSIBLE_UNITS = 10;

type Range = readonly [number, number];

/** What mixture to expect at each end in this air: a wide range, from lazy crews to keen ones. */
function usualMixture(end: End, heat_kW: number, ratio: number, fit: PublishedFit | null): Range {
  const [low, high] = USUAL_MIXTURE[end];
  // A fit can only widen what is plausible: many heaters may teach that others are usual, never shut one out.
  const group = fit?.groups.find((g) => g.heat_kW === heat_kW && g.end === end);
  const seen = group && group.contributors > 0 ? Math.exp(group.intercept) : low;
  const shifts = SLOPES.map((slope) => ratio ** slope);
  return [
    Math.min(low, seen) * (1 - MIXTURE_TOLERANCE) * Math.min(...shifts),
    Math.max(high, seen) * (1 + MIXTURE_TOLERANCE) * Math.max(...shifts),
  ];
}

/** Units by which a value lies outside a range, on a logarithmic scale: plus above, minus below, 0 inside. */
function unitsOutside(value: number, [lower, upper]: Range): number {
  if (value > upper) return Math.log(value / upper) / UNIT;
  if (value < lower) return Math.log(value / lower) / UNIT;
  return 0;
}

function perKrpm({ pump_Hz, fan_rpm }: EndSetting): number {
  return pump_Hz / (fan_rpm / 1000);
}

interface Expected {
  mixture: Record<End, Range>;
}

function oddness(settings: Settings, expected: Expected): number {
  let sum = 0;
  for (const end of ENDS) {
    sum += unitsOutside(settings[end].fan_rpm, USUAL_FAN_rpm[end]) ** 2;
    sum += unitsOutside(perKrpm(settings[end]), expected.mixture[end]) ** 2;
  }
  if (settings.low.pump_Hz >= settings.high.pump_Hz) sum += OUT_OF_ORDER;
  if (settings.low.fan_rpm >= settings.high.fan_rpm) sum += OUT_OF_ORDER;
  return sum;
}

/** Distance from the middle of what is usual: only decides between repairs that leave nothing odd. */
function offCentre(settings: Settings, expected: Expected): number {
  let sum = 0;
  for (const end of ENDS) {
    for (const [value, range] of [
      [settings[end].fan_rpm, USUAL_FAN_rpm[end]],
      [perKrpm(settings[end]), expected.mixture[end]],
    ] as const) {
      sum += Math.log(value / Math.sqrt(range[0] * range[1])) ** 2;
    }
  }
  return sum;
}

/** One slip and its undoing. `because` completes "Low end's pump rate of 14 Hz …". */
interface Slip {
  code: string;
  quantity: "pump_Hz" | "fan_rpm" | "both";
  undo: (settings: Settings) => Settings;
  because: string;
}

function scaled(quantity: "pump_Hz" | "fan_rpm", factor: number, ends: readonly End[]) {
  return (settings: Settings): Settings => {
    const undone = { ...settings };
    for (const end of ends) {
      undone[end] = { ...settings[end], [quantity]: tidy(settings[end][quantity] * factor) };
    }
    return undone;
  };
}

function swapped(quantities: readonly ("pump_Hz" | "fan_rpm")[]) {
  return ({ low, high }: Settings): Settings => {
    const undone = { low: { ...low }, high: { ...high } };
    for (const quantity of quantities) {
      undone.low[quantity] = high[quantity];
      undone.high[quantity] = low[quantity];
    }
    return undone;
  };
}

/** Every end at which one mistake can be made: at both alike, or at one. */
const WHERE: readonly (readonly End[])[] = [ENDS, ["low"], ["high"]];

const SCALES = [
  [
    "pump_decimal_slip",
    "pump_Hz",
    1 / 10,
    "looks ten times too high, as if a decimal point was lost",
  ],
  [
    "pump_decimal_slip",
    "pump_Hz",
    10,
    "looks ten times too low, as if a decimal point was misplaced",
  ],
  ["pump_pulses_per_minute", "pump_Hz", 1 / 60, "looks like pulses a minute, not pulses a second"],
  ["fan_rpm_doubled", "fan_rpm", 1 / 2, "looks doubled, as with a wrong count of pickup magnets"],
  ["fan_rpm_halved", "fan_rpm", 2, "looks halved, as with a wrong count of pickup magnets"],
  ["fan_rpm_in_tens", "fan_rpm", 10, "looks like tens of rpm"],
  ["fan_rpm_in_hundreds", "fan_rpm", 100, "looks like hundreds of rpm"],
] as const;

const SWAPS: readonly Slip[] = (["both", "pump_Hz", "fan_rpm"] as const).map((quantity) => ({
  code: "ends_swapped",
  quantity,
  undo: swapped(quantity === "both" ? ["pump_Hz", "fan_rpm"] : [quantity]),
  because: "looks swapped with the other end's",
}));

const SLIPS: readonly Slip[] = [
  ...SCALES.flatMap(([code, quantity, factor, because]) =>
    WHERE.map((ends) => ({ code, quantity, because, undo: scaled(quantity, factor, ends) })),
  ),
  ...SWAPS,
];

interface Repair {
  slips: readonly Slip[];
  settings: Settings;
  left: number;
  off: number;
}

/** The slips, at most one of the pump and one of the fan or a swap, whose undoing leaves the row ordinary. */
function bestRepair(stated: Settings, expected: Expected): Repair | null {
  const odd = oddness(stated, expected);
  const tried = (slips: readonly Slip[]): Repair => {
    const settings = slips.reduce((s, slip) => slip.undo(s), stated);
    return {
      slips,
      settings,
      left: oddness(settings, expected),
      off: offCentre(settings, expected),
    };
  };
  const pairs = () =>
    SLIPS.flatMap((a, i) =>
      SLIPS.slice(i + 1)
        .filter((b) => a.quantity !== b.quantity)
        .map((b) => [a, b]),
    );
  for (const combinations of [() => SLIPS.map((slip) => [slip]), pairs]) {
    const [best] = combinations()
      .map(tried)
      .filter(({ left }) => left < ODD && left <= odd * LEFT_OVER)
      .sort((a, b) => a.left - b.left || a.off - b.off);
    if (best) return best;
  }
  return null;
}

/** Reasons that pump rates and fan speeds give for a hold, at an air of this density ratio. */
export function screenSettings(tune: Tune, ratio: number, fit: PublishedFit | null): Reason[] {
  const stated: Settings = { low: tune.low, high: tune.high };
  const expected: Expected = {
    mixture: {
      low: usualMixture("low", tune.heater.heat_kW, ratio, fit),
      high: usualMixture("high", tune.heater.heat_kW, ratio, fit),
    },
  };
  if (oddness(stated, expected) < ODD) return [];
  const repair = bestRepair(stated, expected);
  return repair ? explained(stated, repair) : unexplained(stated, expected);
}

const QUANTITIES = [
  { key: "pump_Hz", name: "pump rate", unit: "Hz", decimals: 2 },
  { key: "fan_rpm", name: "fan speed", unit: "rpm", decimals: 0 },
] as const;

/** One reason for every figure the repair changes. */
function explained(stated: Settings, { slips, settings }: Repair): Reason[] {
  return ENDS.flatMap((end) =>
    QUANTITIES.flatMap(({ key, name, unit, decimals }): Reason[] => {
      const suggestion = settings[end][key];
      if (suggestion === stated[end][key]) return [];
      const slip = slips.find((s) => s.quantity === key || s.quantity === "both");
      if (!slip) return [];
      return [
        {
          code: slip.code,
          field: `${end}.${key}`,
          sentence: `The ${end} end's ${name} of ${say(stated[end][key], decimals)} ${unit} ${slip.because}. Did you mean ${say(suggestion, decimals)} ${unit}?`,
          suggestion,
        },
      ];
    }),
  );
}

/** What no heater can do, though no slip explains it. */
function unexplained(stated: Settings, expected: Expected): Reason[] {
  const reasons: Reason[] = [];
  for (const { key, name, unit, decimals } of QUANTITIES) {
    if (stated.low[key] >= stated.high[key]) {
      reasons.push({
        code: "ends_out_of_order",
        field: `low.${key}`,
        sentence: `The low end's ${name} (${say(stated.low[key], decimals)} ${unit}) must be below the high end's (${say(stated.high[key], decimals)} ${unit}). Check both.`,
      });
    }
  }
  for (const end of ENDS) {
    const { fan_rpm, pump_Hz } = stated[end];
    const [slowest, fastest] = USUAL_FAN_rpm[end];
    if (Math.abs(unitsOutside(fan_rpm, USUAL_FAN_rpm[end])) > IMPOSSIBLE_UNITS) {
      reasons.push({
        code: "fan_speed_out_of_range",
        field: `${end}.fan_rpm`,
        sentence: `A fan speed of ${say(fan_rpm)} rpm at the ${end} end is far from the usual ${say(slowest)} to ${say(fastest)} rpm. Check it.`,
      });
    }
    const [leanest, richest] = expected.mixture[end].map((m) => (m * fan_rpm) / 1000) as [
      number,
      number,
    ];
    const outside = unitsOutside(perKrpm(stated[end]), expected.mixture[end]);
    if (Math.abs(outside) > IMPOSSIBLE_UNITS) {
      reasons.push({
        code: "mixture_out_of_range",
        field: `${end}.pump_Hz`,
        sentence: `A pump rate of ${say(pump_Hz, 2)} Hz at ${say(fan_rpm)} rpm would be far too ${outside > 0 ? "rich" : "lean"} to burn in this air; ${say(leanest, 1)} to ${say(richest, 1)} Hz is usual. Check both figures of the ${end} end.`,
      });
    }
  }
  return reasons;
}
