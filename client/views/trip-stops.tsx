import { useState } from "preact/hooks";
import { ELEVATION_RANGE_m } from "../../model/air.ts";
import { guessedTemperature, type Stop } from "../../model/trip/stop.ts";
import { NumberField } from "../parts/number-field.tsx";
import { t } from "../texts/app.ts";
import { trip as words } from "../texts/trip.ts";
import { elevation_m, temperature_C, tidyName } from "../trip/stop-schema.ts";
import { changed, moved, type Trip, without } from "../trip/trip.ts";
import type { TripUnits } from "../trip/trip-units.ts";
import { formatIn } from "../units.ts";

interface TripStopsProps {
  trip: Trip;
  units: TripUnits;
  onTrip: (trip: Trip) => void;
  onClear: () => void;
}

/** The stops in their order, each with its night; buttons move them, so keys can. */
export function TripStops({ trip, units, onTrip, onClear }: TripStopsProps) {
  const [said, setSaid] = useState("");
  const { stops } = trip;
  const move = (from: number, to: number) => {
    onTrip(moved(trip, from, to));
    setSaid(words.list.nowAt(stops[from]?.name ?? "", to + 1, stops.length));
    // The keyboard goes along with the stop; at either end only the other button is left.
    requestAnimationFrame(() => {
      const buttons = [...document.querySelectorAll<HTMLButtonElement>(`[data-stop="${to}"]`)];
      (to < from ? buttons : buttons.reverse()).find(({ disabled }) => !disabled)?.focus();
    });
  };
  if (stops.length === 0) return <p class="note">{words.list.empty}</p>;
  return (
    <section class="sheet stops" aria-label={words.list.title}>
      <ol>
        {stops.map((stop, i) => (
          <li key={i}>
            <fieldset>
              <legend>{words.list.stop(i + 1, stop.name)}</legend>
              <StopFields
                stop={stop}
                at={i}
                units={units}
                onStop={(part) => onTrip(changed(trip, i, part))}
              />
              <div class="row">
                <button
                  type="button"
                  disabled={i === 0}
                  data-stop={i}
                  aria-label={words.list.earlierThan(stop.name)}
                  onClick={() => move(i, i - 1)}
                >
                  ↑ {words.list.earlier}
                </button>
                <button
                  type="button"
                  disabled={i === stops.length - 1}
                  data-stop={i}
                  aria-label={words.list.laterThan(stop.name)}
                  onClick={() => move(i, i + 1)}
                >
                  ↓ {words.list.later}
                </button>
                <button
                  type="button"
                  aria-label={words.list.removeThis(stop.name)}
                  onClick={() => onTrip(without(trip, i))}
                >
                  {words.list.remove}
                </button>
              </div>
            </fieldset>
          </li>
        ))}
      </ol>
      <p class="visually-hidden" aria-live="polite">
        {said}
      </p>
      <div class="row">
        <button type="button" class="danger" onClick={onClear}>
          {words.list.clear}
        </button>
      </div>
    </section>
  );
}

function StopFields(props: {
  stop: Stop;
  at: number;
  units: TripUnits;
  onStop: (part: Partial<Stop>) => void;
}) {
  const { stop, at, units, onStop } = props;
  const [wrong, setWrong] = useState<{ elevation?: boolean; temperature?: boolean }>({});
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
  const guess = formatIn(guessedTemperature(stop.elevation_m), units.temperature);
  return (
    <div class="stop-fields">
      <div class="field">
        <label for={`stop-${at}-name`}>{words.add.name}</label>
        <input
          id={`stop-${at}-name`}
          name={`stops.${at}.name`}
          type="text"
          autoComplete="off"
          value={stop.name}
          onChange={(e) =>
            onStop({ name: tidyName(e.currentTarget.value) || words.add.byName(at + 1) })
          }
        />
      </div>
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
    </div>
  );
}
