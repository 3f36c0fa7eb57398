import { useState } from "preact/hooks";
import type { Stop } from "../../model/trip/stop.ts";
import { Refused } from "../base/refused.ts";
import { type FileStop, MOST_STOPS } from "../base/stop-schema.ts";
import { trip as words } from "../texts/trip.ts";
import { groundStop } from "./ground-stop.ts";
import { stopsOfFile } from "./read-file.ts";

/** Stops from a file, all or none; what has no elevation gets one worked out from its position. */
export function TripFile(props: { room: number; onStops: (stops: Stop[]) => void }) {
  const [note, setNote] = useState<{ text: string; bad: boolean } | null>(null);
  const read = async (file: File) => {
    setNote({ text: words.add.reading, bad: false });
    try {
      const found = await stopsOfFile(file);
      if (found.length > props.room)
        throw new Refused(words.add.full(MOST_STOPS).replace(/\.$/, ""));
      const stops = await Promise.all(found.map(withElevation));
      props.onStops(stops);
      const estimated = stops.filter((stop) => stop.elevation_sd_m !== undefined).length;
      const said = estimated > 0 ? ` ${words.add.estimated(estimated)}` : "";
      setNote({ text: words.add.added(stops.length) + said, bad: false });
    } catch (error) {
      setNote({ text: whyNot(error), bad: true });
    }
  };
  return (
    <div class="field">
      <label for="trip-file">{words.add.file}</label>
      <input
        id="trip-file"
        name="file"
        type="file"
        accept=".gpx,.geojson,.json,.csv,.txt,application/gpx+xml,application/geo+json,text/csv"
        aria-describedby="trip-file-hint trip-file-note"
        onChange={(e) => {
          const input = e.currentTarget;
          const [file] = input.files ?? [];
          if (!file) return;
          // The same file, mended, must be taken again.
          void read(file).then(() => {
            input.value = "";
          });
        }}
      />
      <p id="trip-file-hint" class="hint">
        {words.add.fileHint}
      </p>
      <p id="trip-file-note" class={note?.bad ? "error" : "hint"} aria-live="polite">
        {note?.text ?? ""}
      </p>
    </div>
  );
}

async function withElevation(found: FileStop, i: number): Promise<Stop> {
  const name = found.name || words.add.byName(i + 1);
  const { elevation_m } = found;
  if (elevation_m !== undefined) return { ...found, name, elevation_m };
  try {
    return await groundStop({
      ...found,
      name,
      lat: found.lat as number,
      lon: found.lon as number,
    });
  } catch {
    throw new Refused(words.add.noTerrain);
  }
}

function whyNot(error: unknown): string {
  const { message, line } =
    error instanceof Refused ? error : new Refused(words.refused.unreadable);
  return line === undefined ? words.add.refused(message) : words.add.line(line, message);
}
