import { useLayoutEffect, useRef, useState } from "preact/hooks";
import { ENDS, type End } from "../../model/end.ts";
import type { PublishedFit } from "../../model/fit/group.ts";
import { usualFans } from "../../model/heater.ts";
import { slipsOfSettings } from "../app/heater/mistyped.ts";
import type { LogbookHeater } from "../app/records/entry.ts";
import { errorsOf, heaterSchema } from "../app/records/schema.ts";
import { putHeater } from "../app/records/store.ts";
import type { Doing } from "../logbook/use-doing.tsx";
import { t } from "../texts/app.ts";
import { heaterWords } from "../texts/heater.ts";
import { logbookWords } from "../texts/logbook.ts";
import { shareWords } from "../texts/share.ts";
import { goToFirstMarked, hasUnread } from "../ui/first-marked.ts";
import { goToHeading } from "../ui/go-to.ts";
import { NumberField } from "../ui/number-field.tsx";
import { reasonSentence } from "../ui/reason-sentence.tsx";
import { Slips, type Suggestion, useSeen } from "../ui/slips.tsx";

const words = heaterWords.settings;

interface DraftEnd {
  pump_Hz?: number | undefined;
  fan_rpm?: number | undefined;
}

/** What a heater is set to: found with a meter it is a tune and goes on to its form; otherwise it is kept as it is, a slip once it was seen. */
export function SettingsForm(props: {
  fit: PublishedFit;
  heater: LogbookHeater;
  doing: Doing;
  onTune: () => void;
  onDone: () => void;
}) {
  const { fit, heater, doing, onTune, onDone } = props;
  const usual = usualFans(heater.heat_kW);
  const [isGuess, setGuess] = useState(false);
  const [draft, setDraft] = useState<Record<End, DraftEnd>>(
    heater.settings ?? {
      low: { fan_rpm: heater.low_fan_rpm ?? usual.low_fan_rpm },
      high: { fan_rpm: heater.high_fan_rpm ?? usual.high_fan_rpm },
    },
  );
  const [tried, setTried] = useState(false);
  const form = useRef<HTMLFormElement>(null);
  const heading = useRef<HTMLHeadingElement>(null);
  useLayoutEffect(() => goToHeading(heading.current), [isGuess]);
  const at = new Date().toISOString();
  const { low, high } = draft;
  const parsed = heaterSchema.safeParse(
    JSON.parse(JSON.stringify({ ...heater, settings: { at, low, high }, changed_at: at })),
  );
  const errors: Record<string, string> =
    tried && !parsed.success ? Object.fromEntries(errorsOf(parsed.error)) : {};
  const settings = parsed.data?.settings;
  const slips = settings ? slipsOfSettings(settings, heater.heat_kW, { fit }) : [];
  const { unseen, see } = useSeen(slips);
  const errorOf = (field: string) => {
    const slip = slips.find((one) => one.field === field);
    return errors[`settings.${field}`] ?? (slip && reasonSentence(slip));
  };
  const use = (suggestions: Suggestion[]) => {
    const next = { low: { ...draft.low }, high: { ...draft.high } };
    for (const { field, value } of suggestions) {
      const [end, quantity] = field.split(".") as [End, keyof DraftEnd];
      next[end][quantity] = value;
    }
    setDraft(next);
  };
  const keep = async () => {
    setTried(true);
    see();
    if (!parsed.success || unseen || hasUnread(form.current)) return goToFirstMarked(form.current);
    const kept = await doing(async () => {
      // Its fans are those it is set to, unless they look mistyped.
      const fans = { low_fan_rpm: low.fan_rpm, high_fan_rpm: high.fan_rpm };
      const isSound = slips.length === 0;
      await putHeater({ ...parsed.data, ...(isSound && fans) });
      return { text: isSound ? words.kept : logbookWords.entry.keptAside };
    });
    if (kept) onDone();
  };
  const cancel = (
    <button type="button" class="plain" onClick={onDone}>
      {logbookWords.entry.cancel}
    </button>
  );
  return (
    <section class="sheet" aria-labelledby="my-settings">
      <h2 id="my-settings" tabIndex={-1} ref={heading}>
        {words.title}
      </h2>
      {isGuess ? (
        <form
          ref={form}
          noValidate
          onSubmit={(e) => {
            e.preventDefault();
            void keep();
          }}
        >
          <p class="hint">{words.guessWhy}</p>
          <div class="columns">
            {ENDS.map((end) => (
              <fieldset key={end}>
                <legend>{t[end]}</legend>
                {(["pump_Hz", "fan_rpm"] as const).map((quantity) => (
                  <NumberField
                    key={quantity}
                    label={quantity === "pump_Hz" ? shareWords.pump : shareWords.fan}
                    field={`settings.${end}.${quantity}`}
                    value={draft[end][quantity]}
                    onValue={(value) =>
                      setDraft({ ...draft, [end]: { ...draft[end], [quantity]: value } })
                    }
                    error={errorOf(`${end}.${quantity}`)}
                  />
                ))}
              </fieldset>
            ))}
          </div>
          <Slips
            title={logbookWords.entry.looks}
            anyway={logbookWords.entry.anyway}
            slips={slips}
            onUse={use}
          />
          <div class="row">
            <button type="submit" class="main">
              {slips.length > 0 && !unseen ? logbookWords.entry.saveAsIs : words.keep}
            </button>
            {cancel}
          </div>
        </form>
      ) : (
        <>
          <p>{words.how}</p>
          <button type="button" onClick={onTune}>
            {words.meter}
          </button>
          <p class="hint">{words.meterWhy}</p>
          <button type="button" onClick={() => setGuess(true)}>
            {words.guess}
          </button>
          <p class="hint">{words.guessWhy}</p>
          <div class="row">{cancel}</div>
        </>
      )}
    </section>
  );
}
