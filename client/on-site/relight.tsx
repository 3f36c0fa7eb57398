import { onsite as words } from "../texts/onsite.ts";
import { decimalsOf, hz } from "./figures.ts";
import { ATTEMPTS_MOST } from "./run.ts";
import type { StageProps } from "./stage-props.ts";

/** The flame is out: cool down, richer, at most two attempts. */
export function Relight({ session, stage, press }: StageProps<"relight">) {
  const { lighting, attempts, richer_Hz } = stage;
  return (
    <section class="sheet" aria-labelledby="step" data-step="relight">
      <h2 id="step" tabIndex={-1}>
        {words.relight.title}
      </h2>
      <p class="warning">{words.relight.cool}</p>
      <p>
        {richer_Hz === undefined
          ? words.relight.same
          : words.relight.richer(hz(richer_Hz, decimalsOf(session.plan.step_Hz)))}
      </p>
      {lighting ? (
        <>
          <button
            type="button"
            class="main large"
            onClick={() =>
              press({ is: "burns", ...(richer_Hz !== undefined && { pump_Hz: richer_Hz }) })
            }
          >
            {words.relight.burns}
          </button>
          <button type="button" class="large" onClick={() => press({ is: "no light" })}>
            {words.relight.noLight}
          </button>
        </>
      ) : (
        <>
          <p>{words.relight.rule(ATTEMPTS_MOST - attempts)}</p>
          <button type="button" class="main large" onClick={() => press({ is: "relight" })}>
            {words.relight.attempt}
          </button>
        </>
      )}
    </section>
  );
}
