import { ENDS, type End } from "../end.ts";
import { tidy } from "./reason.ts";
import type { Settings } from "./usual.ts";

/** The slips people make with pump rates and fan speeds, each with its undoing. */

type Quantity = "pump_Hz" | "fan_rpm";

export interface Slip {
  code: string;
  quantity: Quantity | "both";
  ends: readonly End[];
  undo: (settings: Settings) => Settings;
  /** Completes "The low end's pump rate of 14 Hz …". */
  because: string;
  /** How much less likely than others it is made, in the measure of `offCentre`: decides between equal repairs. */
  rare: number;
}

/** code, quantity, factor that undoes it, what it looks like. */
const SCALES: readonly (readonly [string, Quantity, number, string])[] = [
  ["pump_decimal_slip", "pump_Hz", 1 / 10, "is ten times what is usual: a lost decimal point"],
  ["pump_decimal_slip", "pump_Hz", 10, "is a tenth of what is usual: a decimal point too many"],
  ["pump_pulses_per_minute", "pump_Hz", 1 / 60, "looks like pulses a minute, not pulses a second"],
  ["fan_rpm_doubled", "fan_rpm", 1 / 2, "looks doubled, as by a wrong count of pickup magnets"],
  ["fan_rpm_halved", "fan_rpm", 2, "looks halved, as by a wrong count of pickup magnets"],
  ["fan_rpm_in_tens", "fan_rpm", 10, "looks like tens of rpm"],
  ["fan_rpm_in_hundreds", "fan_rpm", 100, "looks like hundreds of rpm"],
];

const RARE = 0.2;

/** A slip is made at both ends alike, or at one. */
const WHERE: readonly (readonly End[])[] = [ENDS, ["low"], ["high"]];

const SLIPS: readonly Slip[] = [
  ...SCALES.flatMap(([code, quantity, factor, because]) =>
    WHERE.map((ends) => ({
      code,
      quantity,
      ends,
      because,
      undo: scaled(quantity, factor, ends),
      // A count of magnets is set once, for both ends.
      rare: code.startsWith("fan_rpm") && ends.length === 1 ? RARE : 0,
    })),
  ),
  ...(["both", "pump_Hz", "fan_rpm"] as const).map((quantity) => ({
    code: "ends_swapped",
    quantity,
    ends: ENDS,
    undo: swapped(quantity === "both" ? ["pump_Hz", "fan_rpm"] : [quantity]),
    because: "belongs to the other power: the two look swapped",
    rare: 0,
  })),
];

export const SINGLES: readonly (readonly Slip[])[] = SLIPS.map((slip) => [slip]);

/** Pairs of slips that can be made at once: one of the pump, one of the fan, or one of them and a swap. */
export const PAIRS: readonly (readonly Slip[])[] = SLIPS.flatMap((a, i) =>
  SLIPS.slice(i + 1)
    .filter((b) => a.quantity !== b.quantity)
    .map((b) => [a, b]),
);

function scaled(quantity: Quantity, factor: number, ends: readonly End[]) {
  return (settings: Settings): Settings => {
    const undone = { ...settings };
    for (const end of ends) {
      undone[end] = { ...settings[end], [quantity]: tidy(settings[end][quantity] * factor) };
    }
    return undone;
  };
}

function swapped(quantities: readonly Quantity[]) {
  return ({ low, high }: Settings): Settings => {
    const undone = { low: { ...low }, high: { ...high } };
    for (const quantity of quantities) {
      undone.low[quantity] = high[quantity];
      undone.high[quantity] = low[quantity];
    }
    return undone;
  };
}
