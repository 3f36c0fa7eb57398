import { useEffect, useRef, useState } from "preact/hooks";
import type { PublishedFit } from "../../model/fit/group.ts";
import { type EntryDraft, newDraft } from "../logbook/draft.ts";
import { type Logbook as Book, ENTRY_KINDS, type LogbookHeater } from "../logbook/entry.ts";
import { forgetLoss, NotKept } from "../logbook/store.ts";
import { useLogbook } from "../logbook/use-logbook.ts";
import { whatWentWrong } from "../parts/in-english.tsx";
import { SaidBar } from "../parts/said-bar.tsx";
import { recall, remember } from "../remember.ts";
import "../style/logbook.css";
import { logbookWords as words } from "../texts/logbook.ts";
import { LogbookDrift } from "./logbook-drift.tsx";
import { LogbookEntries } from "./logbook-entries.tsx";
import { LogbookEntryForm } from "./logbook-entry-form.tsx";
import { LogbookFiles } from "./logbook-files.tsx";
import { LogbookHeaters } from "./logbook-heaters.tsx";
import { LogbookSupply } from "./logbook-supply.tsx";

/** What was said last, and what takes it back. */
export interface Said {
  text: string;
  undo?: () => Promise<void>;
}

/** The entry whose form was closed: its reader goes on there, or where new ones begin if it was not kept. */
export interface Landing {
  on: string;
}

/** Runs a change of the logbook, and says what came of it. */
export type Doing = (work: () => Promise<Said | undefined>) => Promise<boolean>;

/** One's own heaters and entries, kept in this browser alone. */
export function LogbookView({ fit, onShared }: { fit: PublishedFit; onShared: () => void }) {
  const [{ book, lost, gone, trouble }, lookAgain] = useLogbook();
  const [chosen, setChosen] = useState(() => recall<string>("logbook.heater"));
  const [draft, setDraft] = useState<EntryDraft | null>(null);
  const [landing, setLanding] = useState<Landing | null>(null);
  const [said, setSaid] = useState<Said | null>(null);
  const [problem, setProblem] = useState<unknown>(null);
  const doing: Doing = async (work) => {
    setProblem(null);
    setSaid(null);
    try {
      setSaid((await work()) ?? null);
      return true;
    } catch (error) {
      setProblem(error);
      return false;
    }
  };
  const choose = (id: string) => {
    remember("logbook.heater", id);
    setChosen(id);
    setDraft(null);
  };
  const heater = book?.heaters.find(({ id }) => id === chosen) ?? book?.heaters[0];
  const entries = book?.entries.filter(({ heater_id }) => heater_id === heater?.id) ?? [];
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
        <SaidLine
          said={said}
          problem={problem}
          doing={doing}
          onClose={() => {
            setSaid(null);
            setProblem(null);
          }}
        />
      </section>
      <div class="stack">
        {book && <LogbookHeaters book={book} fit={fit} chosen={heater} {...{ choose, doing }} />}
        {heater &&
          (draft ? (
            <LogbookEntryForm
              key={draft.id}
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
              onDraft={setDraft}
              landing={landing}
              onLanded={() => setLanding(null)}
            />
          ))}
      </div>
      {heater && (
        <div class="stack written">
          <LogbookDrift entries={entries} />
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
        {heater && <LogbookSupply heater={heater} entries={entries} fit={fit} />}
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
  onDraft: (draft: EntryDraft) => void;
  landing: Landing | null;
  onLanded: () => void;
}) {
  const { heater, entries, onDraft, landing, onLanded } = props;
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
            onDraft(newDraft(kind, heater, entries, new Date()));
          }}
        >
          {words.entry.add[kind]}
        </button>
      ))}
    </div>
  );
}

function SaidLine(props: {
  said: Said | null;
  problem: unknown;
  doing: Doing;
  onClose: () => void;
}) {
  const { said, problem, doing, onClose } = props;
  const undo = said?.undo;
  return (
    <SaidBar
      said={said?.text}
      problem={
        problem !== null &&
        (problem instanceof NotKept ? words.store[problem.why] : whatWentWrong(problem))
      }
      undo={
        undo && {
          label: words.entry.undo,
          onUndo: () =>
            void doing(async () => {
              await undo();
              return { text: words.entry.undone };
            }),
        }
      }
      onClose={onClose}
    />
  );
}
