import type { PublishedFit } from "../../model/fit/group.ts";
import { HEAT_CLASSES_kW } from "../../model/heater.ts";
import { t } from "../texts/app.ts";
import { ChoiceField } from "./choice-field.tsx";

/** Choice of heat class. */
export function HeatClassField(props: {
  id: string;
  value: number;
  classes: number[];
  onValue: (heat_kW: number) => void;
}) {
  return (
    <ChoiceField
      label={t.heater.heat}
      id={props.id}
      name="heater.heat_kW"
      value={props.value}
      options={props.classes.map((kW) => [kW, t.heater.heatOption(kW)] as const)}
      onValue={props.onValue}
    />
  );
}

/** Classes on offer: the usual ones, those the atlas has tunes of, and the one asked for. */
export function classesOf(fit: PublishedFit, asked: number): number[] {
  const all = new Set<number>([...HEAT_CLASSES_kW, ...fit.groups.map((g) => g.heat_kW), asked]);
  return [...all].sort((a, b) => a - b);
}
