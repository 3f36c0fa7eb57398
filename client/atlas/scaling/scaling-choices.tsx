import { ENDS, type End } from "../../../model/end.ts";
import type { PublishedFit } from "../../../model/fit/group.ts";
import { t } from "../../texts/app.ts";
import { scalingWords } from "../../texts/scaling.ts";
import { ChoiceField } from "../../ui/choice-field.tsx";
import { classesOf, HeatClassField } from "../../ui/heat-class-field.tsx";
import { UNITS, type Unit } from "../../units.ts";
import type { Over } from "./scaling-frame.ts";

/** What the page on how settings scale shows. */
export interface Choice {
  heat_kW: number;
  end: End;
  over: Over;
  /** What slider and pointer read off the chart. */
  read: "curve" | "tunes";
}

export function Choices(props: {
  fit: PublishedFit;
  choice: Choice;
  change: (part: Partial<Choice>) => void;
  unit: Unit;
  onUnit: (name: string) => void;
}) {
  const { fit, choice, change, unit, onUnit } = props;
  return (
    <div class="choices">
      <HeatClassField
        id="scaling-heat"
        value={choice.heat_kW}
        classes={classesOf(fit, choice.heat_kW)}
        onValue={(heat_kW) => change({ heat_kW })}
      />
      <ChoiceField
        label={scalingWords.end}
        value={choice.end}
        options={ENDS.map((end) => [end, t[end]] as const)}
        onValue={(end) => change({ end })}
      />
      <ChoiceField
        label={scalingWords.over}
        value={choice.over}
        options={[
          ["density", scalingWords.overOptions.density],
          ["elevation", scalingWords.overOptions.elevation],
        ]}
        onValue={(over) => change({ over })}
      />
      <ChoiceField
        label={scalingWords.read}
        value={choice.read}
        options={[
          ["curve", scalingWords.readOptions.curve],
          ["tunes", scalingWords.readOptions.tunes],
        ]}
        onValue={(read) => change({ read })}
      />
      <ChoiceField
        label={scalingWords.unit}
        value={unit.name}
        options={UNITS.elevation.map(({ name }) => [name, name] as const)}
        onValue={onUnit}
      />
    </div>
  );
}
