import { useState } from "preact/hooks";
import type { PublishedFit } from "../../model/fit/group.ts";
import type { TripAnswer } from "../../model/trip/trip.ts";
import type { MyHeater } from "../app/heater/my-heater.ts";
import { OwnTunesCheck } from "../app/link/own-tunes-check.tsx";
import { useSending } from "../app/link/use-sending.ts";
import { saveFile } from "../base/save-file.ts";
import { trip as words } from "../texts/trip.ts";
import { csvOfTrip, jsonOfTrip } from "./exports.ts";
import { textOf } from "./link.ts";
import type { TripUnits } from "./trip-units.ts";
import { linkTo, type TripState } from "./use-trip.ts";
import { geoJsonOfStops, gpxOfStops, withoutPosition } from "./waypoints.ts";

/** Kept here, shared as a link, printed, saved as files. */
export function TripKeep(props: {
  answer: TripAnswer;
  state: TripState;
  fit: PublishedFit;
  /** Whose own tunes may go along. */
  mine: MyHeater | null | undefined;
  units: TripUnits;
}) {
  const { answer, state, fit, mine, units } = props;
  const [withOwn, setWithOwn] = useState(false);
  const own = mine?.own_tunes.length ?? 0;
  const { stops } = state.trip;
  const unplaced = withoutPosition(stops);
  const link = linkTo(textOf(state.trip, { units, mine: withOwn ? mine : null }));
  const { hasSheet, send, copy, said } = useSending(() => link, words.keep.title);
  return (
    <section class="sheet keep" aria-labelledby="keep">
      <h2 id="keep">{words.keep.title}</h2>
      {state.from === "kept" && (
        <p class="note">{state.isKept ? words.keep.kept : words.keep.notKept}</p>
      )}
      <div class="row">
        {hasSheet && (
          <button type="button" onClick={() => void send()}>
            {words.keep.send}
          </button>
        )}
        <button type="button" onClick={() => void copy()}>
          {words.keep.link}
        </button>
        <button type="button" onClick={() => print()}>
          {words.keep.print}
        </button>
        <button
          type="button"
          onClick={() =>
            saveFile("trip.csv", "text/csv;charset=utf-8", csvOfTrip(state.trip, answer))
          }
        >
          {words.keep.csv}
        </button>
        <button
          type="button"
          onClick={() => saveFile("trip.gpx", "application/gpx+xml", gpxOfStops(stops))}
        >
          {words.keep.gpx}
        </button>
        <button
          type="button"
          onClick={() => saveFile("trip.geojson", "application/geo+json", geoJsonOfStops(stops))}
        >
          {words.keep.geojson}
        </button>
        <button
          type="button"
          onClick={() =>
            saveFile("trip.json", "application/json", jsonOfTrip(state.trip, answer, fit.version))
          }
        >
          {words.keep.json}
        </button>
      </div>
      <OwnTunesCheck own={own} checked={withOwn} onChecked={setWithOwn} />
      {unplaced > 0 && <p class="hint">{words.keep.unplaced(unplaced)}</p>}
      <p class="hint" aria-live="polite">
        {said}
      </p>
      <div class="field">
        <label for="trip-link">{words.keep.linkLabel}</label>
        <input
          id="trip-link"
          name="link"
          type="text"
          readOnly
          value={link}
          onFocus={(e) => e.currentTarget.select()}
        />
        <p class="hint">{words.keep.linkNote}</p>
      </div>
    </section>
  );
}
