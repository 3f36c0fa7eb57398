import { useLayoutEffect, useRef } from "preact/hooks";
import type { PublishedFit } from "../../model/fit/group.ts";
import type { MyHeater } from "../app/heater/my-heater.ts";
import type { Question } from "../base/question.ts";
import { AlarmLink } from "../ui/alarm-link.tsx";
import { type Press, pressed, type Session, undone } from "./session.ts";
import { readySignal } from "./signal.ts";
import { SignalSwitch } from "./signal-switch.tsx";
import { type Stage, stageOf } from "./stage.ts";
import type { Pressed } from "./stage-props.ts";
import { useAwake } from "./use-awake.ts";
import { useSession } from "./use-session.ts";
import "./on-site.css";
import { t } from "../texts/app.ts";
import { onsite as words } from "../texts/onsite.ts";
import { Outside } from "./after-alarm.tsx";
import { Asked } from "./asked.tsx";
import { CheckStep } from "./check.tsx";
import { Checklist } from "./checklist.tsx";
import { Done } from "./done.tsx";
import { Ended } from "./found.tsx";
import { Prepare } from "./prepare.tsx";
import { Relight } from "./relight.tsx";
import { Stopped } from "./stopped.tsx";
import { SweepStep } from "./sweep.tsx";
import { WarmUp } from "./warm-up.tsx";

/**
 * The guided sweep at the heater: one thing to do at a time, kept at every press, worked out here alone. While it runs it has
 * the whole screen, and keeps it on.
 */
export function OnSite(props: {
  fit: PublishedFit;
  question: Question;
  mine: MyHeater | null | undefined;
  onQuestion: (question: Question) => void;
  onShared: () => void;
  /** The tune is in the logbook, and its heater is the chosen one: what a link told of another has had its day. */
  onLogged: () => void;
}) {
  const { session, isKept, keep, drop } = useSession();
  const place = useRef<HTMLDivElement>(null);
  const count = session?.presses.length;
  const seen = useRef(count);
  // What is to be done next is where the reader is: the old control is gone.
  useLayoutEffect(() => {
    if (seen.current === count) return;
    seen.current = count;
    place.current?.querySelector<HTMLElement>("h2")?.focus();
    scrollTo(0, place.current?.offsetTop ?? 0);
  }, [count]);
  const press = (one: Pressed) => {
    readySignal();
    if (session) keep(pressed(session, { ...one, at: Date.now() } as Press));
  };
  const stage = session && stageOf(session);
  const running = stage && !["stopped", "done"].includes(stage.is);
  useAwake(Boolean(running));
  return (
    <div class={`onsite page${running ? " full" : ""}`} ref={place}>
      {running && <h1 class="visually-hidden">{t.places.onsite}</h1>}
      {session && (
        <div class="always">
          <AlarmLink />
        </div>
      )}
      {!isKept && <p class="warning">{words.notKept}</p>}
      {session && stage ? (
        <StageOf {...props} session={session} stage={stage} press={press} keep={keep} drop={drop} />
      ) : (
        <Prepare {...props} onBegin={keep} />
      )}
      {session && running && (
        <div class="row leave">
          {session.presses.length > 0 && (
            <button type="button" onClick={() => keep(undone(session))}>
              {words.step.undo}
            </button>
          )}
          {session.presses.length > 0 ? (
            <Asked
              ask={words.step.leave}
              sure={words.step.leaveSure}
              no={words.step.stay}
              onSure={() => press({ is: "abort" })}
            />
          ) : (
            <button type="button" onClick={drop}>
              {words.step.leave}
            </button>
          )}
          <SignalSwitch />
        </div>
      )}
    </div>
  );
}

function StageOf(props: {
  fit: PublishedFit;
  session: Session;
  stage: Stage;
  press: (press: Pressed) => void;
  keep: (session: Session) => void;
  drop: () => void;
  onShared: () => void;
  onLogged: () => void;
}) {
  const { session, stage, press, keep, drop, onShared, onLogged } = props;
  const at = { session, press };
  switch (stage.is) {
    case "checklist":
      return <Checklist {...at} onSession={keep} />;
    case "warm-up":
      return <WarmUp {...at} stage={stage} />;
    case "relight":
      return <Relight {...at} stage={stage} />;
    case "sweep":
      return <SweepStep {...at} stage={stage} />;
    case "ended":
      return <Ended {...at} stage={stage} />;
    case "check":
      return <CheckStep {...at} stage={stage} />;
    case "done":
      return (
        <Done
          fit={props.fit}
          session={session}
          onSession={keep}
          onShared={onShared}
          onLogged={onLogged}
          onAnew={drop}
        />
      );
    case "stopped":
      return stage.why === "alarm" ? (
        <Outside session={session} keep={keep} drop={drop} />
      ) : (
        <Stopped
          session={session}
          why={stage.why}
          onResume={() => keep(undone(session))}
          onAnew={drop}
        />
      );
  }
}
