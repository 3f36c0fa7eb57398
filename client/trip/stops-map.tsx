import { useState } from "preact/hooks";
import type { PublishedFit } from "../../model/fit/group.ts";
import type { Stop } from "../../model/trip/stop.ts";
import { FIRST_QUESTION } from "../base/question.ts";
import { MapCanvas } from "../map/map-canvas.tsx";
import { MapFoot } from "../map/map-foot.tsx";
import { usePalette } from "../map/use-palette.ts";
import { mapWords } from "../texts/map.ts";
import { trip as words } from "../texts/trip.ts";
import { NORMAL_95 } from "../ui/estimate-hint.ts";
import { format, formatIn, type Unit } from "../units.ts";
import { groundStop } from "./ground-stop.ts";
import type { Trip } from "./trip.ts";

interface TripMapProps {
  fit: PublishedFit;
  trip: Trip;
  unit: Unit;
  onStop: (stop: Stop) => void;
}

const NO_CELLS: never[] = [];

/** The map of the heater that goes along; a point on it becomes a stop, its elevation worked out here. */
export function TripMap({ fit, trip, unit, onStop }: TripMapProps) {
  const palette = usePalette();
  const [tapped, setTapped] = useState<Stop | "failed" | null>(null);
  const { heat_kW, low_fan_rpm, high_fan_rpm } = trip.heater;
  const question = { ...FIRST_QUESTION, heat_kW, low_fan_rpm, high_fan_rpm };
  const last = trip.stops.findLast(({ lat }) => lat !== undefined);
  const add = async (lat: number, lon: number) => {
    const name = words.map.name(format(lat, 2), format(lon, 2));
    const position = { lat: Number(lat.toFixed(5)), lon: Number(lon.toFixed(5)) };
    const stop = await groundStop({ name, ...position }).catch(() => null);
    setTapped(stop ?? "failed");
    if (stop) onStop(stop);
  };
  return (
    <>
      <p class="hint">{words.map.how}</p>
      <MapCanvas
        asked={{ fit, question, end: "low", aspect: "rate" }}
        palette={palette}
        unit={unit}
        cells={NO_CELLS}
        point={{ lat: last?.lat ?? null, lon: last?.lon ?? null, near: false }}
        takeMiddle={words.map.middle}
        onPoint={(lat, lon) => void add(lat, lon)}
      >
        {tapped && (
          <MapFoot onClose={() => setTapped(null)}>
            {tapped === "failed" ? (
              <p class="error" role="alert">
                {words.map.noTerrain}
              </p>
            ) : (
              <p>
                <strong>{words.add.added(1)}</strong> {tapped.name} ·{" "}
                {formatIn(tapped.elevation_m, unit)}
                {tapped.elevation_sd_m !== undefined &&
                  ` ± ${formatIn(NORMAL_95 * tapped.elevation_sd_m, unit)}`}
              </p>
            )}
          </MapFoot>
        )}
      </MapCanvas>
      <p class="hint">{mapWords.credit}.</p>
    </>
  );
}
