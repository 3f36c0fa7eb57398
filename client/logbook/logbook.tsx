import { useEffect, useMemo, useRef, useState } from "preact/hooks";
import type { PublishedFit } from "../../model/fit/group.ts";
import { withoutSlips } from "../app/heater/mistyped.ts";
import { chooseHeater, chosenHeater, myHeaters } from "../app/heater/my-heater.ts";
import { type Logbook as Book, ENTRY_KINDS, type LogbookHeater } from "../app/records/entry.ts";
import { forgetLoss } from "../app/records/store.ts";
import { recall } from "../base/remember.ts";
import { type EntryDraft, newDraft } from "./draft.ts";
import { OwnSteps } from "./own-steps.tsx";
import { useDoing } from "./use-doing.tsx";
import { useLogbook } from "./use-logbook.ts";
import "./logbook.css";
import { logbookWords as words } from "../texts/logbook.ts";
import { LogbookDrift } from "./drift.tsx";
import { type Landing, LogbookEntries } from "./entries.tsx";
import { LogbookEntryForm } from "./entry-form.tsx";
import { LogbookHeaters } from "./heater-list.tsx";
import { LogbookFiles } from "./keep-files.tsx";
import { LogbookSupply } from "./supply.tsx";

/** One's own heaters and entries, kept in this browser alone. */
export function LogbookView({ fit, onShared }: { fit: PublishedFit; onShared: () => void }) {
  const [{ book, lost, gone, trouble }, lookAgain] = useLogbook();
  const [chosen, setChosen] = useState(chosenHeater);
  const [draft, setDraft] = useState<EntryDraft | null>(null);
  const [landing, setLanding] = useState<Landing | null>(null);
  const { doing, said } = useDoing();
  const choose = (id: string) => {
    chooseHeater(id);
    setChosen(id);
    setDraft(null);
  };
  const heater = book?.heaters.find(({ id }) => id === chosen) ?? book?.heaters[0];
  const mine = useMemo(
    () => (book && heater ? myHeaters(book, heater.id, fit).mine : null),
    [book, heater?.id, fit],
  );
  const entries = useMemo(
    () => book?.entries.filter(({ heater_id }) => heater_id === heater?.id) ?? [],
    [book, heater?.id],
  );
  const sound = useMemo(
    () => (heater ? withoutSlips(entries, heater.heat_kW, { fit }) : []),
    [entries, heater, fit],
  );
  return (
    <div class="page wide-page logbook">
      <section class="sheet" aria-labelledby="logbook">
        <h2 id="logbook">{words.title}</h2>
        <p>{words.intro}</p>
        <p class="hint">{words.mayWipe}</p>
        {trouble && <p class="warning">{words.store[trouble]}</p>}
        {lost > 0 && (
          <div class="warning">
            <p>{words.lost(lost)}</p>
            <button
              type="button"
              onClick={() => {
                forgetLoss();
                lookAgain();
              }}
            >
              {words.lostUnderstood}
            </button>
          </div>
        )}
        {said}
      </section>
      <div class="stack">
        {book && <LogbookHeaters book={book} fit={fit} chosen={heater} {...{ choose, doing }} />}
        {heater &&
          (draft ? (
            <LogbookEntryForm
              key={draft.id}
              fit={fit}
              heater={heater}
              draft={draft}
              onDraft={setDraft}
              doing={doing}
              onDone={() => {
                setDraft(null);
                setLanding({ on: draft.id });
              }}
            />
          ) : (
            <NewEntry
              heater={heater}
              entries={entries}
              sound={sound}
              onDraft={setDraft}
              landing={landing}
              onLanded={() => setLanding(null)}
            />
          ))}
      </div>
      {heater && (
        <div class="stack written">
          <LogbookDrift entries={sound} />
          {mine && <OwnSteps fit={fit} mine={mine} />}
          <LogbookEntries
            {...{ entries, heater, gone, fit, doing, onShared }}
            editing={draft?.id}
            onEdit={setDraft}
            landing={landing}
            onLanded={() => setLanding(null)}
          />
        </div>
      )}
      <div class="stack">
        {heater && <LogbookSupply heater={heater} entries={sound} fit={fit} />}
        {book && <LogbookFiles book={book} doing={doing} />}
      </div>
      <section class="sheet" aria-labelledby="logbook-cautions">
        <h2 id="logbook-cautions">{words.cautions.title}</h2>
        <ul>
          {words.cautions.lines.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      </section>
    </div>
  );
}

function NewEntry(props: {
  heater: LogbookHeater;
  entries: Book["entries"];
  /** What a new one begins from: nothing that looks mistyped. */
  sound: Book["entries"];
  onDraft: (draft: EntryDraft) => void;
  landing: Landing | null;
  onLanded: () => void;
}) {
  const { heater, entries, sound, onDraft, landing, onLanded } = props;
  const first = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    if (!landing || entries.some(({ id }) => id === landing.on)) return;
    first.current?.focus();
  }, [landing]);
  return (
    <div class="row">
      {ENTRY_KINDS.map((kind) => (
        <button
          key={kind}
          type="button"
          ref={kind === "tune" ? first : null}
          class={kind === "tune" ? "main" : undefined}
          onClick={() => {
            onLanded();
            onDraft(newDraft(kind, heater, sound, new Date(), recall("question")));
          }}
        >
          {words.entry.add[kind]}
        </button>
      ))}
    </div>
  );
}
