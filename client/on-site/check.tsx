import { HighReading } from "../share/high-co.tsx";
import { onsite as words } from "../texts/onsite.ts";
import { coInPpm } from "../ui/co-text.ts";
import { format } from "../units.ts";
import { Countdown, spanOf } from "./countdown.tsx";
import { decimalsOf, hz } from "./figures.ts";
import { FlameOut } from "./flame-out.tsx";
import { Reading } from "./reading.tsx";
import type { StageProps } from "./stage-props.ts";

/** A reading between the ends, or back at full power, beside what the ends led to expect. */
export function CheckStep({ session, stage, press }: StageProps<"check">) {
  const { which, expected, toSet, pump_Hz, wait_s, due_at, reading, verdict } = stage;
  const { plan } = session;
  const upper = format(expected.upper_ppm);
  return (
    <section class="sheet" aria-labelledby="step" data-step={verdict ?? (toSet ? "set" : "read")}>
      <h2 id="step" tabIndex={-1}>
        {words.check.title[which]}
      </h2>
      <p>{words.check.why[which]}</p>
      <p class="at-power">
        <strong>{words.check.setTo[which]}</strong>:{" "}
        {words.check.is(hz(expected.pump_Hz, decimalsOf(plan.step_Hz)), format(expected.fan_rpm))}.
      </p>
      <p>
        {expected.co_ppm === undefined
          ? words.check.expectBelow(upper)
          : words.check.expect(format(expected.co_ppm), upper)}
      </p>
      {verdict === undefined && toSet && (
        <>
          <button type="button" class="main large" onClick={() => press({ is: "set", pump_Hz })}>
            {words.step.isSet}
          </button>
          <p>{words.step.thenWait(spanOf(wait_s))}</p>
        </>
      )}
      {verdict === undefined && !toSet && (
        <>
          <Countdown due_at={due_at ?? 0} before={words.step.readIn} over={words.step.readNow} />
          <Reading
            key={session.presses.length}
            meter={plan.meter}
            onReading={(shown, still) => press({ is: "read", reading: shown, still })}
          />
        </>
      )}
      {verdict !== undefined && reading && (
        <>
          <p class={verdict === "poor" ? "warning" : undefined} role="status">
            {verdict === "unseen"
              ? words.check.unseen
              : words.check[verdict](coInPpm(reading) ?? "")}
          </p>
          {verdict === "poor" && <p>{words.check.poorMeans[which]}</p>}
          <HighReading where={words.check.title[which]} co_ppm={reading.co_ppm} />
          <button type="button" class="main large" onClick={() => press({ is: "finish" })}>
            {which === "middle" ? words.check.next : words.check.finish}
          </button>
          <button type="button" class="large" onClick={() => press({ is: "set", pump_Hz })}>
            {words.check.readAgain}
          </button>
        </>
      )}
      {verdict === undefined && (
        <button type="button" class="large" onClick={() => press({ is: "skip" })}>
          {words.check.skip}
        </button>
      )}
      <FlameOut onOut={() => press({ is: "out" })} />
      {verdict === undefined && !toSet && <p class="note">{words.step.early}</p>}
    </section>
  );
}
