import { useEffect, useState } from "preact/hooks";
import { ENDS, type End } from "../../model/end.ts";
import type { PublishedFit } from "../../model/fit/group.ts";
import { isHigh } from "../../model/sweep/common-practice.ts";
import { judgeCheck } from "../../model/sweep/middle.ts";
import type { LogbookHeater } from "../app/records/entry.ts";
import { HighCo, highReadings } from "../share/high-co.tsx";
import { t } from "../texts/app.ts";
import { onsite as words } from "../texts/onsite.ts";
import { coInPpm } from "../ui/co-text.ts";
import { format } from "../units.ts";
import { Asked } from "./asked.tsx";
import { decimalsOf, hz } from "./figures.ts";
import { broughtBy, logSweep } from "./logged.ts";
import { InNightAir } from "./night.tsx";
import { type Run, runOf } from "./run.ts";
import type { Session } from "./session.ts";
import { ShareSweep } from "./share-found.tsx";
import { expectationOf } from "./stage.ts";
import { keptSession } from "./use-session.ts";

/** Both ends found: the tune, kept in the logbook, and shared on a press. */
export function Done(props: {
  fit: PublishedFit;
  session: Session;
  onSession: (session: Session) => void;
  onShared: () => void;
  onLogged: () => void;
  onAnew: () => void;
}) {
  const { session, onSession } = props;
  const [failed, setFailed] = useState(false);
  const [asked, setAsked] = useState<LogbookHeater[]>([]);
  const { results } = runOf(session);
  const isFound = ENDS.every((end) => results[end]?.sweep);
  const high = highReadings(results);
  const log = async (swept: Session) => {
    try {
      const alike = await logSweep(swept, words.done.heaterName, new Date());
      setFailed(false);
      setAsked(alike);
      if (alike.length > 0 || swept.logged) return;
      onSession({ ...swept, logged: true });
      // A link was of another heater; but what only this page holds must not go with its answer.
      if (!keptSession()?.logged) return;
      history.replaceState(null, "", location.hash.split("?")[0]);
      props.onLogged();
    } catch {
      setFailed(true);
    }
  };
  useEffect(() => {
    if (!session.logged) void log(session);
  }, [session.logged]);
  return (
    <>
      <section class="sheet" aria-labelledby="step" data-step="done">
        <h2 id="step" tabIndex={-1}>
          {isFound ? words.done.title : words.done.titleSet}
        </h2>
        <Results session={session} />
        <p>{checksIn(session)}</p>
        <HighCo advice={high} />
        {ENDS.map((end) => (
          <BesideFlameOut key={end} end={end} session={session} />
        ))}
        {high.length === 0 && <p class="note">{words.found.practice}</p>}
        <p class="note">{words.done.recheck}</p>
        <p role="status">{session.logged ? words.done.logged : ""}</p>
        {failed && (
          <p class="warning">
            {words.done.notLogged}{" "}
            <button type="button" onClick={() => void log(session)}>
              {words.done.retry}
            </button>
          </p>
        )}
        {asked.length > 0 && (
          <WhoseSweep
            heaters={asked}
            onHeater={(heater_id) => {
              const claimed = { ...session, plan: { ...session.plan, heater_id } };
              onSession(claimed);
              void log(claimed);
            }}
            brought={broughtBy(session)}
          />
        )}
        {asked.length === 0 && (
          <div class="row">
            <a class="button-like" href="#/logbook">
              {words.done.openLogbook}
            </a>
            <Asked
              ask={words.done.anew}
              sure={words.done.anew}
              no={words.done.keepShown}
              onSure={props.onAnew}
            />
          </div>
        )}
      </section>
      <InNightAir fit={props.fit} session={session} onSession={onSession} />
      <ShareSweep session={session} onSession={onSession} onShared={props.onShared} />
    </>
  );
}

/** Which heater was swept, where it was begun for none that the logbook knows. */
function WhoseSweep(props: {
  heaters: readonly LogbookHeater[];
  /** The id of one that is not listed. */
  brought: string;
  onHeater: (id: string) => void;
}) {
  const { heaters, brought, onHeater } = props;
  const named = heaters.map(({ id, name }) => [id, name] as const);
  return (
    <fieldset class="whose">
      <legend>{words.done.whose}</legend>
      <p class="hint">{words.done.whoseWhy}</p>
      <div class="row">
        {[...named, [brought, words.done.whoseNew] as const].map(([id, name]) => (
          <button key={id} type="button" onClick={() => onHeater(id)}>
            {name}
          </button>
        ))}
      </div>
    </fieldset>
  );
}

/** A margin beside a rate at which the flame went out. */
function BesideFlameOut({ end, session }: { end: End; session: Session }) {
  const out_Hz = runOf(session).results[end]?.flame_out_Hz;
  if (out_Hz === undefined) return null;
  return (
    <p class="warning">
      {t[end]}: {words.found.besideFlameOut(hz(out_Hz, decimalsOf(session.plan.step_Hz)))}
    </p>
  );
}

function Results({ session }: { session: Session }) {
  const { plan } = session;
  const { results } = runOf(session);
  const decimals = decimalsOf(plan.step_Hz);
  const row = (name: string, cell: (end: (typeof ENDS)[number]) => string) => (
    <tr>
      <th scope="row">{name}</th>
      {ENDS.map((end) => (
        <td key={end}>{cell(end)}</td>
      ))}
    </tr>
  );
  return (
    <table class="results">
      <thead>
        <tr>
          <th scope="col">{words.done.end}</th>
          {ENDS.map((end) => (
            <th key={end} scope="col">
              {t[end]}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        <tr class="big">
          <th scope="row">{words.done.pump}</th>
          {ENDS.map((end) => (
            <td key={end} data-end={end}>
              {hz(results[end]?.pump_Hz ?? 0, decimals)}
            </td>
          ))}
        </tr>
        {row(words.done.fan, (end) => format(plan.ends[end].fan_rpm))}
        {row(words.done.co, (end) => coInPpm(results[end] ?? {}) ?? words.done.none)}
        {row(words.done.minimum, (end) => {
          const sweep = results[end]?.sweep;
          if (!sweep) return words.done.none;
          return words.done.span(hz(sweep.lower_Hz, decimals), hz(sweep.upper_Hz, decimals));
        })}
        {row(words.done.settled, (end) => format(results[end]?.settled ?? 0))}
        {row(words.done.before, (end) => hz(plan.ends[end].before_Hz, decimals))}
      </tbody>
    </table>
  );
}

/** Both checks in a line: what was shown, and whether that is as it should be. */
function checksIn(session: Session): string {
  const run: Run = runOf(session);
  const said = (["middle", "full"] as const).map((which) => {
    const reading = run.checks[which];
    const name = words.check.title[which];
    if (reading === undefined || reading === "skipped") return `${name}: ${words.check.skipped}`;
    const verdict = judgeCheck(expectationOf(session, run, which), reading);
    const high = verdict === "good" && isHigh(reading.co_ppm);
    return `${name}: ${coInPpm(reading)}, ${words.done.verdicts[high ? "high" : verdict]}`;
  });
  return `${said.join("; ")}.`;
}
