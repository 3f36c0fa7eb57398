import { useState } from "preact/hooks";
import { AtlasProblem, Unreachable } from "../../base/answers/api.ts";
import { again } from "../../texts/again.ts";
import { t } from "../../texts/app.ts";
import { format } from "../../units.ts";
import type { FitAgain } from "./fit-again.ts";
import { FitAgainTable } from "./fit-again-table.tsx";

type State =
  | { is: "asked" }
  | { is: "working"; done: number; of: number }
  | { is: "failed"; why: string }
  | { is: "made"; made: FitAgain };

/** Makes the published fit again from the open data, in this browser, and says whether the figures are the same. */
export function DataFitAgain() {
  const [state, setState] = useState<State>({ is: "asked" });
  const run = async () => {
    const working = (done: number, of: number) => setState({ is: "working", done, of });
    working(0, 0);
    // Fetched when asked for: it brings the reader of CSV along.
    const part = await import("./fit-again.ts").catch(() => null);
    if (!part) return setState({ is: "failed", why: t.partMissing });
    try {
      setState({ is: "made", made: await part.fitAgain(working) });
    } catch (error) {
      setState({ is: "failed", why: whyFailed(error) });
    }
  };
  const retry = state.is === "failed" || (state.is === "made" && state.made.outcome !== "same");
  return (
    <section class="sheet" aria-labelledby="again">
      <h2 id="again">{again.title}</h2>
      <p>{again.intro}</p>
      <p>
        <button type="button" disabled={state.is === "working"} onClick={() => void run()}>
          {retry ? again.retry : again.button}
        </button>
      </p>
      <div
        aria-live="polite"
        class="again"
        data-outcome={state.is === "made" ? state.made.outcome : state.is}
      >
        {state.is === "working" && <Working {...state} />}
        {state.is === "failed" && <p class="warning">{state.why}</p>}
        {state.is === "made" && (
          <p class={state.made.outcome === "same" ? undefined : "warning"}>
            {sentence(state.made)}
          </p>
        )}
      </div>
      {state.is === "made" && state.made.groups.length > 0 && (
        <FitAgainTable groups={state.made.groups} />
      )}
    </section>
  );
}

/** Fetching takes as long as it takes; of the fits it is known how many there are. */
function Working({ done, of }: { done: number; of: number }) {
  const said = of === 0 ? again.working : again.fitting(done, of);
  return (
    <>
      <p>{said}</p>
      <progress aria-label={said} {...(of === 0 ? {} : { value: done, max: of })} />
    </>
  );
}

function sentence({ outcome, version, rows, groups }: FitAgain): string {
  const differing = groups.filter(({ same }) => !same).length;
  return {
    same: again.same(version, format(rows), groups.length),
    differs: again.differs(version, differing, groups.length),
    moving: again.moving(version),
    "other code": again.otherCode(version),
    nothing: again.nothing,
  }[outcome];
}

function whyFailed(error: unknown): string {
  if (error instanceof Unreachable) return again.unreachable;
  if (error instanceof AtlasProblem) return again.failed(error.problem.status);
  return again.broken;
}
