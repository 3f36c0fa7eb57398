import { type GivenAir, standardPressure } from "../../model/air.ts";
import { recall, remember } from "../remember.ts";
import { t } from "../texts/en.ts";
import { formatIn } from "../units.ts";
import { NumberField, useUnit } from "./number-field.tsx";

/** From here up a sea-level pressure cannot be taken for a station pressure, m. */
const QNH_STANDS_OUT_FROM_m = 500;
/** Weather moves station pressure by less than this about the standard one. */
const WEATHER_SHARE = 0.05;

interface AirFieldsProps {
  air: GivenAir;
  elevation_m: number | undefined;
  onAir: (air: GivenAir) => void;
  /** Where the fields sit, for their names and remembered units. */
  form: string;
  errors?: Record<string, string> | undefined;
}

/** Night temperature, pressure of either kind, humidity: all optional, each saying why it counts. */
export function AirFields({ air, elevation_m, onAir, form, errors = {} }: AirFieldsProps) {
  const [temperature, chooseTemperature] = useUnit("temperature", `${form}.temperature`);
  const [pressure, choosePressure] = useUnit("pressure", `${form}.pressure`);
  const kind =
    air.qnh_hPa !== undefined ? "qnh" : (recall<string>(`${form}.pressure-kind`) ?? "station");
  const value = air.pressure_hPa ?? air.qnh_hPa;
  const setPressure = (hPa: number | undefined, as: string) => {
    remember(`${form}.pressure-kind`, as);
    const { pressure_hPa: _, qnh_hPa: __, ...rest } = air;
    onAir(hPa === undefined ? rest : { ...rest, [as === "qnh" ? "qnh_hPa" : "pressure_hPa"]: hPa });
  };
  const standard = elevation_m === undefined ? undefined : standardPressure(elevation_m);
  const looksQnh =
    air.pressure_hPa !== undefined &&
    standard !== undefined &&
    (elevation_m ?? 0) > QNH_STANDS_OUT_FROM_m &&
    air.pressure_hPa > standard * (1 + WEATHER_SHARE);
  return (
    <>
      <NumberField
        label={t.air.temperature}
        field="air.temperature_C"
        quantity="temperature"
        unit={temperature}
        onUnit={chooseTemperature}
        value={air.temperature_C}
        onValue={(temperature_C) => onAir(without(air, { temperature_C }))}
        hint={t.air.temperatureWhy}
        error={errors["air.temperature_C"]}
      />
      <NumberField
        label={t.air.pressure}
        field="air.pressure_hPa"
        quantity="pressure"
        unit={pressure}
        onUnit={choosePressure}
        value={value}
        onValue={(hPa) => setPressure(hPa, kind)}
        hint={t.air.pressureWhy}
        error={
          errors["air.pressure_hPa"] ??
          errors["air.qnh_hPa"] ??
          (looksQnh ? t.air.looksQnh(formatIn(standard, pressure)) : undefined)
        }
      />
      <div class="field">
        <label for={`${form}-kind`}>{t.air.pressureKind}</label>
        <select
          id={`${form}-kind`}
          value={kind}
          onChange={(e) => setPressure(value, e.currentTarget.value)}
        >
          <option value="station">{t.air.station}</option>
          <option value="qnh">{t.air.qnh}</option>
        </select>
      </div>
      <NumberField
        label={t.air.humidity}
        field="air.humidity_pct"
        value={air.humidity_pct}
        onValue={(humidity_pct) => onAir(without(air, { humidity_pct }))}
        error={errors["air.humidity_pct"]}
      />
    </>
  );
}

/** Changed values in, undefined ones out: a field left empty is not given. */
function without(air: GivenAir, change: GivenAir): GivenAir {
  return Object.fromEntries(
    Object.entries({ ...air, ...change }).filter(([, value]) => value !== undefined),
  );
}
