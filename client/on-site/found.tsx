import type { BelowFloor, Found, NotBracketed, Outcome } from "../../model/sweep/answer.ts";
import { isHigh } from "../../model/sweep/common-practice.ts";
import { HighReading } from "../share/high-co.tsx";
import { t } from "../texts/app.ts";
import { onsite as words } from "../texts/onsite.ts";
import { coInPpm } from "../ui/co-text.ts";
import { format } from "../units.ts";
import { Asked } from "./asked.tsx";
import { decimalsOf, hz } from "./figures.ts";
import { FlameOut } from "./flame-out.tsx";
import type { Plan } from "./plan.ts";
import { Readings } from "./readings.tsx";
import type { StageProps } from "./stage-props.ts";
import { SweepChart } from "./sweep-chart.tsx";

/** How the sweep of an end ended: a minimum that was seen, or what is known without one. */
export function Ended({ session, stage, press }: StageProps<"ended">) {
  const { answer, end, result } = stage;
  const { plan } = session;
  const decimals = decimalsOf(plan.step_Hz);
  const isFound = answer.kind === "found";
  const onward = end === "low" ? words.found.nextHigh : words.found.nextCheck;
  const again = () => press({ is: "again" });
  return (
    <div class="step-and-picture">
      <section class="sheet" aria-labelledby="step" data-step={answer.kind}>
        <h2 id="step" tabIndex={-1}>
          {words.ended[answer.kind].title(t[end])}
        </h2>
        <p class="rate">
          {answer.kind === "above scale" ? words.step.set : words.found.leave}{" "}
          <output data-value={answer.pump_Hz}>{hz(answer.pump_Hz, decimals)}</output> Hz
        </p>
        {result && <p>{words.found.shown(coInPpm(result) ?? "")}</p>}
        <Meaning answer={answer} plan={plan} end={end} />
        {answer.flame_out_Hz !== undefined && (
          <p class="warning">{words.found.besideFlameOut(hz(answer.flame_out_Hz, decimals))}</p>
        )}
        <HighReading where={t[end]} co_ppm={result?.co_ppm} />
        {result && (
          <button
            type="button"
            class="main large"
            onClick={() => press({ is: "accept", end, result })}
          >
            {isFound ? onward : words.ended.goOn}
          </button>
        )}
        {!isHigh(result?.co_ppm) && <p class="note">{words.found.practice}</p>}
        <div class="row">
          {result ? (
            <Asked
              ask={words.found.again}
              sure={words.found.again}
              no={words.step.stay}
              onSure={again}
            />
          ) : (
            <button type="button" class="main large" onClick={again}>
              {words.found.again}
            </button>
          )}
        </div>
        <FlameOut onOut={() => press({ is: "out" })} />
      </section>
      <div class="picture">
        <SweepChart stage={stage} plan={plan} next_Hz={undefined} />
        <Readings readings={stage.readings} decimals={decimals} />
      </div>
    </div>
  );
}

function Meaning(props: { answer: Outcome; plan: Plan; end: "low" | "high" }) {
  const { answer, plan } = props;
  switch (answer.kind) {
    case "found":
      return <Minimum {...props} answer={answer} />;
    case "not bracketed":
      return <NoMinimum answer={answer} plan={plan} />;
    case "below floor":
      return <Below answer={answer} plan={plan} />;
    case "above scale":
      return (
        <p class="warning">{words.ended["above scale"].means(format(plan.meter.ceiling_ppm))}</p>
      );
  }
}

function Minimum(props: { answer: Found; plan: Plan; end: "low" | "high" }) {
  const { answer, plan, end } = props;
  const decimals = decimalsOf(plan.step_Hz);
  const rate = (one: number) => hz(one, decimals);
  const { between_Hz, flat_Hz } = answer;
  return (
    <p>
      {words.ended.found.minimum(
        hz(answer.minimum_Hz, decimals + 1),
        rate(between_Hz.lower),
        rate(between_Hz.upper),
      )}{" "}
      {flat_Hz.upper > flat_Hz.lower && (
        <>
          {words.found.flat(rate(flat_Hz.lower), rate(flat_Hz.upper))} {words.found.seat[end]}
        </>
      )}
    </p>
  );
}

function NoMinimum({ answer, plan }: { answer: NotBracketed; plan: Plan }) {
  const { lean, rich, read_Hz } = answer;
  const says = words.ended["not bracketed"];
  const rate = (one: number) => hz(one, decimalsOf(plan.step_Hz));
  const hasChanged = lean === "rose" && rich === "rose";
  // Where the flame went out, nobody is to look for less CO.
  const isOpen = [lean, rich].some((side) => side === "limit" || side === "open");
  return (
    <>
      {hasChanged ? (
        <p class="warning">{says.changed}</p>
      ) : (
        <>
          <p class="warning">
            {says.means} {isOpen && says.farther}
          </p>
          <p>{`${says.lean[lean](rate(read_Hz.lower))} ${says.rich[rich](rate(read_Hz.upper))}`}</p>
        </>
      )}
      <p>
        {says.now} {(hasChanged || isOpen) && says.further}
      </p>
    </>
  );
}

function Below({ answer, plan }: { answer: BelowFloor; plan: Plan }) {
  const { lean, rich, below_Hz } = answer;
  const says = words.ended["below floor"];
  const rate = (one: number) => hz(one, decimalsOf(plan.step_Hz));
  const floor = format(Math.max(1, plan.meter.floor_ppm));
  const isRange = lean === "rose" && rich === "rose";
  return (
    <>
      <p class="warning">
        {says.means(floor, rate(below_Hz.lower), rate(below_Hz.upper))}{" "}
        {isRange ? says.middle : says.suggested}
      </p>
      <p>{says.now(floor)}</p>
    </>
  );
}
