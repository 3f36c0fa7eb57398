import { type Average, averageOf } from "./average.ts";
import type { Seeded } from "./draws.ts";
import { nightAt } from "./nights.ts";
import { drawOwn, type OwnHeater } from "./own.ts";
import { drawOwner } from "./owner.ts";
import { type End, lnRatio } from "./row.ts";
import { doseMean } from "./size.ts";
import { sizeOf, type Trade } from "./trade.ts";
import { tuneEnd } from "./tuning.ts";

/** The truth of a run, which the atlas never sees. x is always ln(true density/1.225). */
export interface Truth {
  /**
   * ln(Hz per 1,000 rpm) of the average honest, properly swept tune of this size and end at x: the mean over heaters
   * (tolerances, wear, doses), owners (where in the good range they settle, their meters, their fans) and the nights of
   * this climate that have such air, from 0 to 4,800 m. With a dose: the mean over heaters with a pump of that nominal
   * dose. Its own error is about 0.2 to 0.3 %, less where a run has many owners.
   */
  mean(heat_kW: number, end: End, x: number, dose_uL?: number): number;
  /** The same with the tunes that stopped early in it, at the run's share: what a perfect average of all honest rows is. */
  reported(heat_kW: number, end: End, x: number, dose_uL?: number): number;
  /** Standard deviation of newHeater's lnRatio about mean, its dose unknown. */
  spread(heat_kW: number, end: End): number;
  /** One more owner's honest, properly swept tune in air of exactly x. Its mean is mean(heat_kW, end, x). */
  newHeater(random: Seeded, heat_kW: number, end: End, x: number): NewTune;
  /** One heater whose tunes can be drawn at several x, to judge own-heater bands. */
  ownHeater(random: Seeded, heat_kW: number): OwnHeater;
}

export interface NewTune {
  lnRatio: number;
  pump_Hz: number;
  fan_rpm: number;
  /** The pump's nominal dose, whether the owner knows it or not. */
  nominal_uL: number;
  /** The same, where the owner states it. */
  dose_uL?: number;
}

export function truthOf(trade: Trade, random: Seeded): Truth {
  const averages = new Map<string, Average>();
  const seed = Math.floor(random.uniform() * 4294967296);
  const curves = (heat_kW: number, end: End): Average => {
    const name = `${heat_kW} ${end}`;
    const known = averages.get(name);
    if (known) return known;
    // Each from its own start, so that the answer does not depend on what was asked before.
    const made = averageOf(trade, seed + 20 * heat_kW + (end === "low" ? 0 : 5), heat_kW, end);
    averages.set(name, made);
    return made;
  };
  const dose = (heat_kW: number, dose_uL?: number) =>
    dose_uL === undefined ? doseMean(sizeOf(trade, heat_kW)) : Math.log(dose_uL);
  return {
    mean: (heat_kW, end, x, dose_uL) => curves(heat_kW, end).properly(x) - dose(heat_kW, dose_uL),
    reported: (heat_kW, end, x, dose_uL) =>
      curves(heat_kW, end).reported(x) - dose(heat_kW, dose_uL),
    spread: (heat_kW, end) => curves(heat_kW, end).spread,
    newHeater: (r, heat_kW, end, x) => newHeater(r, trade, heat_kW, end, x),
    ownHeater: (r, heat_kW) => drawOwn(r, trade, heat_kW),
  };
}

function newHeater(random: Seeded, trade: Trade, heat_kW: number, end: End, x: number): NewTune {
  const owner = drawOwner(random, trade, sizeOf(trade, heat_kW));
  const night = nightAt(random, trade.climate, x);
  const tuned = tuneEnd(random, trade, owner, end, night, "properly");
  const { nominal_uL } = owner.heater;
  return {
    lnRatio: lnRatio(tuned),
    pump_Hz: tuned.pump_Hz,
    fan_rpm: tuned.fan_rpm,
    nominal_uL,
    ...(owner.tells.dose ? { dose_uL: nominal_uL } : {}),
  };
}
