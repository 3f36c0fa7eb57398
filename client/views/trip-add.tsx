import { useState } from "preact/hooks";
import type { Stop } from "../../model/trip/stop.ts";
import { NumberField } from "../parts/number-field.tsx";
import { PlaceSearch } from "../parts/place-search.tsx";
import { nameOf } from "../question.ts";
import { trip as words } from "../texts/trip.ts";
import { elevation_m, MOST_STOPS, temperature_C, tidyName } from "../trip/stop-schema.ts";
import type { Trip } from "../trip/trip.ts";
import type { TripUnits } from "../trip/trip-units.ts";
import { TripFile } from "./trip-file.tsx";

interface TripAddProps {
  trip: Trip;
  units: TripUnits;
  onTrip: (trip: Trip) => void;
}

/** Three ways to a stop: search a place, type an elevation, bring a file. */
export function TripAdd({ trip, units, onTrip }: TripAddProps) {
  const [searches, setSearches] = useState(0);
  const [added, setAdded] = useState("");
  const full = trip.stops.length >= MOST_STOPS;
  const add = (stops: Stop[]) => {
    onTrip({ ...trip, stops: [...trip.stops, ...stops] });
    setAdded(words.add.added(stops.length));
  };
  return (
    <section class="sheet" aria-labelledby="trip-stops">
      <h2 id="trip-stops">{words.add.title}</h2>
      <p class="hint">{words.add.intro}</p>
      {full ? (
        <p class="warning">{words.add.full(MOST_STOPS)}</p>
      ) : (
        <>
          <PlaceSearch
            key={searches}
            chosen={null}
            unit={units.elevation}
            onPlace={(place) => {
              const { lat, lon } = place;
              add([{ name: nameOf(place), elevation_m: place.elevation_m as number, lat, lon }]);
              setSearches(searches + 1);
            }}
          />
          <TypedStop number={trip.stops.length + 1} units={units} onStop={(stop) => add([stop])} />
          <TripFile room={MOST_STOPS - trip.stops.length} onStops={add} />
        </>
      )}
      <p class="visually-hidden" aria-live="polite">
        {added}
      </p>
    </section>
  );
}

/** A stop by its elevation; Enter adds it. */
function TypedStop(props: { number: number; units: TripUnits; onStop: (stop: Stop) => void }) {
  const { number, units, onStop } = props;
  const [name, setName] = useState("");
  const [elevation, setElevation] = useState<number>();
  const [temperature, setTemperature] = useState<number>();
  const [error, setError] = useState<string>();
  const submit = () => {
    const wrong = [
      elevation_m.safeParse(elevation),
      temperature_C.optional().safeParse(temperature),
    ]
      .map(({ error: e }) => e?.issues[0]?.message)
      .find(Boolean);
    if (elevation === undefined) return setError(words.add.needElevation);
    if (wrong) return setError(wrong);
    onStop({
      name: tidyName(name) || words.add.byName(number),
      elevation_m: elevation,
      temperature_C: temperature,
    });
    setName("");
    setElevation(undefined);
    setTemperature(undefined);
    setError(undefined);
  };
  return (
    <form
      class="typed-stop"
      noValidate
      onSubmit={(e) => {
        e.preventDefault();
        submit();
      }}
    >
      <div class="field">
        <label for="new-stop-name">{words.add.name}</label>
        <input
          id="new-stop-name"
          name="new.name"
          type="text"
          autoComplete="off"
          placeholder={words.add.byName(number)}
          value={name}
          onInput={(e) => setName(e.currentTarget.value)}
        />
      </div>
      <NumberField
        label={words.add.elevation}
        field="new.elevation_m"
        quantity="elevation"
        unit={units.elevation}
        onUnit={units.chooseUnit}
        value={elevation}
        onValue={setElevation}
        error={error}
      />
      <NumberField
        label={words.add.temperature}
        field="new.temperature_C"
        quantity="temperature"
        unit={units.temperature}
        onUnit={units.chooseTemperature}
        value={temperature}
        onValue={setTemperature}
      />
      <button type="submit">{words.add.button}</button>
    </form>
  );
}
