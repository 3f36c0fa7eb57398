import { useState } from "preact/hooks";
import type { Stop } from "../../model/trip/stop.ts";
import { trip as words } from "../texts/trip.ts";
import { StopFields } from "./stop-fields.tsx";
import { changed, moved, type Trip, without } from "./trip.ts";
import type { TripUnits } from "./trip-units.ts";

interface TripStopsProps {
  trip: Trip;
  units: TripUnits;
  onTrip: (trip: Trip) => void;
  onClear: () => void;
  /** Goes to the heater with all that a stop says. */
  onTune: (stop: Stop) => void;
}

/** The stops in their order, each with its night; buttons move them, so keys can. */
export function TripStops({ trip, units, onTrip, onClear, onTune }: TripStopsProps) {
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
                <button
                  type="button"
                  aria-label={words.list.tuneAt(stop.name)}
                  onClick={() => onTune(stop)}
                >
                  {words.list.tune}
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
