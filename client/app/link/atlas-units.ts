import { unitOf } from "../../ui/number-field.tsx";

/** The units that Start shows its answer in. */
export function atlasUnits() {
  return {
    elevation: unitOf("elevation", "atlas.elevation"),
    temperature: unitOf("temperature", "atlas.temperature"),
  };
}
