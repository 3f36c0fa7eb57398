import type { End } from "../../../model/end.ts";
import { SAFETY } from "../../../model/safety.ts";
import { scalingCurve } from "../../../model/scaling-curve.ts";
import { groupOf } from "../../../model/start.ts";
import type { FitAnswer, ScalingAnswer } from "../../../server/contract.ts";
import { keptFit } from "./kept-fit.ts";

/** The curve and its bands from the kept fit. The tunes are not with it: only their number is known. */
export async function scalingHere(heat_kW: number, end: End): Promise<ScalingAnswer> {
  const fit = keptFit() ?? ((await (await fetch("/api/fit")).json()) as FitAnswer);
  const group = groupOf(fit, heat_kW, end);
  return {
    heat_kW,
    end,
    fit: fit.version,
    prior_only: group.contributors === 0,
    demo: fit.demo,
    points: [],
    points_total: group.tunes,
    curve: scalingCurve(group),
    safety: SAFETY,
  };
}
