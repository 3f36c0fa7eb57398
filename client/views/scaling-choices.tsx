import { useId } from "preact/hooks";
import { ENDS, type End, type PublishedFit } from "../../model/fit/group.ts";
import type { Over } from "../charts/scaling-chart.ts";
import { classesOf, HeatClassField } from "../parts/heat-class-field.tsx";
import { t } from "../texts/app.ts";
import { scalingWords } from "../texts/scaling.ts";
import { UNITS, type Unit } from "../units.ts";

/** What the Scaling view shows. */
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
      <Select
        label={scalingWords.end}
        value={choice.end}
        options={ENDS.map((end) => [end, t[end]])}
        onValue={(end) => change({ end: end as End })}
      />
      <Select
        label={scalingWords.over}
        value={choice.over}
        options={[
          ["density", scalingWords.density],
          ["elevation", scalingWords.elevation],
        ]}
        onValue={(over) => change({ over: over as Over })}
      />
      <Select
        label={scalingWords.read}
        value={choice.read}
        options={[
          ["curve", scalingWords.readCurve],
          ["tunes", scalingWords.readTunes],
        ]}
        onValue={(read) => change({ read: read as Choice["read"] })}
      />
      <Select
        label={scalingWords.unit}
        value={unit.name}
        options={UNITS.elevation.map(({ name }) => [name, name])}
        onValue={onUnit}
      />
    </div>
  );
}

function Select(props: {
  label: string;
  value: string;
  options: [value: string, text: string][];
  onValue: (value: string) => void;
}) {
  const id = useId();
  return (
    <div class="field">
      <label for={id}>{props.label}</label>
      <select id={id} value={props.value} onChange={(e) => props.onValue(e.currentTarget.value)}>
        {props.options.map(([value, text]) => (
          <option key={value} value={value}>
            {text}
          </option>
        ))}
      </select>
    </div>
  );
}
