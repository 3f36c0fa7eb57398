import { useLayoutEffect, useRef, useState } from "preact/hooks";
import type { PublishedFit } from "../../model/fit/group.ts";
import { chooseHeater, type MyHeaters, NO_HEATER } from "../app/heater/my-heater.ts";
import type { LogbookHeater } from "../app/records/entry.ts";
import { recall } from "../base/remember.ts";
import { type EntryDraft, newDraft } from "../logbook/draft.ts";
import { LogbookEntryForm } from "../logbook/entry-form.tsx";
import { HeaterForm, newHeater } from "../logbook/heater-form.tsx";
import { useDoing } from "../logbook/use-doing.tsx";
import { t } from "../texts/app.ts";
import { heaterWords as words } from "../texts/heater.ts";
import { logbookWords } from "../texts/logbook.ts";
import { ChoiceField } from "../ui/choice-field.tsx";
import { SettingsForm } from "./settings-form.tsx";

/** What is being filled in; settings wait until the heater they belong to is there. */
type Doing =
  | { is: "choosing" }
  | { is: "heater"; draft: LogbookHeater; thenSettings: boolean }
  | { is: "settings"; of: string }
  | { is: "tune"; of: LogbookHeater; draft: EntryDraft };

/** Choose another heater, add one, change it, or say what it is set to. */
export function HeaterEditor(props: {
  fit: PublishedFit;
  my: MyHeaters;
  open: boolean;
  onClose: () => void;
}) {
  const { fit, my, open, onClose } = props;
  const { heaters, mine } = my;
  const [at, go] = useState<Doing>({ is: "choosing" });
  const [first] = useState(newHeater);
  // There is nothing to choose from: what the line says is what its press begins.
  const isNew = heaters.length === 0;
  const now: Doing =
    isNew && at.is === "choosing" ? { is: "heater", draft: first, thenSettings: true } : at;
  const { doing, said } = useDoing();
  const heading = useRef<HTMLHeadingElement>(null);
  useLayoutEffect(() => {
    // It opens right below the line that was pressed: the page stays where it is.
    if (open && now.is === "choosing") heading.current?.focus({ preventScroll: true });
  }, [open]);
  const done = () => {
    go({ is: "choosing" });
    onClose();
  };
  const chosen = heaters.find(({ id }) => id === mine?.heater.id);
  const ofSettings = now.is === "settings" && heaters.find(({ id }) => id === now.of);
  return (
    <div class="heater-editor">
      {open && now.is === "choosing" && (
        <section class="sheet" aria-labelledby="my-heater">
          <h2 id="my-heater" tabIndex={-1} ref={heading}>
            {words.line.mine}
          </h2>
          <p class="hint">{words.line.intro}</p>
          {heaters.length > 0 && (
            <ChoiceField
              label={words.line.choose}
              name="my-heater"
              value={chosen?.id ?? NO_HEATER}
              options={[
                ...heaters.map(
                  ({ id, name, heat_kW }) =>
                    [id, `${name}, ${t.heater.heatOption(heat_kW)}`] as const,
                ),
                [NO_HEATER, words.line.average],
              ]}
              onValue={chooseHeater}
            />
          )}
          <div class="row">
            <button
              type="button"
              class="main"
              onClick={() =>
                go(
                  chosen
                    ? { is: "settings", of: chosen.id }
                    : { is: "heater", draft: newHeater(), thenSettings: true },
                )
              }
            >
              {words.settings.add}
            </button>
            <button
              type="button"
              onClick={() => go({ is: "heater", draft: newHeater(), thenSettings: false })}
            >
              {logbookWords.heater.add}
            </button>
            {chosen && (
              <button
                type="button"
                onClick={() => go({ is: "heater", draft: chosen, thenSettings: false })}
              >
                {logbookWords.heater.edit}
              </button>
            )}
          </div>
        </section>
      )}
      {open && now.is === "heater" && (
        <section class="sheet" aria-label={words.line.mine}>
          {isNew && <p class="hint">{words.line.intro}</p>}
          <HeaterForm
            draft={now.draft}
            fit={fit}
            doing={doing}
            onDraft={(draft) => {
              if (draft) go({ ...now, draft });
              else if (isNew) done();
              else go({ is: "choosing" });
            }}
            onKept={(id) => {
              chooseHeater(id);
              go(now.thenSettings ? { is: "settings", of: id } : { is: "choosing" });
            }}
          />
        </section>
      )}
      {open && ofSettings && (
        <SettingsForm
          fit={fit}
          heater={ofSettings}
          doing={doing}
          onTune={() => {
            const known = mine?.heater.id === ofSettings.id ? mine.heater : ofSettings;
            const draft = newDraft("tune", known, [], new Date(), recall("question"));
            go({ is: "tune", of: ofSettings, draft });
          }}
          onDone={done}
        />
      )}
      {open && now.is === "tune" && (
        <LogbookEntryForm
          fit={fit}
          heater={now.of}
          draft={now.draft}
          onDraft={(draft) => go({ ...now, draft })}
          doing={doing}
          onDone={done}
        />
      )}
      {said}
    </div>
  );
}
