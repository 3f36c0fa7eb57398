import { useEffect, useRef, useState } from "preact/hooks";
import { ALARM } from "../ui/alarm-link.tsx";
import { stopForAlarm } from "./alarm.ts";
import { runOf } from "./run.ts";
import { type Session, undone } from "./session.ts";
import { useSession } from "./use-session.ts";
import "./on-site.css";
import { onsite as words } from "../texts/onsite.ts";
import { Asked } from "./asked.tsx";
import { PutBack } from "./put-back.tsx";

/** What follows the alarm's screen, at an address of its own. */
export function AfterAlarm() {
  // The alarm's screen may have been left before it had ended the sweep.
  useState(stopForAlarm);
  const { session, keep, drop } = useSession();
  return <Outside session={session} keep={keep} drop={drop} />;
}

/** Stay outside. Putting settings back has a screen of its own, and its time comes later. */
export function Outside(props: {
  session: Session | undefined;
  keep: (session: Session) => void;
  drop: () => void;
}) {
  const { session, keep, drop } = props;
  const [later, setLater] = useState(false);
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    heading.current?.focus();
    scrollTo(0, 0);
  }, [later]);
  // The sweep that the alarm ended, if there was one.
  const ended = session && runOf(session).stopped === "alarm" ? session : undefined;
  if (ended && later) {
    return (
      <section class="sheet onsite page" data-step="put-back" aria-labelledby="step">
        <h2 id="step" tabIndex={-1} ref={heading}>
          {words.stopped.putBack}
        </h2>
        <p class="warning">{words.stopped.alarm.onlyThen}</p>
        <PutBack session={ended} />
        <div class="row">
          <button type="button" onClick={() => setLater(false)}>
            {words.stopped.alarm.notYet}
          </button>
          <Asked
            ask={words.stopped.alarm.areBack}
            sure={words.stopped.alarm.endSweep}
            no={words.stopped.alarm.notYet}
            onSure={() => {
              drop();
              location.hash = "#/";
            }}
          />
        </div>
      </section>
    );
  }
  return (
    <section class="sheet onsite page emergency" data-step="alarm" aria-labelledby="step">
      <h2 id="step" tabIndex={-1} ref={heading}>
        {words.stopped.alarm.title}
      </h2>
      <ul class="first-lines">
        {words.stopped.alarm.lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <a class="alarm-link" href={ALARM}>
        {words.stopped.alarm.number}
      </a>
      {ended && (
        <>
          <p>{words.stopped.alarm.sweepEnded}</p>
          <div class="row">
            <button type="button" onClick={() => setLater(true)}>
              {words.stopped.alarm.later}
            </button>
            <Asked
              ask={words.stopped.alarm.mistaken}
              sure={words.stopped.alarm.mistakenSure}
              no={words.stopped.alarm.title}
              onSure={() => {
                keep(undone(ended));
                location.hash = "#/onsite";
              }}
            />
          </div>
        </>
      )}
    </section>
  );
}
