import type { SweepReading } from "../../../model/sweep/setup.ts";
import type { Seeded } from "../../../seed-demo/random.ts";
import { co_ppm, type Exhaust, type Meter } from "./exhaust.ts";

/** Wavering of the exhaust: share, and how long it lasts; gusts: how often, how long, how much. */
const WAVER = 0.08;
const WAVER_s = 10;
const GUST_EVERY_s = 240;

/** The heater with its meter, second by second: what a person at the exhaust sees. */
export class AtTheHeater {
  time_s = 0;
  flame_outs = 0;
  private shown = 0;
  private waver = 0;
  private gust = 0;
  private gust_s = 0;
  private readonly random: Seeded;
  private readonly exhaust: Exhaust;
  private readonly meter: Meter;

  constructor(random: Seeded, exhaust: Exhaust, meter: Meter) {
    this.random = random;
    this.exhaust = exhaust;
    this.meter = meter;
  }

  /** Sets the pump, or leaves it, waits and reads. */
  read(pump_Hz: number, wait_s: number, set_s?: number): SweepReading {
    const out = pump_Hz < this.exhaust.flame_out_Hz;
    for (let s = 0; s < (out ? Math.min(wait_s, 25) : wait_s); s++) this.second(pump_Hz);
    const at = { pump_Hz, time_s: this.time_s, ...(set_s !== undefined && { set_s }) };
    if (out) {
      this.flame_outs++;
      return { ...at, flame_out: true };
    }
    const { resolution_ppm, floor_ppm, ceiling_ppm } = this.meter;
    const drift = 1 + (this.meter.drift_per_min * this.time_s) / 60;
    const shown = resolution_ppm * Math.round((this.shown * drift) / resolution_ppm);
    if (shown >= ceiling_ppm) return { ...at, at_ceiling: true };
    if (shown < floor_ppm) return { ...at, co_below_ppm: floor_ppm };
    return { ...at, co_ppm: shown };
  }

  private second(pump_Hz: number): void {
    const { uniform, normal } = this.random;
    this.time_s++;
    const keep = Math.exp(-1 / WAVER_s);
    this.waver = keep * this.waver + WAVER * Math.sqrt(1 - keep * keep) * normal();
    if (this.gust_s > 0) this.gust_s--;
    else if (uniform() < 1 / GUST_EVERY_s) {
      this.gust_s = 5 + Math.floor(10 * uniform());
      // Mostly thinner, now and then blown straight at the meter.
      this.gust = uniform() < 0.75 ? -0.2 - 0.5 * uniform() : 0.1 + 0.3 * uniform();
    }
    const gust = this.gust_s > 0 ? this.gust : 0;
    const true_ppm = co_ppm(this.exhaust, pump_Hz) * Math.exp(this.waver + gust);
    this.shown += (true_ppm - this.shown) * (1 - Math.exp(-1 / this.meter.lag_s));
  }
}
