import { onsite as words } from "../texts/onsite.ts";
import { Asked } from "./asked.tsx";
import { PutBack } from "./put-back.tsx";
import type { StopReason } from "./run.ts";
import type { Session } from "./session.ts";

/** The sweep is over without a tune: what to do first, and what to put back. After the last attempt at a flame there is no way back into it. */
export function Stopped(props: {
  session: Session;
  why: Exclude<StopReason, "alarm">;
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
      <h3>{words.stopped.putBack}</h3>
      <PutBack session={session} />
      <div class="row">
        {why === "abort" && (
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
