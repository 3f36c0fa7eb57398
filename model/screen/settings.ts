import { atPower, ENDS } from "../end.ts";
import type { PublishedFit } from "../fit/group.ts";
import { decimalsOfStep, toStep } from "../rounding.ts";
import type { Tune } from "../tune.ts";
import { type Reason, say } from "./reason.ts";
import { PAIRS, SINGLES, type Slip } from "./slips.ts";
import {
  mixtureOutside,
  oddness,
  offCentre,
  type Settings,
  type Usual,
  unitsOutside,
  usualIn,
} from "./usual.ts";

/**
 * Pump rates and fan speeds of both ends. A slip is believed when the row is odd and undoing it takes nearly all
 * the oddness away; an odd row that nothing explains passes, unless no flame could burn so.
 */

/** Three units at one place, about 35 % outside what is usual: a row less odd is never questioned. */
const ODD = 9;
/** Two slips at once are believed only of a row so odd that no honest one is, out of order or not. */
const VERY_ODD = 164;
/** An undone slip must leave at most this share of the oddness, and less than would be questioned. */
const LEFT_OVER = 1 / 6;
/** Ten units, a factor of 2.7 beyond the widest range: no flame burns so rich or so lean, no fan turns so. */
const IMPOSSIBLE_UNITS = 10;

/** Reasons that pump rates and fan speeds give for a hold, in air of this density ratio. */
export function screenSettings(
  tune: Tune,
  density_ratio: number,
  fit: PublishedFit | null,
): Reason[] {
  const stated: Settings = { low: tune.low, high: tune.high };
  const usual = usualIn(density_ratio, tune.heater.heat_kW, fit);
  const odd = oddness(stated, usual);
  if (odd < ODD) return [];
  const repair =
    bestRepair(SINGLES, stated, usual, odd) ??
    (odd < VERY_ODD ? undefined : bestRepair(PAIRS, stated, usual, odd));
  return repair
    ? explained(stated, repair)
    : [...outOfOrder(stated), ...impossible(stated, usual, tune)];
}

interface Repair {
  slips: readonly Slip[];
  settings: Settings;
  left: number;
  off: number;
}

/** Of the slips (or pairs of slips) that may have been made, the one whose undoing leaves the row most ordinary. */
function bestRepair(
  made: readonly (readonly Slip[])[],
  stated: Settings,
  usual: Usual,
  odd: number,
): Repair | undefined {
  return made
    .filter((slips) => slips.every((slip) => isOpen(slip, stated, usual)))
    .map((slips) => {
      const settings = slips.reduce((s, slip) => slip.undo(s), stated);
      return {
        slips,
        settings,
        left: oddness(settings, usual),
        off: slips.reduce((sum, { rare }) => sum + rare, offCentre(settings, usual)),
      };
    })
    .filter(({ left }) => left < ODD && left <= odd * LEFT_OVER)
    .sort((a, b) => a.left - b.left || a.off - b.off)[0];
}

/** A figure within its own usual range is never questioned for the mixture's sake: an odd dose explains that as well. */
function isOpen({ quantity, ends }: Slip, stated: Settings, usual: Usual): boolean {
  const questioned = quantity === "both" ? (["pump_Hz", "fan_rpm"] as const) : [quantity];
  return questioned.some((key) =>
    ends.some((end) => unitsOutside(stated[end][key], usual[key][end]) !== 0),
  );
}

const QUANTITIES = [
  { key: "pump_Hz", name: "pump rate", unit: "Hz", step: 0.01 },
  { key: "fan_rpm", name: "fan speed", unit: "rpm", step: 1 },
] as const;

/** One reason for every figure the repair changes. */
function explained(stated: Settings, { slips, settings }: Repair): Reason[] {
  return ENDS.flatMap((end) =>
    QUANTITIES.flatMap(({ key, name, unit, step }): Reason[] => {
      const was = stated[end][key];
      const slip = slips.find((s) => s.quantity === key || s.quantity === "both");
      if (!slip || settings[end][key] === was) return [];
      const suggestion = toStep(settings[end][key], step);
      return [
        {
          code: slip.code,
          field: `${end}.${key}`,
          sentence:
            `The ${name} of ${say(was, 3)} ${unit} ${atPower(end)} ${slip.because}. ` +
            `Did you mean ${say(suggestion, decimalsOfStep(step))} ${unit}?`,
          suggestion,
        },
      ];
    }),
  );
}

/** Low end not below high end: there is no such power range. */
function outOfOrder(stated: Settings): Reason[] {
  return QUANTITIES.filter(({ key }) => stated.low[key] >= stated.high[key]).map(
    ({ key, name, unit }) => ({
      code: "ends_out_of_order",
      field: `low.${key}`,
      sentence:
        `The ${name} at lowest power (${say(stated.low[key], 3)} ${unit}) must be below the one at ` +
        `highest power (${say(stated.high[key], 3)} ${unit}). Check both.`,
    }),
  );
}

/** What no heater can do, though no slip explains it. */
function impossible(stated: Settings, usual: Usual, tune: Tune): Reason[] {
  return ENDS.flatMap((end) => {
    const { fan_rpm, pump_Hz } = stated[end];
    const reasons: Reason[] = [];
    const fan = usual.fan_rpm[end];
    if (Math.abs(unitsOutside(fan_rpm, fan)) > IMPOSSIBLE_UNITS) {
      reasons.push({
        code: "fan_speed_out_of_range",
        field: `${end}.fan_rpm`,
        sentence:
          `A fan speed of ${say(fan_rpm)} rpm ${atPower(end)} is far from the usual ` +
          `${say(fan[0])} to ${say(fan[1])} rpm. Check it.`,
      });
    }
    const outside = mixtureOutside(stated[end], usual.mixture[end]);
    if (Math.abs(outside) > IMPOSSIBLE_UNITS) {
      const [leanest, richest] = usual.mixture[end].map((m) => say((m * fan_rpm) / 1000, 1));
      reasons.push({
        code: "mixture_out_of_range",
        field: `${end}.pump_Hz`,
        sentence:
          `A pump rate of ${say(pump_Hz, 3)} Hz at ${say(fan_rpm)} rpm is far too ${outside > 0 ? "rich" : "lean"} ` +
          `to burn at ${say(tune.site.elevation_m)} m; ${leanest} to ${richest} Hz is usual. ` +
          `Check both figures ${atPower(end)}.`,
      });
    }
    return reasons;
  });
}
