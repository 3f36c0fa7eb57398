import { finalCoOf } from "../../model/co-reading.ts";
import type { End } from "../../model/end.ts";
import { type Tune, tuneSchema } from "../../model/tune.ts";
import { monthHere } from "../base/clock.ts";
import { type Draft, type DraftEnd, emptyDraft, tuneOf } from "../share/draft.ts";
import { foundIn, runOf } from "./run.ts";
import type { Session } from "./session.ts";

/** What a finished sweep says, as the share form would: nothing is typed again. */
export function draftOfSweep(session: Session, position?: { lat: number; lon: number }): Draft {
  const { plan } = session;
  const run = runOf(session);
  const end = (which: End): DraftEnd => {
    const { pump_Hz, ...result } = run.results[which] ?? {};
    const { fan_rpm } = plan.ends[which];
    const shown = finalCoOf(result);
    return { pump_Hz, fan_rpm, ...shown, nothing_shown: shown.co_ppm === undefined };
  };
  return {
    ...emptyDraft(),
    heater: plan.heater,
    site: {
      elevation_m: plan.elevation_m,
      elevation_sd_m: plan.elevation_sd_m,
      ...position,
    },
    place: plan.place,
    air: plan.air,
    low: end("low"),
    high: end("high"),
    found: foundIn(run),
    meter: { kind: plan.meter.kind, distance_m: plan.meter.distance_m },
    tuned_on: monthHere(new Date(session.begun_at)),
  };
}

/**
 * The tune that a finished sweep ends in.
 * @throws ZodError naming what does not fit a tune
 */
export function tuneOfSweep(
  session: Session,
  contributor: string,
  position?: { lat: number; lon: number },
): Tune {
  return tuneSchema.parse(tuneOf(draftOfSweep(session, position), contributor));
}
