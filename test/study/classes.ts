import { standardDensity } from "../../model/air.ts";
import { lnRatio } from "./airs.ts";
import { crowd, type SimulatedRow, USUAL } from "./crowd.ts";
import { type Population, type Seeded, trueMean } from "./population.ts";

/** Large classes beside a small one, each with so many contributors. */
const LARGE = [2, 4, 8];
const EACH = 60;

/** A class of the same make: its own intercept, nearly the same slope and spread. */
export function sibling({ normal }: Seeded, p: Population): Population {
  return {
    ...p,
    intercept: p.intercept + 0.08 * normal(),
    slope: p.slope + 0.03 * normal(),
    between: p.between * Math.exp(0.15 * normal()),
  };
}

/** Three large classes that resemble each other, and the small one that is asked about. */
export function besideLargeClasses(
  random: Seeded,
  family: Population,
  small: Population,
  contributors: number,
): SimulatedRow[] {
  const large = LARGE.map((heat_kW) =>
    crowd(random, sibling(random, family), EACH, USUAL, { name: `class${heat_kW} `, heat_kW }),
  );
  return [...large.flat(), ...crowd(random, small, contributors)];
}

/** How far a tune's deviation at one end tells the other end's: the dose is the same, the burning is not. */
const BETWEEN_ENDS = 0.6;

/** Adds the other end of every tune: same heater, site and night, deviations correlated. */
export function withOtherEnd(
  random: Seeded,
  rows: readonly SimulatedRow[],
  population: Population,
  other: Population,
): SimulatedRow[] {
  const end = rows[0]?.end === "high" ? "low" : "high";
  const fan_rpm = end === "low" ? 1650 : 4400;
  const own = new Map<string, number>();
  const apart = Math.sqrt(1 - BETWEEN_ENDS ** 2);
  return rows.flatMap((row) => {
    const heater = own.get(row.contributor) ?? random.normal();
    own.set(row.contributor, heater);
    const x = lnRatio(standardDensity(row.elevation_m) * row.night);
    const here = Math.log((row.pump_Hz * 1000) / row.fan_rpm) - trueMean(population, x);
    const scale = other.between / population.between;
    const y =
      trueMean(other, x) +
      BETWEEN_ENDS * scale * here +
      apart * (other.between * heater + other.within * random.normal());
    const name = `${row.row} ${end}`;
    return [row, { ...row, row: name, end, fan_rpm, pump_Hz: (fan_rpm / 1000) * Math.exp(y) }];
  });
}
