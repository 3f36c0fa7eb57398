import { useState } from "preact/hooks";
import { CHECKS, type Session, ticked } from "../onsite/session.ts";
import { onsite as words } from "../texts/onsite.ts";
import type { Pressed } from "./onsite.tsx";

/** What is looked at before the heater is lit; every line counts. */
export function Checklist(props: {
  session: Session;
  press: (press: Pressed) => void;
  onSession: (session: Session) => void;
}) {
  const { session, press, onSession } = props;
  const [tried, setTried] = useState(false);
  const all = CHECKS.every((check) => session.checked.includes(check));
  return (
    <section class="sheet" aria-labelledby="step">
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
        onClick={() => (all ? press({ is: "lit" }) : setTried(true))}
      >
        {words.checklist.light}
      </button>
    </section>
  );
}
