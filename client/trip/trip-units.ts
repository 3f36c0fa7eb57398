import type { UnitNames } from "../app/link/units-in.ts";
import { useUnit } from "../ui/number-field.tsx";
import { UNITS, type Unit } from "../units.ts";

/** Units of the trip's elevations and temperatures: one choice for all its stops. */
export interface TripUnits {
  elevation: Unit;
  temperature: Unit;
  chooseUnit: (name: string) => void;
  chooseTemperature: (name: string) => void;
}

/** Those of an opened link; a choice takes their place, and is remembered. */
export function useTripUnits(
  linked: UnitNames | undefined,
  showIn: (units: UnitNames) => void,
): TripUnits {
  const of = (quantity: keyof UnitNames) => {
    const [own, choose] = useUnit(quantity, `trip.${quantity}`);
    const units: readonly Unit[] = UNITS[quantity];
    const shown = units.find(({ name }) => name === linked?.[quantity]) ?? own;
    const chosen = (name: string) => {
      choose(name);
      if (linked) showIn({ ...linked, [quantity]: name });
    };
    return [shown, chosen] as const;
  };
  const [elevation, chooseUnit] = of("elevation");
  const [temperature, chooseTemperature] = of("temperature");
  return { elevation, temperature, chooseUnit, chooseTemperature };
}
