import type { CoReading } from "../../../model/co-reading.ts";
import type { SweepReading } from "../../../model/sweep/setup.ts";
import type { Seeded } from "../../../seed-demo/random.ts";
import { co_ppm, type Heater } from "./heater.ts";
import type { Meter } from "./meter.ts";

/** How long the exhaust's wavering lasts, and how long a flame that is too lean holds on. */
const WAVER_s = 10;
const DYING_s = 25;
/** Somebody who watches the figure calls it still when it has moved no more than this in half a minute. */
const WATCHED_s = 30;
const EVERY_s = 5;
const STILL = 0.06;

/** The heater with its meter, second by second: what a person at the exhaust sees. */
export class AtTheHeater {
  time_s = 0;
  flame_outs = 0;
  private shown = 0;
  private waver = 0;
  private gust = 0;
  private gust_s = 0;
  private readonly random: Seeded;
  private readonly heater: Heater;
  private readonly meter: Meter;

  constructor(random: Seeded, heater: Heater, meter: Meter) {
    this.random = random;
    this.heater = heater;
    this.meter = meter;
  }

  /** Warmed up at a rate, with the meter in its place. */
  warm(pump_Hz: number): void {
    this.shown = co_ppm(this.heater, pump_Hz);
  }

  /** Sets the pump, or leaves it, waits and reads, perhaps after having watched the figure for half a minute. */
  read(pump_Hz: number, wait_s: number, set_s?: number, watches = false): SweepReading {
    const at = { pump_Hz, ...(set_s !== undefined && { set_s }) };
    if (pump_Hz < this.heater.flame_out_Hz) {
      this.pass(pump_Hz, Math.min(wait_s, DYING_s));
      this.flame_outs++;
      return { ...at, time_s: this.time_s, flame_out: true };
    }
    this.pass(pump_Hz, wait_s);
    const still = watches && this.standsStill(pump_Hz);
    return { ...at, time_s: this.time_s, ...this.figure(), ...(still && { still }) };
  }

  private standsStill(pump_Hz: number): boolean {
    const seen: number[] = [];
    for (let s = 0; s < WATCHED_s; s += EVERY_s) {
      this.pass(pump_Hz, EVERY_s);
      seen.push(this.rounded());
    }
    const spread = Math.max(...seen) - Math.min(...seen);
    return spread <= Math.max(this.meter.resolution_ppm, STILL * Math.max(...seen));
  }

  private rounded(): number {
    const { resolution_ppm, drift_per_min } = this.meter;
    const drift = 1 + (drift_per_min * this.time_s) / 60;
    return resolution_ppm * Math.round((this.shown * drift) / resolution_ppm);
  }

  private figure(): CoReading {
    const { floor_ppm, ceiling_ppm } = this.meter;
    const shown = this.rounded();
    if (shown >= ceiling_ppm) return { co_above_ppm: ceiling_ppm };
    return shown < floor_ppm ? { co_below_ppm: floor_ppm } : { co_ppm: shown };
  }

  private pass(pump_Hz: number, seconds: number): void {
    for (let s = 0; s < seconds; s++) this.second(pump_Hz);
  }

  private second(pump_Hz: number): void {
    const { uniform, normal } = this.random;
    const { waver, gust_every_s, lag_s } = this.meter;
    this.time_s++;
    const keep = Math.exp(-1 / WAVER_s);
    this.waver = keep * this.waver + waver * Math.sqrt(1 - keep * keep) * normal();
    if (this.gust_s > 0) this.gust_s--;
    else if (uniform() < 1 / gust_every_s) {
      this.gust_s = 5 + Math.floor(10 * uniform());
      // Mostly thinner, now and then blown straight at the meter.
      this.gust = uniform() < 0.75 ? -0.2 - 0.5 * uniform() : 0.1 + 0.3 * uniform();
    }
    const gust = this.gust_s > 0 ? this.gust : 0;
    const true_ppm = co_ppm(this.heater, pump_Hz) * Math.exp(this.waver + gust);
    this.shown += (true_ppm - this.shown) * (1 - Math.exp(-1 / lag_s));
  }
}
