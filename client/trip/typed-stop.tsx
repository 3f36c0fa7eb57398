import { useRef, useState } from "preact/hooks";
import type { Stop } from "../../model/trip/stop.ts";
import { elevation_m, temperature_C, tidyName } from "../base/stop-schema.ts";
import { trip as words } from "../texts/trip.ts";
import { goToFirstMarked, hasUnread } from "../ui/first-marked.ts";
import { NumberField } from "../ui/number-field.tsx";
import { NameField } from "./name-field.tsx";
import type { TripUnits } from "./trip-units.ts";

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
  const [tried, setTried] = useState(false);
  const form = useRef<HTMLFormElement>(null);
  const why = (judged: { error?: { issues: { message: string }[] } | undefined }) =>
    judged.error?.issues[0]?.message;
  // Judged at every change once adding was tried: what is put right is marked no more.
  const errors = {
    elevation:
      elevation === undefined ? words.add.needElevation : why(elevation_m.safeParse(elevation)),
    temperature: why(temperature_C.optional().safeParse(temperature)),
  };
  const submit = () => {
    setTried(true);
    const wrong = errors.elevation ?? errors.temperature;
    if (elevation === undefined || wrong || hasUnread(form.current)) {
      return goToFirstMarked(form.current);
    }
    onStop({
      name: tidyName(name) || words.add.byName(number),
      elevation_m: elevation,
      temperature_C: temperature,
    });
    setName("");
    setElevation(undefined);
    setTemperature(undefined);
    setTried(false);
  };
  return (
    <form
      ref={form}
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
        error={tried && errors.elevation}
      />
      <NumberField
        label={words.add.temperature}
        field="new.temperature_C"
        quantity="temperature"
        unit={units.temperature}
        onUnit={units.chooseTemperature}
        value={temperature}
        onValue={setTemperature}
        error={tried && errors.temperature}
      />
      <button type="submit">{words.add.button}</button>
    </form>
  );
}
