import type { PublishedFit } from "../../model/fit/group.ts";
import type { StartBasis } from "../../model/start.ts";
import type { TripAnswer } from "../../model/trip/trip.ts";
import { locale } from "../language.ts";
import { basisWords } from "../texts/basis.ts";
import { trip as words } from "../texts/trip.ts";
import { ChoiceField } from "../ui/choice-field.tsx";
import { format } from "../units.ts";
import { TripProfile } from "./profile-drawing.tsx";
import { TripTable } from "./rates-table.tsx";
import { type Shown, shiftsShown } from "./shown-shift.ts";
import type { Trip } from "./trip.ts";
import type { TripUnits } from "./trip-units.ts";

interface TripResultProps {
  fit: PublishedFit;
  answer: TripAnswer;
  trip: Trip;
  units: TripUnits;
  shown: Shown;
  onShown: (shown: Shown) => void;
}

/** Start tunes with bands, and the shift of the tune chosen, drawn and as a table. */
export function TripResult({ fit, answer, trip, units, shown, onShown }: TripResultProps) {
  const shifts = shiftsShown(answer, shown);
  const names = answer.stops.map(({ stop }) => stop.name);
  const shownName =
    shown === "one"
      ? words.result.oneTune
      : shown === "fewest"
        ? words.result.fewest(answer.legs.length)
        : words.result.tuneOf(shown + 1, names[shown] ?? "");
  const first = answer.stops[0]?.start;
  return (
    <section class="sheet" aria-labelledby="along">
      <h2 id="along">{words.result.title}</h2>
      <ChoiceField<Shown>
        label={words.result.kept}
        name="shown"
        value={shown}
        options={[
          ["one", words.result.oneTune],
          ...(answer.legs.length > 1
            ? [["fewest", words.result.fewest(answer.legs.length)] as const]
            : []),
          ...names.map((name, i) => [i, words.result.tuneOf(i + 1, name)] as const),
        ]}
        onValue={onShown}
      />
      {first && <RestsOn shown={shownName} basis={first.basis} fit={fit} />}
      <TripProfile
        answer={answer}
        shifts={shifts}
        window={trip.window}
        unit={units.elevation}
        label={words.profile.label(shownName)}
        changes={shown === "fewest" ? answer.legs.slice(1).map(({ first }) => first) : []}
      />
      <TripTable answer={answer} shifts={shifts} trip={trip} units={units} />
      <p class="note">{words.result.how}</p>
    </section>
  );
}

/** Whose shifts these are, the tunes behind them, and how old the fit is: on paper too. */
function RestsOn(props: { shown: string; basis: StartBasis; fit: PublishedFit }) {
  const { shown, basis, fit } = props;
  const date = fit.published_at && new Date(fit.published_at);
  return (
    <>
      <p class="note">
        {words.result.shifts(shown)}{" "}
        {!basis.prior_only &&
          basisWords.tunes(
            format(basis.tunes),
            format(basis.contributors),
            format(basis.heat_kW, Number.isInteger(basis.heat_kW) ? 0 : 1),
          )}{" "}
        {date &&
          basisWords.fit(
            fit.version,
            words.result.published(date.toLocaleDateString(locale, { dateStyle: "medium" })),
          )}
      </p>
      {basis.prior_only && <p class="warning">{words.result.prior}</p>}
    </>
  );
}
