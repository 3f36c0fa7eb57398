import { decimalsOf, hz } from "../onsite/figures.ts";
import { t } from "../texts/app.ts";
import { onsite as words } from "../texts/onsite.ts";
import { format } from "../units.ts";
import type { StageProps } from "./onsite.tsx";
import { Asked } from "./onsite-asked.tsx";
import { SweepChart } from "./onsite-chart.tsx";
import { Readings } from "./onsite-readings.tsx";

/** The minimum of an end, confirmed where the pump is to stay. */
export function Found({ session, stage, press }: StageProps<"found">) {
  const { answer, end, result, agrees } = stage;
  const { plan } = session;
  const decimals = decimalsOf(plan.step_Hz);
  const fine = (rate: number) => hz(rate, decimals + 1);
  const { lower, upper } = answer.basin_Hz;
  const wide = answer.intervals_Hz.at(-1);
  const accept = () => press({ is: "accept", end, result });
  return (
    <>
      <section class="sheet" aria-labelledby="step" data-step="found">
        <h2 id="step" tabIndex={-1}>
          {words.found.title(t[end])}
        </h2>
        <p class="rate">
          {words.found.leave}{" "}
          <output data-value={result.pump_Hz}>{hz(result.pump_Hz, decimals)}</output> Hz
        </p>
        <p>{words.found.shown(coOf(result))}</p>
        {!agrees && <p class="warning">{words.found.disagrees}</p>}
        <p>
          {words.found.minimum(
            fine(answer.minimum_Hz),
            fine(wide?.lower ?? 0),
            fine(wide?.upper ?? 0),
          )}{" "}
          {upper > lower && (
            <>
              {words.found.flat(hz(lower, decimals), hz(upper, decimals))} {words.found.seat[end]}
            </>
          )}
        </p>
        {answer.below_floor && <p class="warning">{words.found.belowFloor}</p>}
        {!answer.limbs.lean && <p>{words.found.noLean}</p>}
        {!answer.limbs.rich && <p>{words.found.noRich}</p>}
        {agrees ? (
          <button type="button" class="main large" onClick={accept}>
            {end === "low" ? words.found.nextHigh : words.found.nextCheck}
          </button>
        ) : (
          <button type="button" class="main large" onClick={() => press({ is: "again" })}>
            {words.found.again}
          </button>
        )}
        <p class="note">{words.found.practice}</p>
        <div class="row">
          {agrees ? (
            <Asked
              ask={words.found.again}
              sure={words.found.again}
              no={words.step.stay}
              onSure={() => press({ is: "again" })}
            />
          ) : (
            <button type="button" onClick={accept}>
              {words.found.anyway}
            </button>
          )}
          <button type="button" onClick={() => press({ is: "out" })}>
            {words.step.out}
          </button>
        </div>
      </section>
      <SweepChart stage={stage} plan={plan} next_Hz={undefined} />
      <Readings readings={stage.readings} decimals={decimals} plan={plan} />
    </>
  );
}

/** Off the meter's scale everywhere: it says so, and gives no minimum. */
export function Unseen({ session, stage, press }: StageProps<"unseen">) {
  const { answer, end, result } = stage;
  const { meter, step_Hz } = session.plan;
  const below = answer.why === "below floor";
  return (
    <>
      <section class="sheet" aria-labelledby="step" data-step="unseen">
        <h2 id="step" tabIndex={-1}>
          {words.unseen.title(t[end])}
        </h2>
        <p class="rate">
          {words.step.set} <output>{hz(answer.sit_Hz, decimalsOf(step_Hz))}</output> Hz
        </p>
        <p class="warning">
          {below
            ? words.unseen.below(format(Math.max(1, meter.floor_ppm)))
            : words.unseen.above(format(meter.ceiling_ppm))}
        </p>
        <button type="button" class="main large" onClick={() => press({ is: "again" })}>
          {words.found.again}
        </button>
        {result && (
          <>
            <p>{words.unseen.noted}</p>
            <button
              type="button"
              class="large"
              onClick={() => press({ is: "accept", end, result })}
            >
              {words.unseen.goOn}
            </button>
          </>
        )}
        <button type="button" class="large" onClick={() => press({ is: "out" })}>
          {words.step.out}
        </button>
      </section>
      <Readings readings={stage.readings} decimals={decimalsOf(step_Hz)} plan={session.plan} />
    </>
  );
}

/** A reading with its unit, or that it is below the floor. */
export function coOf(shown: {
  co_ppm?: number | undefined;
  co_below_ppm?: number | undefined;
}): string {
  const { co_ppm, co_below_ppm } = shown;
  if (co_ppm === undefined) return `${words.chart.belowIs(format(co_below_ppm ?? 0))} ppm`;
  return `${format(co_ppm, Number.isInteger(co_ppm) ? 0 : 1)} ppm`;
}
