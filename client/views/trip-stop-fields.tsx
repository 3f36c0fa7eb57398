import { useState } from "preact/hooks";
import { ELEVATION_RANGE_m } from "../../model/air.ts";
import { guessedTemperature, type Stop } from "../../model/trip/stop.ts";
import { NumberField } from "../parts/number-field.tsx";
import { t } from "../texts/app.ts";
import { trip as words } from "../texts/trip.ts";
import { elevation_m, MOST_NIGHTS, nights, temperature_C, tidyName } from "../trip/stop-schema.ts";
import type { TripUnits } from "../trip/trip-units.ts";
import { format, formatIn } from "../units.ts";
import { NameField } from "./trip-name-field.tsx";

/** Name, elevation, night and number of nights of a stop; what cannot be is said and not taken. */
export function StopFields(props: {
  stop: Stop;
  at: number;
  units: TripUnits;
  onStop: (part: Partial<Stop>) => void;
}) {
  const { stop, at, units, onStop } = props;
  const [wrong, setWrong] = useState<{
    elevation?: boolean;
    temperature?: boolean;
    nights?: boolean;
  }>({});
  const [lowest, highest] = ELEVATION_RANGE_m;
  const setElevation = (value: number | undefined) => {
    const good = elevation_m.safeParse(value).success;
    setWrong({ ...wrong, elevation: !good });
    if (good && value !== stop.elevation_m)
      onStop({ elevation_m: value as number, elevation_sd_m: undefined });
  };
  const setTemperature = (value: number | undefined) => {
    const good = value === undefined || temperature_C.safeParse(value).success;
    setWrong({ ...wrong, temperature: !good });
    if (good) onStop({ temperature_C: value });
  };
  const setNights = (value: number | undefined) => {
    const good = value === undefined || nights.safeParse(value).success;
    setWrong({ ...wrong, nights: !good });
    if (good) onStop({ nights: value });
  };
  const guess = formatIn(guessedTemperature(stop.elevation_m), units.temperature);
  return (
    <div class="stop-fields">
      <NameField
        id={`stop-${at}-name`}
        field={`stops.${at}.name`}
        value={stop.name}
        onName={(name) => onStop({ name: tidyName(name) || words.add.byName(at + 1) })}
      />
      <NumberField
        label={words.add.elevation}
        field={`stops.${at}.elevation_m`}
        quantity="elevation"
        unit={units.elevation}
        onUnit={units.chooseUnit}
        value={stop.elevation_m}
        onValue={setElevation}
        hint={
          stop.elevation_sd_m === undefined
            ? undefined
            : words.list.estimated(formatIn(1.96 * stop.elevation_sd_m, units.elevation))
        }
        error={
          wrong.elevation
            ? t.site.outOfRange(
                formatIn(lowest, units.elevation),
                formatIn(highest, units.elevation),
              )
            : undefined
        }
      />
      <NumberField
        label={words.add.temperature}
        field={`stops.${at}.temperature_C`}
        quantity="temperature"
        unit={units.temperature}
        onUnit={units.chooseTemperature}
        value={stop.temperature_C}
        onValue={setTemperature}
        hint={stop.temperature_C === undefined ? words.list.guess(guess) : undefined}
        error={
          wrong.temperature
            ? t.site.outOfRange(formatIn(-60, units.temperature), formatIn(45, units.temperature))
            : undefined
        }
      />
      <NumberField
        label={words.add.nights}
        field={`stops.${at}.nights`}
        value={stop.nights}
        onValue={setNights}
        placeholder="1"
        error={wrong.nights ? words.heater.outOfRange("1", format(MOST_NIGHTS)) : undefined}
      />
    </div>
  );
}
