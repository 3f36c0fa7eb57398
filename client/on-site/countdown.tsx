import { useEffect, useRef } from "preact/hooks";
import { onsite as words } from "../texts/onsite.ts";
import { format } from "../units.ts";
import { signal } from "./signal.ts";
import { useNow } from "./use-session.ts";

/** Time left by the wall clock, in words and figures; then that it is over, heard and felt too, in the same room: nothing below moves. */
export function Countdown(props: { due_at: number; before: string; over: string }) {
  const left_s = Math.max(0, Math.ceil((props.due_at - useNow()) / 1000));
  const hasWaited = useRef(false);
  useEffect(() => {
    if (left_s === 0 && hasWaited.current) signal();
    hasWaited.current = left_s > 0;
  }, [left_s === 0]);
  return (
    <div class="countdown">
      {left_s > 0 ? (
        <p class="rate" role="timer" aria-live="off" data-left={left_s}>
          {props.before} <output>{spanOf(left_s)}</output>
        </p>
      ) : (
        <p class="rate gone">
          {props.before} <output>{spanOf(0)}</output>
        </p>
      )}
      <p class="due" role="status">
        {left_s > 0 ? "" : props.over}
      </p>
    </div>
  );
}

/** Under two minutes in seconds, else in minutes and seconds. */
export function spanOf(seconds: number): string {
  const whole = Math.round(seconds);
  if (whole < 120) return words.step.seconds(format(whole));
  const rest = whole % 60;
  const minutes = words.step.minutes(format(Math.floor(whole / 60)));
  return rest === 0 ? minutes : `${minutes} ${words.step.seconds(format(rest))}`;
}
