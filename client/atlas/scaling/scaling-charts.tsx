import { useCallback, useMemo } from "preact/hooks";
import type { GroupFit } from "../../../model/fit/group.ts";
import type { ScalingAnswer, ScalingPoint } from "../../../server/contract.ts";
import { isTune, type ShownTune } from "../../base/tune-address.ts";
import { scalingWords } from "../../texts/scaling.ts";
import { countBeyond, type Side } from "../../ui/charts/frame.ts";
import { ReadableChart } from "../../ui/charts/readable-chart.tsx";
import type { Unit } from "../../units.ts";
import { ChartKey } from "./chart-key.tsx";
import { placeOf, residualChart, residualFrame, residualsOf } from "./residual-chart.ts";
import { scalingChart } from "./scaling-chart.ts";
import type { Choice } from "./scaling-choices.tsx";
import { curveReadings, residualReadings, tuneReadings } from "./scaling-readings.ts";

/** Pump rate per fan speed over density or elevation, read along its curve or tune by tune. */
export function RateChart(props: {
  scaling: ScalingAnswer;
  choice: Choice;
  unit: Unit;
  /** The tune that its address asks for. */
  asked: ShownTune | undefined;
}) {
  const { scaling, unit, asked } = props;
  const { over, read } = props.choice;
  const draw = useCallback(
    (width: number) => scalingChart({ scaling, over, unit, width }),
    [scaling, over, unit],
  );
  const readings = useMemo(
    () =>
      read === "curve" ? curveReadings(scaling, over, unit) : tuneReadings(scaling, over, unit),
    [scaling, over, unit, read],
  );
  const isAsked = (point: ScalingPoint) => asked !== undefined && isTune(asked, scaling.end, point);
  const first = read === "tunes" ? readings.findIndex(({ tune }) => tune && isAsked(tune)) : -1;
  return (
    <ReadableChart
      draw={draw}
      first={first < 0 ? undefined : first}
      axes={{
        x: over === "density" ? scalingWords.densityAxis : scalingWords.elevationAxis(unit.name),
        y: scalingWords.rateAxis,
      }}
      readings={readings}
      label={read === "curve" ? scalingWords.readCurve : scalingWords.readTunes}
      along={read === "curve"}
    >
      <ChartKey scaling={scaling} />
    </ReadableChart>
  );
}

/** How far each tune lies off the fit, over density. */
export function ResidualChart(props: { scaling: ScalingAnswer; group: GroupFit; unit: Unit }) {
  const { scaling, group, unit } = props;
  const residuals = useMemo(() => residualsOf(scaling, group), [scaling, group]);
  const draw = useCallback(
    (width: number) => residualChart(scaling, residuals, width),
    [scaling, residuals],
  );
  const readings = useMemo(
    () => residualReadings(scaling, residuals, unit),
    [scaling, residuals, unit],
  );
  const beyond = countBeyond(residualFrame(scaling, residuals), residuals.map(placeOf));
  return (
    <section class="sheet" aria-labelledby="residuals">
      <h2 id="residuals">{scalingWords.residuals.title}</h2>
      <p>{residuals.length > 0 ? scalingWords.residuals.means : scalingWords.residuals.none}</p>
      <ReadableChart
        draw={draw}
        axes={{ x: scalingWords.densityAxis, y: scalingWords.residuals.axis }}
        readings={readings}
        label={scalingWords.residuals.read}
      />
      <Beyond count={beyond} />
    </section>
  );
}

/** In words what the edges of a chart say: how many tunes lie beyond it. */
export function Beyond({ count }: { count: Record<Side, number> }) {
  const all = Object.values(count).reduce((sum, of) => sum + of);
  return all === 0 ? null : <p class="note">{scalingWords.beyond(all)}</p>;
}
