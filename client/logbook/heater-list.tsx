import { useRef, useState } from "preact/hooks";
import type { PublishedFit } from "../../model/fit/group.ts";
import type { Logbook, LogbookHeater } from "../app/records/entry.ts";
import { putAll, removeHeater } from "../app/records/store.ts";
import { t } from "../texts/app.ts";
import { logbookWords } from "../texts/logbook.ts";
import { shareWords } from "../texts/share.ts";
import { ChoiceField } from "../ui/choice-field.tsx";
import { HeaterForm, newHeater } from "./heater-form.tsx";
import type { Doing } from "./use-doing.tsx";

const words = logbookWords.heater;

/** Which heater; add, change, remove. */
export function LogbookHeaters(props: {
  book: Logbook;
  fit: PublishedFit;
  chosen: LogbookHeater | undefined;
  choose: (id: string) => void;
  doing: Doing;
}) {
  const { book, fit, chosen, choose, doing } = props;
  const [draft, setDraft] = useState<LogbookHeater | null>(null);
  const [asked, setAsked] = useState<string | null>(null);
  const heading = useRef<HTMLHeadingElement>(null);
  const entries = book.entries.filter(({ heater_id }) => heater_id === chosen?.id);
  const remove = (heater: LogbookHeater) =>
    doing(async () => {
      await removeHeater(heater.id);
      setAsked(null);
      return {
        text: words.removed(heater.name),
        undo: () => putAll({ heaters: [heater], entries }),
      };
    });
  return (
    <section class="sheet" aria-labelledby="heaters">
      <h2 id="heaters" tabIndex={-1} ref={heading}>
        {words.title}
      </h2>
      {!chosen && !draft && <p>{logbookWords.empty}</p>}
      {chosen && (
        <ChoiceField
          label={words.choose}
          name="heater"
          value={chosen.id}
          options={book.heaters.map(
            ({ id, name, heat_kW }) => [id, `${name}, ${t.heater.heatOption(heat_kW)}`] as const,
          )}
          onValue={choose}
        />
      )}
      {draft ? (
        <HeaterForm
          draft={draft}
          fit={fit}
          doing={doing}
          onDraft={(next) => {
            setDraft(next);
            if (next === null) heading.current?.focus();
          }}
          onKept={(id) => {
            setDraft(null);
            heading.current?.focus();
            choose(id);
          }}
        />
      ) : (
        <div class="row">
          <button
            type="button"
            class={chosen ? undefined : "main"}
            onClick={() => setDraft(newHeater())}
          >
            {words.add}
          </button>
          {chosen && (
            <>
              <button type="button" onClick={() => setDraft(chosen)}>
                {words.edit}
              </button>
              {asked === chosen.id ? (
                <>
                  <button type="button" class="danger" onClick={() => void remove(chosen)}>
                    {words.removeSure(entries.length)}
                  </button>
                  <button type="button" onClick={() => setAsked(null)}>
                    {shareWords.keep}
                  </button>
                </>
              ) : (
                <button type="button" onClick={() => setAsked(chosen.id)}>
                  {words.remove}
                </button>
              )}
            </>
          )}
        </div>
      )}
    </section>
  );
}
