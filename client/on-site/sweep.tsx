import { t } from "../texts/app.ts";
import { onsite as words } from "../texts/onsite.ts";
import { format } from "../units.ts";
import { Countdown, spanOf } from "./countdown.tsx";
import { decimalsOf, hz } from "./figures.ts";
import { FlameOut } from "./flame-out.tsx";
import { Reading } from "./reading.tsx";
import { Readings } from "./readings.tsx";
import { runOf } from "./run.ts";
import { Seen } from "./seen.tsx";
import type { StageProps } from "./stage-props.ts";
import { SweepChart } from "./sweep-chart.tsx";
import { useNow } from "./use-session.ts";

/** One step: set the pump, or wait and read; under or beside it what is known so far. */
export function SweepStep({ session, stage, press }: StageProps<"sweep">) {
  const { answer, end, toSet, pump_Hz, wait_s, due_at } = stage;
  const { plan } = session;
  const why = answer.kind === "set" ? answer.why : "wait";
  const isTurnedUp = end === "low" || runOf(session).present_Hz.high !== undefined;
  const reason = words.step.why[why === "start" && !isTurnedUp ? "turnUp" : why];
  const alarming = why === "spike" || why === "flame-out";
  const decimals = decimalsOf(plan.step_Hz);
  return (
    <div class="step-and-picture">
      <section class="sheet step" aria-labelledby="step" data-step={toSet ? "set" : "read"}>
        <h2 id="step" tabIndex={-1}>
          {toSet ? words.step.title(t[end]) : words.step.titleWait(t[end])}
        </h2>
        {(toSet || why === "wait") && <p class={alarming ? "warning" : undefined}>{reason}</p>}
        <div class="setting">
          <p class="rate">
            {toSet ? words.step.set : words.step.keep}{" "}
            <span>
              <output data-value={pump_Hz}>{hz(pump_Hz, decimals)}</output> Hz
            </span>
          </p>
          {toSet ? (
            <p>{t.answer.fanAt(format(plan.ends[end].fan_rpm))}</p>
          ) : (
            <Countdown due_at={due_at ?? 0} before={words.step.readIn} over={words.step.readNow} />
          )}
        </div>
        {toSet ? (
          <>
            <button
              type="button"
              class="main large"
              onClick={() => press({ is: "set", pump_Hz, confirming: why === "confirm" })}
            >
              {words.step.isSet}
            </button>
            <p>{words.step.thenWait(spanOf(wait_s))}</p>
          </>
        ) : (
          <Reading
            key={session.presses.length}
            meter={plan.meter}
            onReading={(reading, still) => press({ is: "read", reading, still })}
          />
        )}
        <Seen
          answer={answer}
          picture={stage.picture}
          isNext={toSet}
          hz={(rate) => hz(rate, decimals)}
        />
        <FlameOut onOut={() => press({ is: "out" })} />
        <p class="note">
          {words.progress.step(format(answer.step), format(answer.steps_most))}{" "}
          {!toSet && words.step.early}
        </p>
        {!toSet && why !== "wait" && <Settling until={due_at ?? 0} />}
      </section>
      <div class="picture">
        <SweepChart stage={stage} plan={plan} next_Hz={toSet ? pump_Hz : undefined} />
        <Readings readings={stage.readings} decimals={decimals} />
      </div>
    </div>
  );
}

/** What the waiting is for, in place of why the pump was to be set; its room stays, so that no button moves under a thumb. */
function Settling({ until }: { until: number }) {
  const isOver = useNow() >= until;
  return <p class={isOver ? "note gone" : "note"}>{words.step.settling}</p>;
}
