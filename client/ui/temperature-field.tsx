import type { ComponentChildren } from "preact";
import type { GivenAir } from "../../model/air.ts";
import { t } from "../texts/app.ts";
import { formatIn, type Unit } from "../units.ts";
import { NumberField, useUnit } from "./number-field.tsx";

/** Temperatures that a heater is tuned or run in, °C (our own working values). */
export const AIR_RANGE_C = [-60, 45] as const;

export function airOutOfRange(unit: Unit): string {
  const [coldest, hottest] = AIR_RANGE_C;
  return t.site.outOfRange(formatIn(coldest, unit), formatIn(hottest, unit));
}

export interface AirFieldsProps {
  air: GivenAir;
  elevation_m: number | undefined;
  onAir: (air: GivenAir) => void;
  /** Where the fields sit, for their remembered units. */
  form: string;
  /** What the fields' names begin with, where a page asks for more than one air. */
  prefix?: string;
  errorOf?: (field: string) => ComponentChildren;
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

/** Changed values in, undefined ones out: a field left empty is not given. */
export function without(air: GivenAir, change: GivenAir): GivenAir {
  return Object.fromEntries(
    Object.entries({ ...air, ...change }).filter(([, value]) => value !== undefined),
  );
}
