import type { ComponentChildren } from "preact";
import { useEffect, useMemo, useState } from "preact/hooks";
import type { PublishedFit } from "../../../model/fit/group.ts";
import { USUAL_CLASS_kW } from "../../../model/heater.ts";
import { groupOf } from "../../../model/start.ts";
import { api, type ScalingSeen } from "../../base/answers/api.ts";
import { recall, remember } from "../../base/remember.ts";
import { isTune, type ShownTune, tuneInAddress } from "../../base/tune-address.ts";
import { locale } from "../../language.ts";
import { t } from "../../texts/app.ts";
import { scalingWords } from "../../texts/scaling.ts";
import { useAddressChange } from "../../ui/address-change.ts";
import { countBeyond } from "../../ui/charts/frame.ts";
import { useUnit } from "../../ui/number-field.tsx";
import { whatWentWrong } from "../../ui/went-wrong.tsx";
import { format } from "../../units.ts";
import { Beyond, RateChart, ResidualChart } from "./scaling-charts.tsx";
import { type Choice, Choices } from "./scaling-choices.tsx";
import { placesOf, scalingFrame } from "./scaling-frame.ts";
import { AsideTable, CurveTable, PointsTable } from "./scaling-tables.tsx";

/** What was chosen last; for a tune that the address asks for, the chart that shows it. */
const choiceFor = (tune: ShownTune | undefined): Choice => ({
  heat_kW: USUAL_CLASS_kW,
  end: "low",
  over: "density",
  read: "curve",
  ...recall<Choice>("scaling"),
  ...(tune && { heat_kW: tune.heat_kW, read: "tunes" }),
});

const moment = new Intl.DateTimeFormat(locale, { dateStyle: "medium", timeStyle: "short" });
const when = (time: string) => moment.format(new Date(time));

/** How settings scale with the air: chart, what was set aside and why, and all of it as a table. */
export function Scaling({ fit }: { fit: PublishedFit }) {
  const [unit, chooseUnit] = useUnit("elevation", "scaling.elevation");
  const [choice, setChoice] = useState(() => choiceFor(tuneInAddress(location.hash)));
  const [asked, setAsked] = useState(() => tuneInAddress(location.hash));
  useAddressChange(() => {
    const tune = tuneInAddress(location.hash);
    setAsked(tune);
    setChoice(choiceFor(tune));
  });
  const [seen, setSeen] = useState<ScalingSeen | null>(null);
  const [failed, setFailed] = useState<ComponentChildren>(null);
  const change = (part: Partial<Choice>) => {
    setChoice({ ...choice, ...part });
    // What an address asked for is not what was chosen.
    remember("scaling", { ...recall<Choice>("scaling"), ...part });
  };
  useEffect(() => {
    let gone = false;
    api.scaling(choice.heat_kW, choice.end).then(
      (answer) => {
        if (gone) return;
        setSeen(answer);
        setFailed(null);
      },
      (error: Error) => !gone && setFailed(whatWentWrong(error)),
    );
    return () => {
      gone = true;
    };
  }, [fit.version, choice.heat_kW, choice.end]);
  const scaling = seen?.scaling;
  const unseen = seen?.seen_at === null;
  const hasPoints = !unseen && scaling !== undefined && scaling.points.length > 0;
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
            <RateChart scaling={scaling} choice={choice} unit={unit} asked={asked} />
            {asked && !scaling.points.some((point) => isTune(asked, scaling.end, point)) && (
              <p class="note">{scalingWords.notAmong}</p>
            )}
            <p class="note">
              {unseen
                ? scalingWords.unseen
                : scalingWords.points(
                    format(scaling.points.length),
                    format(scaling.points_total),
                  )}{" "}
              {seen.seen_at && scalingWords.seen(when(seen.seen_at))}
            </p>
            <Beyond
              count={countBeyond(
                scalingFrame(scaling, choice.over, unit),
                placesOf(scaling, choice.over, unit),
              )}
            />
          </>
        ) : (
          !failed && <p>{t.loading}</p>
        )}
      </section>
      {hasPoints && <AsideTable points={scaling.points} unit={unit} />}
      {scaling && group && <ResidualChart scaling={scaling} group={group} unit={unit} />}
      {hasPoints && group && <PointsTable scaling={scaling} group={group} unit={unit} />}
      {scaling && <CurveTable scaling={scaling} unit={unit} />}
    </div>
  );
}
