import { estimateOf, expected_ppm, type MinimumEstimate } from "./estimate.ts";
import { type Guards, guardsOf, ratesWithin } from "./guards.ts";
import { type Lag, lagOf } from "./lag.ts";
import { type Posterior, posteriorOf } from "./posterior.ts";
import { type Level, type Settling, settlingOf } from "./settling.ts";
import {
  requireReadings,
  type Sweep,
  type SweepReading,
  type SweepSetup,
  sweepOf,
} from "./setup.ts";
import { spikeAt } from "./spike.ts";
import { type Stay, staysOf } from "./stays.ts";

/** All that is known after these readings; everything else follows from it. */
export interface SweepState {
  sweep: Sweep;
  stays: Stay[];
  lag: Lag;
  /** The last stay's settling; missing before the first reading. */
  last?: Settling;
  levels: Level[];
  settled: number;
  /** The last move was to the rich side and CO shot up. */
  spike: boolean;
  guards: Guards;
  /** Rates that may be recommended. */
  rates: number[];
  posterior: Posterior;
  estimate: MinimumEstimate;
}

/** @throws RangeError naming what is wrong with the setup or a reading */
export function stateOf(setup: SweepSetup, readings: readonly SweepReading[]): SweepState {
  const sweep = sweepOf(setup);
  requireReadings(readings);
  const stays = staysOf(sweep, readings);
  const lag = lagOf(sweep, stays);
  const settlings = stays.map((stay) => settlingOf(sweep, stay, lag));
  const known = settlings.filter((_, i) => !stays[i]?.flame_out);
  const levels = known.flatMap(({ level }) => (level ? [level] : []));
  const spikes = stays.map((_, i) => spikeAt(sweep, stays, settlings, i));
  const spike_Hz = Math.min(
    ...stays.filter((_, i) => spikes[i]).map(({ pump_Hz }) => pump_Hz),
    Number.POSITIVE_INFINITY,
  );
  const guards = guardsOf(sweep, stays, spike_Hz);
  const posterior = posteriorOf(sweep, levels);
  const last = settlings.at(-1);
  return {
    sweep,
    stays,
    lag,
    ...(last && { last }),
    levels,
    settled: known.filter(({ settled }) => settled).length,
    spike: spikes.at(-1) ?? false,
    guards,
    rates: ratesWithin(sweep, guards),
    posterior,
    estimate: estimateOf(posterior),
  };
}

/** CO expected at a rate, ppm, as this meter would show it. */
export function expectedAt({ posterior, sweep }: SweepState, pump_Hz: number): number {
  return expected_ppm(posterior.draws, pump_Hz, sweep.meter.ceiling_ppm);
}
