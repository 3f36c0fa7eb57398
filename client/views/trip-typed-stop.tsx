import { useState } from "preact/hooks";
import type { Stop } from "../../model/trip/stop.ts";
import { NumberField } from "../parts/number-field.tsx";
import { trip as words } from "../texts/trip.ts";
import { elevation_m, temperature_C, tidyName } from "../trip/stop-schema.ts";
import type { TripUnits } from "../trip/trip-units.ts";
import { NameField } from "./trip-name-field.tsx";

/** A stop by its elevation; Enter adds it. */
export function TypedStop(props: {
  number: number;
  units: TripUnits;
  onStop: (stop: Stop) => void;
}) {
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
      <NameField
        id="new-stop-name"
        field="new.name"
        placeholder={words.add.byName(number)}
        value={name}
        onType={setName}
      />
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
