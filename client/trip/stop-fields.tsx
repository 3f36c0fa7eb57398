import { ELEVATION_RANGE_m } from "../../model/air.ts";
import { guessedTemperature, type Stop } from "../../model/trip/stop.ts";
import { MOST_NIGHTS, TEMPERATURES_C, tidyName } from "../base/stop-schema.ts";
import { t } from "../texts/app.ts";
import { trip as words } from "../texts/trip.ts";
import { NumberWithin } from "../ui/number-within.tsx";
import { format, formatIn, type Unit } from "../units.ts";
import { NameField } from "./name-field.tsx";
import type { TripUnits } from "./trip-units.ts";

/** Name, elevation, night and number of nights of a stop; what cannot be is said and not taken. */
export function StopFields(props: {
  stop: Stop;
  at: number;
  units: TripUnits;
  onStop: (part: Partial<Stop>) => void;
}) {
  const { stop, at, units, onStop } = props;
  const said =
    (unit: Unit, [least, most]: readonly [number, number]) =>
    () =>
      t.site.outOfRange(formatIn(least, unit), formatIn(most, unit));
  const guess = formatIn(guessedTemperature(stop.elevation_m), units.temperature);
  return (
    <div class="stop-fields">
      <NameField
        id={`stop-${at}-name`}
        field={`stops.${at}.name`}
        value={stop.name}
        onName={(name) => onStop({ name: tidyName(name) || words.add.byName(at + 1) })}
      />
      <NumberWithin
        label={words.add.elevation}
        field={`stops.${at}.elevation_m`}
        quantity="elevation"
        unit={units.elevation}
        onUnit={units.chooseUnit}
        value={stop.elevation_m}
        range={ELEVATION_RANGE_m}
        outOfRange={said(units.elevation, ELEVATION_RANGE_m)}
        onValue={(value) => {
          if (value !== stop.elevation_m)
            onStop({ elevation_m: value as number, elevation_sd_m: undefined });
        }}
        hint={
          stop.elevation_sd_m === undefined
            ? undefined
            : words.list.estimated(formatIn(1.96 * stop.elevation_sd_m, units.elevation))
        }
      />
      <NumberWithin
        label={words.add.temperature}
        field={`stops.${at}.temperature_C`}
        quantity="temperature"
        unit={units.temperature}
        onUnit={units.chooseTemperature}
        value={stop.temperature_C}
        optional
        range={TEMPERATURES_C}
        outOfRange={said(units.temperature, TEMPERATURES_C)}
        onValue={(value) => onStop({ temperature_C: value })}
        hint={stop.temperature_C === undefined ? words.list.guess(guess) : undefined}
      />
      <NumberWithin
        label={words.add.nights}
        field={`stops.${at}.nights`}
        value={stop.nights}
        optional
        whole
        range={[1, MOST_NIGHTS]}
        outOfRange={() => words.heater.outOfRange("1", format(MOST_NIGHTS))}
        onValue={(value) => onStop({ nights: value })}
        placeholder="1"
      />
    </div>
  );
}
