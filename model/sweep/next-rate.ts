import { ln_coAt } from "./estimate.ts";
import { restNoise_ppm, WAVER } from "./noise.ts";
import type { Posterior } from "./posterior.ts";
import type { Sweep } from "./setup.ts";

/** A rate to try and what a settled reading there would tell of the minimum's place, in nats, less its price. */
export interface Candidate {
  pump_Hz: number;
  information: number;
}

/** A reading expected this high is worth half of what it tells (our own working value). */
const SOOT_ppm = 100;
/** A reading's noise, one bin wide, spread over its neighbours. */
const SMEAR = [0.06, 0.24, 0.4, 0.24, 0.06];

/** What each rate's reading would tell, best first; where CO is expected to shoot up none is worth it. */
export function candidates(
  sweep: Sweep,
  posterior: Posterior,
  rates: readonly number[],
): Candidate[] {
  return rates
    .map((pump_Hz) => ({ pump_Hz, information: informationAt(sweep, posterior, pump_Hz) }))
    .sort((a, b) => b.information - a.information || a.pump_Hz - b.pump_Hz);
}

/** Mutual information between the minimum's place, in steps, and the reading, in its own noise. */
function informationAt(sweep: Sweep, { places_Hz, draws }: Posterior, pump_Hz: number): number {
  const from_Hz = places_Hz[0] as number;
  const places = Math.ceil(((places_Hz.at(-1) as number) - from_Hz) / sweep.step_Hz) + 1;
  const scale = readingScale(sweep);
  const low = scale(0);
  const bins = Math.ceil(scale(Number.POSITIVE_INFINITY) - low) + SMEAR.length;
  const joint = new Float64Array(places * bins);
  let spikes = 0;
  let high_ppm = 0;
  for (const draw of draws) {
    const ppm = Math.exp(ln_coAt(draw, pump_Hz));
    if (ppm > sweep.spike_ppm) spikes++;
    high_ppm += Math.min(sweep.spike_ppm, ppm) / draws.length;
    const row = Math.round((draw.minimum_Hz - from_Hz) / sweep.step_Hz) * bins;
    const bin = Math.floor(scale(ppm) - low);
    for (const [k, share] of SMEAR.entries()) {
      const at = row + bin + k;
      joint[at] = (joint[at] as number) + share / draws.length;
    }
  }
  // High CO is soot and a long way back for the meter: what it tells is bought dearly.
  const price = (1 - spikes / draws.length) / (1 + high_ppm / SOOT_ppm);
  return mutual(joint, places, bins) * price;
}

/** Readings in units of their own noise, ends of the meter's scale taken as one reading each. */
function readingScale({ meter }: Sweep): (ppm: number) => number {
  const rest = restNoise_ppm(meter.resolution_ppm);
  const floor = Math.max(meter.floor_ppm, 1);
  return (ppm) =>
    Math.asinh((WAVER * Math.max(floor, Math.min(meter.ceiling_ppm, ppm))) / rest) / WAVER;
}

function mutual(joint: Float64Array, places: number, bins: number): number {
  const byPlace = new Float64Array(places);
  const byBin = new Float64Array(bins);
  for (let p = 0, at = 0; p < places; p++) {
    for (let b = 0; b < bins; b++, at++) {
      byPlace[p] = (byPlace[p] as number) + (joint[at] as number);
      byBin[b] = (byBin[b] as number) + (joint[at] as number);
    }
  }
  let sum = 0;
  for (let p = 0, at = 0; p < places; p++) {
    for (let b = 0; b < bins; b++, at++) {
      const share = joint[at] as number;
      if (share > 0)
        sum += share * Math.log(share / ((byPlace[p] as number) * (byBin[b] as number)));
    }
  }
  return sum;
}
