import { useEffect, useMemo, useState } from "preact/hooks";
import type { PublishedFit } from "../../model/fit/group.ts";
import { Back } from "../card/back.tsx";
import { type CardChoice, firstChoice, isFolded, keepChoice } from "../card/card-choice.ts";
import { CardFields } from "../card/card-fields.tsx";
import { cardFigures } from "../card/card-figures.ts";
import { Front } from "../card/front.tsx";
import type { MyHeater } from "../heater/my-heater.ts";
import { withMine, withoutMine } from "../heater/with-mine.ts";
import { useUnit } from "../parts/number-field.tsx";
import "../style/card.css";
import { t } from "../texts/app.ts";
import { cardWords as words } from "../texts/card.ts";

/** A card for the heater: asked for above, seen below as it will print. Worked out here from the fit at hand. */
export function Card({ fit, mine }: { fit: PublishedFit; mine: MyHeater | null | undefined }) {
  const [typed, setChoice] = useState(firstChoice);
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
    keepChoice(kept);
  };
  const sides = figures && [
    <Front key="front" fit={fit} figures={figures} units={units} dose_uL={choice.heater.dose_uL} />,
    <Back key="back" figures={figures} units={units} />,
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
        <p>
          <button type="button" disabled={!figures} onClick={() => window.print()}>
            {words.print}
          </button>
        </p>
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
