import { useLayoutEffect, useRef, useState } from "preact/hooks";
import type { PublishedFit } from "../../model/fit/group.ts";
import type { Stop } from "../../model/trip/stop.ts";
import { MOST_STOPS } from "../base/stop-schema.ts";
import { trip as words } from "../texts/trip.ts";
import { later } from "../ui/later.tsx";
import { PlaceSearch } from "../ui/place-search.tsx";
import { TripFile } from "./stops-file.tsx";
import type { Trip } from "./trip.ts";
import type { TripUnits } from "./trip-units.ts";
import { TypedStop } from "./typed-stop.tsx";

// A large library: fetched by those alone who open the map.
const TripMap = later(() => import("./stops-map.tsx").then((m) => m.TripMap));

interface TripAddProps {
  fit: PublishedFit;
  trip: Trip;
  units: TripUnits;
  onTrip: (trip: Trip) => void;
}

/** Four ways to a stop: search a place, type an elevation, choose on the map, bring a file. */
export function TripAdd({ fit, trip, units, onTrip }: TripAddProps) {
  const [searches, setSearches] = useState(0);
  const [opened, setOpened] = useState(false);
  const [added, setAdded] = useState("");
  const [adding, setAdding] = useState(trip.stops.length === 0);
  const form = useRef<HTMLDetailsElement>(null);
  const stood = useRef<number | null>(null);
  // The answer grows above the form: the form stays where the thumb is, so that the next stop can be added.
  useLayoutEffect(() => {
    if (stood.current === null || !form.current) return;
    scrollBy({
      top: form.current.getBoundingClientRect().top - stood.current,
      behavior: "instant",
    });
    stood.current = null;
  });
  const full = trip.stops.length >= MOST_STOPS;
  const add = (stops: Stop[]) => {
    stood.current = form.current?.getBoundingClientRect().top ?? null;
    onTrip({ ...trip, stops: [...trip.stops, ...stops] });
    setAdded(words.add.added(stops.length));
  };
  return (
    <details
      class="sheet"
      ref={form}
      open={adding}
      onToggle={(e) => {
        // Of the details within it too.
        if (e.target === e.currentTarget) setAdding(e.currentTarget.open);
      }}
    >
      <summary>
        <h2 id="trip-stops">{words.add.title}</h2>
      </summary>
      <div class="folded">
        <p class="hint">{words.add.intro}</p>
        {full ? (
          <p class="warning">{words.add.full(MOST_STOPS)}</p>
        ) : (
          <>
            <PlaceSearch
              key={searches}
              chosen={null}
              unit={units.elevation}
              onPlace={(place, name) => {
                const { lat, lon } = place;
                const elevation_sd_m = place.elevation_sd_m ?? undefined;
                const elevation_m = place.elevation_m as number;
                add([{ name, elevation_m, elevation_sd_m, lat, lon }]);
                setSearches(searches + 1);
              }}
            />
            <TypedStop
              number={trip.stops.length + 1}
              units={units}
              onStop={(stop) => add([stop])}
            />
            <details onToggle={(e) => setOpened(opened || e.currentTarget.open)}>
              <summary>{words.map.open}</summary>
              {opened && (
                <TripMap
                  fit={fit}
                  trip={trip}
                  unit={units.elevation}
                  onStop={(stop) => add([stop])}
                />
              )}
            </details>
            <TripFile room={MOST_STOPS - trip.stops.length} onStops={add} />
          </>
        )}
        <p class="visually-hidden" aria-live="polite">
          {added}
        </p>
      </div>
    </details>
  );
}
