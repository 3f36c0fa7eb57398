import { useState } from "preact/hooks";
import { type GivenAir, standardPressure } from "../../model/air.ts";
import { recall, remember } from "../base/remember.ts";
import { t } from "../texts/app.ts";
import { finerAir } from "../texts/finer-air.ts";
import { formatIn, type Unit } from "../units.ts";
import { ChoiceField } from "./choice-field.tsx";
import { NumberField, useUnit } from "./number-field.tsx";
import { type AirFieldsProps, TemperatureField, without } from "./temperature-field.tsx";

/** From here up a sea-level pressure cannot be taken for a station pressure, m. */
const QNH_STANDS_OUT_FROM_m = 500;
/** Weather moves station pressure by less than this about the standard one. */
const WEATHER_SHARE = 0.05;

/** The air that a tune was found in: temperature, pressure of either kind, humidity; all optional, each saying why it counts. */
export function AirFields(props: AirFieldsProps) {
  return (
    <>
      <TemperatureField {...props} label={t.air.tuned} hint={finerAir.temperatureWhy} />
      <PressureFields {...props} />
    </>
  );
}

/** Pressure of either kind, and humidity. */
export function PressureFields(props: AirFieldsProps) {
  const { air, elevation_m, onAir, form, prefix = "air", errorOf } = props;
  const [unit, chooseUnit] = useUnit("pressure", `${form}.pressure`);
  const [chosen, setChosen] = useState(() => recall<string>(`${form}.pressure-kind`) ?? "station");
  const kind =
    air.qnh_hPa !== undefined ? "qnh" : air.pressure_hPa !== undefined ? "station" : chosen;
  const value = air.pressure_hPa ?? air.qnh_hPa;
  const setPressure = (hPa: number | undefined, as: string) => {
    setChosen(as);
    remember(`${form}.pressure-kind`, as);
    const { pressure_hPa: _, qnh_hPa: __, ...rest } = air;
    onAir(hPa === undefined ? rest : { ...rest, [as === "qnh" ? "qnh_hPa" : "pressure_hPa"]: hPa });
  };
  const question = questionedPressure(air, elevation_m, unit);
  return (
    <>
      <NumberField
        label={finerAir.pressure}
        field={`${prefix}.pressure_hPa`}
        quantity="pressure"
        unit={unit}
        onUnit={chooseUnit}
        value={value}
        onValue={(hPa) => setPressure(hPa, kind)}
        hint={finerAir.pressureWhy}
        error={errorOf?.("air.pressure_hPa") ?? errorOf?.("air.qnh_hPa") ?? question}
      />
      <ChoiceField
        label={finerAir.pressureKind}
        name={`${prefix}.pressure_kind`}
        value={kind}
        options={[
          ["station", finerAir.station],
          ["qnh", finerAir.qnh],
        ]}
        onValue={(chosenKind) => setPressure(value, chosenKind)}
      />
      <NumberField
        label={finerAir.humidity}
        field={`${prefix}.humidity_pct`}
        value={air.humidity_pct}
        onValue={(humidity_pct) => onAir(without(air, { humidity_pct }))}
        error={errorOf?.("air.humidity_pct")}
      />
    </>
  );
}

/** Asks back when a station pressure looks like a sea-level one. */
function questionedPressure(
  { pressure_hPa }: GivenAir,
  elevation_m: number | undefined,
  unit: Unit,
): string | undefined {
  if (pressure_hPa === undefined || elevation_m === undefined) return undefined;
  const standard = standardPressure(elevation_m);
  return elevation_m > QNH_STANDS_OUT_FROM_m && pressure_hPa > standard * (1 + WEATHER_SHARE)
    ? finerAir.looksQnh(formatIn(standard, unit))
    : undefined;
}
