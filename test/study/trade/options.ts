import type { Doses } from "./burning.ts";
import type { End, Mistake, TradeRow } from "./row.ts";

export interface TradeOptions {
  /** Owners, one key and one heater each. Default 200. */
  owners?: number;
  /** Heater sizes and their share of the owners. Default 5 kW alone. */
  sizes?: readonly { heat_kW: number; share: number }[];
  /** Pumps of one size: one nominal dose (default), two, or any. */
  doses?: Doses;
  /** Shares of owners, 0–1, with defaults: dose stated 0.3, temperature 0.75, elevation vague 0.1, how found 0.6. */
  doseStated?: number;
  temperatureStated?: number;
  vagueElevation?: number;
  foundStated?: number;
  /** CO left out: 0.1 of the owners. */
  coLeftOut?: number;
  /** Owners whose meter shows nothing below 30 ppm: 0.3. */
  roomAlarms?: number;
  /** Share of tunes that stop when good enough or at the first turning. Default 0: everyone sweeps properly. */
  stopEarly?: number;
  /** How much colder than usual all nights are, K: 0. */
  colderNights_K?: number;
  /** Share of nights near saturation: 0.3. */
  humidNights?: number;
  /** Clubs meet at one place in one month, and share a habit: a factor on the pump rate with this spread of ln. */
  clubs?: { number: number; members: number; habit_sd: number };
  /** One key that sends this share of all rows, from one heater. */
  oneKey?: number;
  /** Shares of owners who make each mistake; nobody makes two. */
  mistakes?: Partial<Record<Mistake, number>>;
  lies?: Lies;
  copies?: Copies;
}

export interface Lies {
  /** Share of owners. */
  share: number;
  /** Pump rate told over the true one: one factor for all (they agree), or a range from which each draws. */
  factor: number | readonly [number, number];
  /**
   * Everywhere: wherever they go. Sea, high: tunes from there alone. Sea true: true by the sea, false up high.
   * One place: invented rows from one high camp, all telling the same ratio.
   */
  where: "everywhere" | "sea" | "high" | "sea true, high false" | "one place";
}

/** What an owner asks the atlas for before tuning. */
export interface Question {
  heat_kW: number;
  end: End;
  /** As the atlas computes it from what the owner states. */
  density_kg_m3: number;
  ln_density_sd: number;
  fan_rpm: number;
  dose_uL?: number;
}

export interface Copies {
  /** Owners who come first and tune themselves. */
  honestFirst: number;
  /** Of the owners after them, the share who set what is suggested without a sweep, and who go half-way to their best. */
  outright: number;
  halfWay: number;
  /** Share of these owners who say "as suggested" (the half-way: "stopped early"); the others say nothing. Default 0.5. */
  admitted?: number;
  /** Owners between one version of the atlas and the next. Default 20. */
  batch?: number;
  /** Called when a version is due, with all rows so far. */
  publish(rows: readonly TradeRow[]): void;
  /** The current version's pump rate, Hz, or null when it has none. */
  suggest(question: Question): number | null;
}

type Shares =
  | "doseStated"
  | "temperatureStated"
  | "vagueElevation"
  | "foundStated"
  | "coLeftOut"
  | "roomAlarms"
  | "stopEarly"
  | "colderNights_K"
  | "humidNights";

export type Settled = TradeOptions &
  Required<Pick<TradeOptions, "owners" | "sizes" | "doses" | Shares>>;

export const settle = (options: TradeOptions): Settled => ({
  owners: 200,
  sizes: [{ heat_kW: 5, share: 1 }],
  doses: "one size",
  doseStated: 0.3,
  temperatureStated: 0.75,
  vagueElevation: 0.1,
  foundStated: 0.6,
  coLeftOut: 0.1,
  roomAlarms: 0.3,
  stopEarly: 0,
  colderNights_K: 0,
  humidNights: 0.3,
  ...options,
});
