import { useRef, useState } from "preact/hooks";
import { onsite as words } from "../texts/onsite.ts";
import { goToFirstMarked } from "../ui/first-marked.ts";
import { CHECKS, type Session, ticked } from "./session.ts";
import type { Pressed } from "./stage-props.ts";

/** What is looked at before the heater is lit; every line counts. */
export function Checklist(props: {
  session: Session;
  press: (press: Pressed) => void;
  onSession: (session: Session) => void;
}) {
  const { session, press, onSession } = props;
  const [tried, setTried] = useState(false);
  const place = useRef<HTMLElement>(null);
  const all = CHECKS.every((check) => session.checked.includes(check));
  return (
    <section class="sheet" aria-labelledby="step" ref={place}>
      <h2 id="step" tabIndex={-1}>
        {words.checklist.title}
      </h2>
      <p>{words.checklist.intro}</p>
      {CHECKS.map((check) => (
        <label class="check" key={check}>
          <input
            type="checkbox"
            name={`check.${check}`}
            checked={session.checked.includes(check)}
            aria-invalid={tried && !session.checked.includes(check) ? "true" : undefined}
            onChange={(e) => onSession(ticked(session, check, e.currentTarget.checked))}
          />
          {words.checklist.checks[check]}
        </label>
      ))}
      <p class="warning">{words.checklist.hot}</p>
      <p class="note">{words.checklist.maker}</p>
      {tried && !all && (
        <p class="error" role="alert">
          {words.checklist.tickAll}
        </p>
      )}
      <button
        type="button"
        class="main large"
        onClick={() => {
          setTried(true);
          if (all) press({ is: "lit" });
          else goToFirstMarked(place.current);
        }}
      >
        {words.checklist.light}
      </button>
    </section>
  );
}
