import { useEffect, useRef } from "preact/hooks";
import type { PublishedFit } from "../../model/fit/group.ts";
import type { MyHeater } from "../heater/my-heater.ts";
import { type Press, pressed, type Session, undone } from "../onsite/session.ts";
import { readySignal } from "../onsite/signal.ts";
import { SignalSwitch } from "../onsite/signal-switch.tsx";
import { type Stage, stageOf } from "../onsite/stage.ts";
import { useAwake } from "../onsite/use-awake.ts";
import { useSession } from "../onsite/use-session.ts";
import { AlarmLink } from "../parts/alarm-link.tsx";
import type { Question } from "../question.ts";
import "../style/onsite.css";
import { t } from "../texts/app.ts";
import { onsite as words } from "../texts/onsite.ts";
import { Asked } from "./onsite-asked.tsx";
import { CheckStep } from "./onsite-check.tsx";
import { Checklist } from "./onsite-checklist.tsx";
import { Done } from "./onsite-done.tsx";
import { Ended } from "./onsite-found.tsx";
import { Outside } from "./onsite-outside.tsx";
import { Prepare } from "./onsite-prepare.tsx";
import { Relight } from "./onsite-relight.tsx";
import { Stopped } from "./onsite-stopped.tsx";
import { SweepStep } from "./onsite-sweep.tsx";
import { WarmUp } from "./onsite-warm-up.tsx";

/** A press without its time. */
export type Pressed = Press extends infer P ? (P extends Press ? Omit<P, "at"> : never) : never;

export interface StageProps<S extends Stage["is"]> {
  session: Session;
  stage: Extract<Stage, { is: S }>;
  press: (press: Pressed) => void;
}

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
}) {
  const { session, isKept, keep, drop } = useSession();
  const place = useRef<HTMLDivElement>(null);
  const count = session?.presses.length;
  const seen = useRef(count);
  // What is to be done next is where the reader is: the old control is gone.
  useEffect(() => {
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
}) {
  const { session, stage, press, keep, drop, onShared } = props;
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
