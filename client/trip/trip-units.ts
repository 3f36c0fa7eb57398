import type { Unit } from "../units.ts";

/** Units of the trip's elevations and temperatures: one choice for all its stops. */
export interface TripUnits {
  elevation: Unit;
  temperature: Unit;
  chooseUnit: (name: string) => void;
  chooseTemperature: (name: string) => void;
}
