import type { Band } from "../fit/bands.ts";

/** What every answer carries, for the chart beside it. */
interface Said {
  /** One sentence or two for people. */
  sentence: string;
  guards_Hz: { lean: number; rich: number };
  /** The minimum as far as it is known. */
  minimum_Hz: number;
  /** Credible intervals at 80 and 95 %. */
  intervals_Hz: Band[];
  /** The meter's time constant as far as the readings tell it. */
  lag_s: number;
  /** Settled readings so far. */
  settled: number;
}

/** Set the pump to this rate, wait, read. */
export interface SetRate extends Said {
  kind: "set";
  pump_Hz: number;
  wait_s: number;
  why: "start" | "leaner" | "richer" | "spike" | "flame-out" | "confirm";
}

/** The meter is still on its way: read again after this. */
export interface Wait extends Said {
  kind: "wait";
  pump_Hz: number;
  wait_s: number;
}

/** Done: the minimum, the flat range around it and where in it to sit. */
export interface Minimum extends Said {
  kind: "minimum";
  basin_Hz: { lower: number; upper: number };
  sit_Hz: number;
  sit_ppm: number;
  /** Which limbs of the bowl were climbed; false where a guard ended the sweep first. */
  limbs: { lean: boolean; rich: boolean };
  /** The bottom of the bowl is below what the meter shows. */
  below_floor: boolean;
  confirmed?: Confirmed;
}

/** What the meter settled at with the pump at `sit_Hz`, read there last. */
export interface Confirmed {
  /** As the meter showed it; missing when it showed nothing. */
  co_ppm?: number;
  co_below_ppm?: number;
  /** Whether that is what the sweep led to expect; if not, something has changed on the way. */
  agrees: boolean;
}

/** Done, with no minimum, and why. */
export interface NoMinimum extends Said {
  kind: "no minimum";
  why: "below floor" | "above ceiling";
  /** Where to leave the pump. */
  sit_Hz: number;
}

/** The flame has gone out too often: no further attempt. */
export interface Stop extends Said {
  kind: "stop";
  flame_outs: number;
}

export type SweepAnswer = SetRate | Wait | Minimum | NoMinimum | Stop;
