import { type Burning, drawBurning } from "./burning.ts";
import { between, type Seeded } from "./draws.ts";
import { bestPumpRate, type Heater } from "./heater.ts";
import { type Climate, drawClimate } from "./nights.ts";
import type { Settled } from "./options.ts";
import type { End } from "./row.ts";
import { drawSize, type HeaterSize } from "./size.ts";
import { drawTravel, type Travel } from "./travel.ts";

/** The world of one run: what all its heaters, nights and owners have in common. Drawn anew each run. */
export interface Trade {
  options: Settled;
  burning: Burning;
  climate: Climate;
  travel: Travel;
  /** Where owners settle in the good range: towards rich at low power, towards lean at high (common practice, no source). */
  habits: { low: number; high: number; sd: number };
  sizes: readonly HeaterSize[];
  /** Best pump rates, Hz, of the average heater of a size at sea level in standard air. */
  typical_Hz(size: HeaterSize, dose_uL: number): Record<End, number>;
}

export function drawTrade(random: Seeded, options: Settled): Trade {
  const burning = drawBurning(random, options.doses);
  const excessAir = { low: between(random, [1.9, 2.7]), high: between(random, [1.35, 1.8]) };
  const sizes = options.sizes.map(({ heat_kW }) => drawSize(random, heat_kW, excessAir, burning));
  const typical_Hz = (size: HeaterSize, dose_uL: number) => {
    const heater = average(size, dose_uL, burning);
    const best = (end: End) => bestPumpRate(heater, burning, end, size.usual_rpm[end], STANDARD);
    return { low: best("low"), high: best("high") };
  };
  return {
    options,
    burning,
    climate: drawClimate(random, options.colderNights_K),
    travel: drawTravel(random),
    habits: {
      low: between(random, [0, 0.5]),
      high: between(random, [-0.4, 0.1]),
      sd: between(random, [0.15, 0.35]),
    },
    sizes,
    typical_Hz,
  };
}

const STANDARD = { density_kg_m3: 1.225, temperature_C: 15, x: 0 };

/** The average heater of a size: every tolerance at its mean. */
export const average = (size: HeaterSize, nominal_uL: number, burning: Burning): Heater => ({
  size,
  nominal_uL,
  dose: 1,
  air: Math.exp(-burning.wear / 2),
  excessAir: { low: 1, high: 1 },
  rpm: size.usual_rpm,
  raise: 0,
  fuelOutdoors: 0.65,
});

export function sizeOf(trade: Trade, heat_kW: number): HeaterSize {
  const size = trade.sizes.find((s) => s.heat_kW === heat_kW);
  if (!size) throw new RangeError(`This run has no heater size of ${heat_kW} kW.`);
  return size;
}
