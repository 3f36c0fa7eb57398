import { METER_KINDS, type MeterKind } from "../../model/tune.ts";
import { heaterWords } from "../texts/heater.ts";
import { shareWords } from "../texts/share.ts";
import { ChoiceField } from "./choice-field.tsx";

/** What kind of CO meter it is, or that nobody said. */
export function MeterKindField(props: {
  value: MeterKind | undefined;
  onValue: (kind: MeterKind | undefined) => void;
}) {
  return (
    <ChoiceField<MeterKind | "">
      label={shareWords.meterKind}
      name="meter.kind"
      value={props.value ?? ""}
      options={[
        ["", shareWords.notGiven],
        ...METER_KINDS.map((kind) => [kind, heaterWords.meterKinds[kind]] as const),
      ]}
      onValue={(kind) => props.onValue(kind || undefined)}
    />
  );
}
