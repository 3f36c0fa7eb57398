import { between, chance, type Seeded } from "./draws.ts";
import { drawHeater, type Heater } from "./heater.ts";
import { type Bowl, drawBowl, drawMeter, type Meter } from "./meter.ts";
import type { End } from "./row.ts";
import type { HeaterSize } from "./size.ts";
import type { Trade } from "./trade.ts";

/** One owner: a heater, a meter, a place, ways of tuning and of telling. */
export interface Owner {
  heater: Heater;
  bowl: Record<End, Bowl>;
  meter: Meter;
  /** Where in the good range the owner settles, see sweepProperly. */
  habit: Record<End, number>;
  /** A club's or a liar's factor on the pump rate; 1 for most. */
  factor: number;
  /** How much more the owner's tunes scatter; 0 for the careful. */
  careless: number;
  goodEnough_ppm: number;
  /** Share of tunes that stop early. */
  stopsEarly: number;
  /** What the controller was set to last, Hz; at first the maker's setting. */
  set_Hz: Record<End, number>;
  tells: Tells;
}

/** What an owner states with a tune. */
export interface Tells {
  temperature: boolean;
  humidity: boolean;
  pressure: "station" | "QNH" | undefined;
  vagueElevation: boolean;
  dose: boolean;
  found: boolean;
  co: boolean;
}

export function drawOwner(random: Seeded, trade: Trade, size: HeaterSize): Owner {
  const { habits, options } = trade;
  const heater = drawHeater(random, size, trade.burning);
  const settles = (usual: number) => Math.max(-1, Math.min(1, usual + habits.sd * random.normal()));
  return {
    heater,
    bowl: { low: drawBowl(random), high: drawBowl(random) },
    meter: drawMeter(random, chance(random, options.roomAlarms)),
    habit: { low: settles(habits.low), high: settles(habits.high) },
    factor: 1,
    careless: 0,
    goodEnough_ppm: random.uniform() < 0.6 ? 30 : between(random, [12, 50]),
    stopsEarly: options.stopEarly,
    set_Hz: makersSetting(random, trade, heater),
    tells: drawTells(random, trade),
  };
}

/** The maker sets a heater up for sea level, mostly on the rich side. */
function makersSetting(random: Seeded, { typical_Hz }: Trade, heater: Heater) {
  const rich = Math.exp(0.08 + 0.08 * random.normal());
  const share = (end: End) => (heater.rpm[end] / heater.size.usual_rpm[end]) * rich;
  const pump = typical_Hz(heater.size, heater.nominal_uL);
  return { low: pump.low * share("low"), high: pump.high * share("high") };
}

function drawTells(random: Seeded, { options }: Trade): Tells {
  const temperature = chance(random, options.temperatureStated);
  return {
    temperature,
    humidity: temperature && chance(random, 0.2),
    pressure: chance(random, 0.2) ? (chance(random, 0.6) ? "station" : "QNH") : undefined,
    vagueElevation: chance(random, options.vagueElevation),
    dose: chance(random, options.doseStated),
    found: chance(random, options.foundStated),
    co: !chance(random, options.coLeftOut),
  };
}
