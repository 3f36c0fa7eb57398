import { useEffect, useMemo, useState } from "preact/hooks";
import type { PublishedFit } from "../../model/fit/group.ts";
import type { MyHeater } from "../app/heater/my-heater.ts";
import { withMine, withoutMine } from "../app/heater/with-mine.ts";
import { type CardChoice, firstChoice, isFolded, keepChoice } from "../app/link/card-choice.ts";
import { cardText } from "../app/link/card-link.ts";
import { addressOf, useSending } from "../app/link/use-sending.ts";
import { useUnit } from "../ui/number-field.tsx";
import { Back } from "./back.tsx";
import { CardFields } from "./card-fields.tsx";
import { cardFigures } from "./card-figures.ts";
import { Front } from "./front.tsx";
import "./card.css";
import { t } from "../texts/app.ts";
import { cardWords as words } from "../texts/card.ts";
import { linkWords } from "../texts/link.ts";

/** A card for the heater: asked for above, seen below as it will print. Worked out here from the fit at hand. */
export function Card(props: {
  fit: PublishedFit;
  mine: MyHeater | null | undefined;
  /** The card of a link that was opened; it is not remembered. */
  linked: CardChoice | undefined;
}) {
  const { fit, mine, linked } = props;
  const [typed, setChoice] = useState(() => linked ?? firstChoice());
  useEffect(() => {
    document.title = `${words.title} · ${t.name}`;
  }, []);
  const known = { own_tunes: mine?.own_tunes };
  const choice = useMemo(
    () => ({ ...typed, heater: withMine(typed.heater, mine, known) }),
    [typed, mine],
  );
  const [elevation, onElevationUnit] = useUnit("elevation", "card.elevation");
  const [temperature, onTemperatureUnit] = useUnit("temperature", "card.temperature");
  const units = { elevation, temperature };
  const figures = useMemo(
    () => cardFigures(fit, choice, { elevation, temperature }),
    [fit, choice, elevation, temperature],
  );
  const change = (next: CardChoice) => {
    const kept = { ...next, heater: withoutMine(next.heater, typed.heater, mine, known) };
    setChoice(kept);
    if (linked) history.replaceState(null, "", `#/card?${cardText(kept, units)}`);
    else keepChoice(kept);
  };
  const address = addressOf("card", cardText(choice, units));
  const { hasSheet, send, copy, said } = useSending(() => address, words.title);
  const sides = figures && [
    <Front key="front" fit={fit} figures={figures} units={units} heater={choice.heater} />,
    <Back key="back" {...{ figures, units, address }} step_Hz={choice.heater.step_Hz} />,
  ];
  return (
    <div class="page wide-page card-view">
      <section class="sheet card-entry" aria-labelledby="card">
        <h2 id="card">{words.title}</h2>
        <p>{words.intro}</p>
        <CardFields
          fit={fit}
          choice={choice}
          mine={mine}
          onChoice={change}
          units={units}
          onUnit={{ elevation: onElevationUnit, temperature: onTemperatureUnit }}
        />
        <div class="row">
          <button type="button" disabled={!figures} onClick={() => window.print()}>
            {words.print}
          </button>
          {hasSheet && (
            <button type="button" onClick={() => void send()}>
              {linkWords.send}
            </button>
          )}
          <button type="button" onClick={() => void copy()}>
            {linkWords.copy}
          </button>
        </div>
        <p class="hint" aria-live="polite">
          {said}
        </p>
        {(choice.heater.own_tunes?.length ?? 0) > 0 && <p class="hint">{words.code.withoutOwn}</p>}
        <p class="hint">{words.printHint}</p>
        {!figures && <p class="error">{words.cannot}</p>}
      </section>
      {sides && (
        <section class="card-preview" aria-label={words.preview}>
          <div class="card-papers" data-paper={choice.paper}>
            {isFolded(choice.paper) ? (
              <div class="card-paper">{sides}</div>
            ) : (
              sides.map((side) => (
                <div key={side.key} class="card-paper">
                  {side}
                </div>
              ))
            )}
          </div>
        </section>
      )}
    </div>
  );
}
