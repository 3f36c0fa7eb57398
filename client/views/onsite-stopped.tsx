import { ENDS } from "../../model/fit/group.ts";
import { decimalsOf, hz } from "../onsite/figures.ts";
import type { StopReason } from "../onsite/run.ts";
import type { Session } from "../onsite/session.ts";
import { t } from "../texts/app.ts";
import { onsite as words } from "../texts/onsite.ts";
import { format } from "../units.ts";
import { Asked } from "./onsite-asked.tsx";

/** The sweep is over without a tune: what to do first, and what to put back. */
export function Stopped(props: {
  session: Session;
  why: StopReason;
  onResume: () => void;
  onAnew: () => void;
}) {
  const { session, why, onResume, onAnew } = props;
  const { title, lines } = words.stopped[why];
  return (
    <section
      class={why === "abort" ? "sheet" : "sheet emergency"}
      data-step={why}
      aria-labelledby="step"
    >
      <h2 id="step" tabIndex={-1}>
        {title}
      </h2>
      <ol class="first-lines">
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ol>
      <PutBack session={session} />
      <div class="row">
        {why === "alarm" ? (
          <Asked
            ask={words.stopped.alarm.mistaken}
            sure={words.stopped.alarm.mistakenSure}
            no={words.emergency}
            onSure={onResume}
          />
        ) : (
          <button type="button" onClick={onResume}>
            {words.stopped.resume}
          </button>
        )}
        <Asked
          ask={words.stopped.anew}
          sure={words.stopped.anewSure}
          no={words.step.stay}
          onSure={onAnew}
        />
      </div>
    </section>
  );
}

/** The tune that the sweep began from. */
function PutBack({ session: { plan } }: { session: Session }) {
  return (
    <>
      <h3>{words.stopped.putBack}</h3>
      <table class="put-back">
        <thead>
          <tr>
            <th scope="col">{words.done.end}</th>
            <th scope="col">{words.stopped.pump}</th>
            <th scope="col">{words.stopped.fan}</th>
          </tr>
        </thead>
        <tbody>
          {ENDS.map((end) => (
            <tr key={end}>
              <th scope="row">{t[end]}</th>
              <td class="rate">{hz(plan.ends[end].before_Hz, decimalsOf(plan.step_Hz))}</td>
              <td class="rate">{format(plan.ends[end].fan_rpm)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}
