import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";
import { type GivenAir, standardPressure } from "../../model/air.ts";
import { recall, remember } from "../remember.ts";
import { t } from "../texts/app.ts";
import { formatIn, type Unit } from "../units.ts";
import { ChoiceField } from "./choice-field.tsx";
import { NumberField, useUnit } from "./number-field.tsx";

/** From here up a sea-level pressure cannot be taken for a station pressure, m. */
const QNH_STANDS_OUT_FROM_m = 500;
/** Weather moves station pressure by less than this about the standard one. */
const WEATHER_SHARE = 0.05;

/** Temperatures that a heater is tuned or run in, °C (our own working values). */
export const AIR_RANGE_C = [-60, 45] as const;

export function airOutOfRange(unit: Unit): string {
  const [coldest, hottest] = AIR_RANGE_C;
  return t.site.outOfRange(formatIn(coldest, unit), formatIn(hottest, unit));
}

interface AirFieldsProps {
  air: GivenAir;
  elevation_m: number | undefined;
  onAir: (air: GivenAir) => void;
  /** Where the fields sit, for their remembered units. */
  form: string;
  /** What the fields' names begin with, where a page asks for more than one air. */
  prefix?: string;
  errorOf?: (field: string) => ComponentChildren;
}

/** The air that a tune was found in: temperature, pressure of either kind, humidity; all optional, each saying why it counts. */
export function AirFields(props: AirFieldsProps) {
  return (
    <>
      <TemperatureField {...props} label={t.air.tuned} hint={t.air.temperatureWhy} />
      <PressureFields {...props} />
    </>
  );
}

/** A temperature, the night's unless labelled otherwise, with the reason why it counts; bounded where nothing else judges it. */
export function TemperatureField(
  props: Omit<AirFieldsProps, "elevation_m"> & { hint: string; label?: string; bounded?: boolean },
) {
  const { air, onAir, form, prefix = "air", errorOf, label = t.air.temperature } = props;
  const [unit, chooseUnit] = useUnit("temperature", `${form}.temperature`);
  const [coldest, hottest] = AIR_RANGE_C;
  const { temperature_C = coldest } = air;
  const isOut = props.bounded && (temperature_C < coldest || temperature_C > hottest);
  return (
    <NumberField
      label={label}
      field={`${prefix}.temperature_C`}
      quantity="temperature"
      unit={unit}
      onUnit={chooseUnit}
      value={air.temperature_C}
      onValue={(temperature_C) => onAir(without(air, { temperature_C }))}
      hint={props.hint}
      error={errorOf?.("air.temperature_C") ?? (isOut ? airOutOfRange(unit) : undefined)}
    />
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
        label={t.air.pressure}
        field={`${prefix}.pressure_hPa`}
        quantity="pressure"
        unit={unit}
        onUnit={chooseUnit}
        value={value}
        onValue={(hPa) => setPressure(hPa, kind)}
        hint={t.air.pressureWhy}
        error={errorOf?.("air.pressure_hPa") ?? errorOf?.("air.qnh_hPa") ?? question}
      />
      <ChoiceField
        label={t.air.pressureKind}
        name={`${prefix}.pressure_kind`}
        value={kind}
        options={[
          ["station", t.air.station],
          ["qnh", t.air.qnh],
        ]}
        onValue={(chosenKind) => setPressure(value, chosenKind)}
      />
      <NumberField
        label={t.air.humidity}
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
    ? t.air.looksQnh(formatIn(standard, unit))
    : undefined;
}

/** Changed values in, undefined ones out: a field left empty is not given. */
function without(air: GivenAir, change: GivenAir): GivenAir {
  return Object.fromEntries(
    Object.entries({ ...air, ...change }).filter(([, value]) => value !== undefined),
  );
}
