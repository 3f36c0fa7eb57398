import { expected_ppm } from "./estimate.ts";
import { noise_ppm } from "./noise.ts";
import { posteriorOf } from "./posterior.ts";
import type { Settling } from "./settling.ts";
import type { Sweep } from "./setup.ts";
import type { Stay } from "./stays.ts";

/** Beyond what the bowl explains: so many times what it expected (our own working value). */
const BEYOND_BOWL = 3;
/** A rise so small is no spike, ppm (our own working value). */
const LEAST_RISE_ppm = 40;

/** Whether CO shot up at a stay that is richer than the one before: judged by the last look, settled or not. */
export function spikeAt(
  sweep: Sweep,
  stays: readonly Stay[],
  settlings: readonly Settling[],
  i: number,
): boolean {
  const stay = stays[i] as Stay;
  const before = stays[i - 1];
  const last = stay.looks.at(-1);
  if (!before || !last || before.flame_out || stay.pump_Hz <= before.pump_Hz) return false;
  if (last.beyond === "floor" || last.ppm <= stay.from_ppm) return false;
  const limit_ppm = Math.min(sweep.spike_ppm, sweep.meter.ceiling_ppm);
  if (last.beyond === "ceiling" || last.ppm >= limit_ppm) return true;
  const rise = last.ppm - stay.from_ppm;
  if (rise < Math.max(LEAST_RISE_ppm, 4 * noise_ppm(sweep, last.ppm))) return false;
  const earlier = settlings.slice(0, i).flatMap(({ level }) => (level ? [level] : []));
  const { draws } = posteriorOf(sweep, earlier);
  const expected = expected_ppm(draws, stay.pump_Hz, sweep.meter.ceiling_ppm);
  return last.ppm > BEYOND_BOWL * expected;
}
