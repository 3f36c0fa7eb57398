import type { ComponentChildren } from "preact";
import { useCallback, useEffect, useId, useState } from "preact/hooks";
import { ENDS, type End, type PublishedFit } from "../../model/fit/group.ts";
import { USUAL_CLASS_kW } from "../../model/heater.ts";
import type { ScalingAnswer } from "../../server/contract.ts";
import { api } from "../api.ts";
import { ChartPlace } from "../charts/chart-place.tsx";
import { beyondFrame, type Over, scalingChart } from "../charts/scaling-chart.ts";
import { AsideTable, PointsTable } from "../charts/scaling-tables.tsx";
import { classesOf, HeatClassField } from "../parts/heat-class-field.tsx";
import { whatWentWrong } from "../parts/in-english.tsx";
import { useUnit } from "../parts/number-field.tsx";
import { recall, remember } from "../remember.ts";
import { t } from "../texts/app.ts";
import { scalingWords } from "../texts/scaling.ts";
import { format, UNITS, type Unit } from "../units.ts";

interface Choice {
  heat_kW: number;
  end: End;
  over: Over;
}

/** How settings scale with the air: chart, what was set aside and why, and all of it as a table. */
export function Scaling({ fit }: { fit: PublishedFit }) {
  const [unit, chooseUnit] = useUnit("elevation", "scaling.elevation");
  const [choice, setChoice] = useState<Choice>(() => ({
    heat_kW: USUAL_CLASS_kW,
    end: "low",
    over: "density",
    ...recall<Choice>("scaling"),
  }));
  const [scaling, setScaling] = useState<ScalingAnswer | null>(null);
  const [failed, setFailed] = useState<ComponentChildren>(null);
  const change = (part: Partial<Choice>) => {
    const next = { ...choice, ...part };
    setChoice(next);
    remember("scaling", next);
  };
  useEffect(() => {
    let gone = false;
    api.scaling(choice.heat_kW, choice.end).then(
      (answer) => {
        if (gone) return;
        setScaling(answer);
        setFailed(null);
      },
      (error: Error) => !gone && setFailed(whatWentWrong(error)),
    );
    return () => {
      gone = true;
    };
  }, [fit.version, choice.heat_kW, choice.end]);
  return (
    <div class="page wide-page">
      <section class="sheet" aria-labelledby="scaling">
        <h2 id="scaling">{scalingWords.title}</h2>
        <Choices fit={fit} choice={choice} change={change} unit={unit} onUnit={chooseUnit} />
        {failed && <p class="error">{failed}</p>}
        {scaling ? (
          <>
            {scaling.prior_only && <p class="warning">{scalingWords.prior}</p>}
            <Chart scaling={scaling} over={choice.over} unit={unit} />
            <ChartKey />
            <p class="note">
              {scalingWords.points(format(scaling.points.length), format(scaling.points_total))}{" "}
              {beyondFrame(scaling) > 0 && scalingWords.beyond(beyondFrame(scaling))}
            </p>
          </>
        ) : (
          !failed && <p>{t.loading}</p>
        )}
      </section>
      {scaling && <AsideTable points={scaling.points} unit={unit} />}
      {scaling && <PointsTable points={scaling.points} unit={unit} />}
    </div>
  );
}

function Choices(props: {
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

/** The chart, drawn anew for every width of its place. */
function Chart({ scaling, over, unit }: { scaling: ScalingAnswer; over: Over; unit: Unit }) {
  const draw = useCallback(
    (width: number) => scalingChart({ scaling, over, unit, width }),
    [scaling, over, unit],
  );
  return <ChartPlace draw={draw} />;
}

/** What the marks mean: each differs in form as well as in colour. */
function ChartKey() {
  const key = scalingWords.key;
  return (
    <ul class="chart-key">
      <li>
        <svg viewBox="0 0 24 16" aria-hidden="true">
          <path class="key-curve" d="M0 8H24" />
        </svg>
        {key.curve}
      </li>
      {(["mean", "inner", "outer"] as const).map((band) => (
        <li key={band}>
          <svg viewBox="0 0 24 16" aria-hidden="true">
            <rect class={`key-${band}`} width="24" height="16" />
          </svg>
          {key[band]}
        </li>
      ))}
      <li>
        <svg viewBox="0 0 24 16" aria-hidden="true">
          <circle class="key-kept" cx="12" cy="8" r="3.5" />
        </svg>
        {key.kept}
      </li>
      <li>
        <svg viewBox="0 0 24 16" aria-hidden="true">
          <path class="key-rejected" d="M8 4l8 8M16 4l-8 8" />
        </svg>
        {key.rejected}
      </li>
      <li>
        <svg viewBox="0 0 24 16" aria-hidden="true">
          <rect class="key-held" x="8" y="4" width="8" height="8" />
        </svg>
        {key.held}
      </li>
      <li>
        <svg viewBox="0 0 24 16" aria-hidden="true">
          <path class="key-line" d="M0 12L24 4" />
        </svg>
        {key.line}
      </li>
    </ul>
  );
}
