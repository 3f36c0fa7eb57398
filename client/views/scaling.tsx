import type { ComponentChildren } from "preact";
import { useEffect, useMemo, useState } from "preact/hooks";
import type { PublishedFit } from "../../model/fit/group.ts";
import { USUAL_CLASS_kW } from "../../model/heater.ts";
import { groupOf } from "../../model/start.ts";
import type { ScalingAnswer } from "../../server/contract.ts";
import { api } from "../api.ts";
import { ChartKey } from "../charts/chart-key.tsx";
import { beyondFrame } from "../charts/scaling-chart.ts";
import { AsideTable, CurveTable, PointsTable } from "../charts/scaling-tables.tsx";
import { whatWentWrong } from "../parts/in-english.tsx";
import { useUnit } from "../parts/number-field.tsx";
import { recall, remember } from "../remember.ts";
import { t } from "../texts/app.ts";
import { scalingWords } from "../texts/scaling.ts";
import { format } from "../units.ts";
import { RateChart, ResidualChart } from "./scaling-charts.tsx";
import { type Choice, Choices } from "./scaling-choices.tsx";
import { Coverage } from "./scaling-coverage.tsx";

/** How settings scale with the air: chart, what was set aside and why, and all of it as a table. */
export function Scaling({ fit }: { fit: PublishedFit }) {
  const [unit, chooseUnit] = useUnit("elevation", "scaling.elevation");
  const [choice, setChoice] = useState<Choice>(() => ({
    heat_kW: USUAL_CLASS_kW,
    end: "low",
    over: "density",
    read: "curve",
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
  const group = useMemo(
    () => scaling && groupOf(fit, scaling.heat_kW, scaling.end),
    [fit, scaling],
  );
  return (
    <div class="page wide-page">
      <section class="sheet" aria-labelledby="scaling">
        <h2 id="scaling">{scalingWords.title}</h2>
        <Choices fit={fit} choice={choice} change={change} unit={unit} onUnit={chooseUnit} />
        {failed && <p class="error">{failed}</p>}
        {scaling ? (
          <>
            {scaling.prior_only && <p class="warning">{scalingWords.prior}</p>}
            <RateChart scaling={scaling} choice={choice} unit={unit} />
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
      {scaling && group && <ResidualChart scaling={scaling} group={group} unit={unit} />}
      <Coverage fit={fit} heat_kW={choice.heat_kW} />
      {scaling && group && <PointsTable scaling={scaling} group={group} unit={unit} />}
      {scaling && <CurveTable scaling={scaling} unit={unit} />}
    </div>
  );
}
