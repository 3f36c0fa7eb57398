import { mapWords } from "../texts/map.ts";
import { useUnit } from "../ui/number-field.tsx";
import { formatIn, toShown, toSi, UNITS } from "../units.ts";

/** Nights the slider runs through, °C; the field beside the answer takes any other. */
const COLDEST_C = -40;
const WARMEST_C = 30;
/** Where the slider stands while no temperature is given. */
const START_C = 0;

interface NightFieldProps {
  /** Undefined: the standard atmosphere's at each elevation. */
  temperature_C: number | undefined;
  onTemperature: (temperature_C: number | undefined) => void;
}

/** The night of the whole map, by slider; or the standard atmosphere, in which each elevation has its own. */
export function NightField({ temperature_C, onTemperature }: NightFieldProps) {
  const [unit, chooseUnit] = useUnit("temperature", "map.temperature");
  const standard = temperature_C === undefined;
  const shown = (celsius: number) => Math.round(toShown(celsius, unit));
  const told = standard ? mapWords.standardAir : formatIn(temperature_C, unit);
  return (
    <div class="night field">
      <label for="map-night">
        {mapWords.night}
        {!standard && (
          <>
            : <output for="map-night">{told}</output>
          </>
        )}
      </label>
      <label class="check">
        <input
          type="checkbox"
          checked={standard}
          onChange={(e) => onTemperature(e.currentTarget.checked ? undefined : START_C)}
        />
        {mapWords.standardAir}
      </label>
      <div class="with-unit">
        <input
          id="map-night"
          name="map.temperature_C"
          type="range"
          min={shown(COLDEST_C)}
          max={shown(WARMEST_C)}
          step={1}
          value={shown(temperature_C ?? START_C)}
          aria-valuetext={told}
          onInput={(e) => onTemperature(toSi(e.currentTarget.valueAsNumber, unit))}
        />
        <select
          aria-label={mapWords.nightUnit}
          value={unit.name}
          onChange={(e) => chooseUnit(e.currentTarget.value)}
        >
          {UNITS.temperature.map(({ name }) => (
            <option key={name} value={name}>
              {name}
            </option>
          ))}
        </select>
      </div>
    </div>
  );
}
