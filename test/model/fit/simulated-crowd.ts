import { standardDensity } from "../../../model/air.ts";
import type { FitRow } from "../../../model/fit/group.ts";
import { type Seeded, seeded } from "../../../seed-demo/random.ts";

export { type Seeded, seeded };

/** The truth behind the simulated crowds: invented, near what the physics prior expects. */
export const TRUTH = { intercept: Math.log(0.66), slope: 0.85, between: 0.08, within: 0.05 };

export function trueMean(density_kg_m3: number): number {
  return TRUTH.intercept + TRUTH.slope * Math.log(density_kg_m3 / 1.225);
}

/** ln(Hz per 1,000 rpm) of one more honest heater. */
export function oneMore({ normal }: Seeded, density_kg_m3: number): number {
  return trueMean(density_kg_m3) + TRUTH.between * normal() + TRUTH.within * normal();
}

/**
 * Honest contributors with one to three tunes each: 55 % of sites below 500 m, the rest thinning out to
 * 4,500 m, night temperatures 10 K about the standard atmosphere's, density known to 1 %. A share of rows can
 * carry a slip: half or double, ten times or a tenth, elevation in feet, junk, in equal parts.
 */
export function crowd(random: Seeded, contributors: number, slips = 0): FitRow[] {
  const { uniform, normal } = random;
  const rows: FitRow[] = [];
  for (let c = 0; c < contributors; c++) {
    const own = TRUTH.between * normal();
    const tunes = 1 + Number(uniform() < 0.5) + Number(uniform() < 0.25);
    for (let k = 0; k < tunes; k++) {
      const elevation_m = uniform() < 0.55 ? 500 * uniform() : 500 + 4000 * uniform() * uniform();
      const night = 288 / (288 + 10 * normal());
      const density = standardDensity(elevation_m) * night;
      let y = trueMean(density) + own + TRUTH.within * normal();
      let stated = density * Math.exp(0.01 * normal());
      if (uniform() < slips) {
        const kind = Math.floor(4 * uniform());
        const up = uniform() < 0.5 ? 1 : -1;
        if (kind === 0) y += up * Math.log(2);
        if (kind === 1) y += up * Math.log(10);
        if (kind === 2) stated = standardDensity(Math.min(6000, elevation_m * 3.28)) * night;
        if (kind === 3) y += normal();
      }
      rows.push(row(rows.length, `c${c}`, `p${Math.floor(uniform() * 1e6)}`, stated, y));
    }
  }
  return rows;
}

/** Adds contributors who agree on one lie: so many times the true pump rate, at 4,000 m or spread over high places. */
export function withFakes(
  random: Seeded,
  rows: FitRow[],
  { share, times, spread }: { share: number; times: number; spread: boolean },
): FitRow[] {
  const honest = new Set(rows.map((r) => r.contributor)).size;
  const fakes = Math.round((honest * share) / (1 - share));
  const lies = Array.from({ length: fakes }, (_, i) => {
    const density = standardDensity(spread ? 2500 + 2000 * random.uniform() : 4000);
    const y = trueMean(density) + Math.log(times) + 0.03 * random.normal();
    const cell = spread ? `f${Math.floor(random.uniform() * 400)}` : "one place";
    return row(rows.length + i, `f${i}`, cell, density, y);
  });
  return [...rows, ...lies];
}

function row(id: number, contributor: string, cell: string, density: number, y: number): FitRow {
  return {
    row: id,
    contributor,
    cell,
    heat_kW: 5,
    end: "low",
    density_kg_m3: density,
    pump_Hz: 1.65 * Math.exp(y),
    fan_rpm: 1650,
  };
}
