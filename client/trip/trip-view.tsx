import { useState } from "preact/hooks";
import type { PublishedFit } from "../../model/fit/group.ts";
import { planTrip, type TripAnswer } from "../../model/trip/trip.ts";
import type { MyHeater } from "../app/heater/my-heater.ts";
import { atStop, type Question } from "../base/question.ts";
import { useUnit } from "../ui/number-field.tsx";
import "./trip.css";
import "./trip-print.css";
import { t } from "../texts/app.ts";
import { trip as words } from "../texts/trip.ts";
import { TripAdd } from "./add-stop.tsx";
import { TripKeep } from "./keep-trip.tsx";
import { TripNights } from "./nights.tsx";
import { TripPlan } from "./plan.tsx";
import { TripResult } from "./result.tsx";
import type { Shown } from "./shown-shift.ts";
import { TripStops } from "./stops.tsx";
import { keptTrip, type Trip, tripFor } from "./trip.ts";
import { TripHeaterFields } from "./trip-heater.tsx";
import { useTrip } from "./use-trip.ts";

/** Stops in order; start tunes, one tune or the fewest, fuel and charge out. All of it is worked out here, from the fit kept. */
export function TripView(props: {
  fit: PublishedFit;
  question: Question;
  mine: MyHeater | null | undefined;
  onQuestion: (question: Question) => void;
}) {
  const { fit } = props;
  const [state, keep] = useTrip();
  const [last, setLast] = useState<Trip | null>(null);
  const [shown, setShown] = useState<Shown>("one");
  const [unit, chooseUnit] = useUnit("elevation", "trip.elevation");
  const [temperature, chooseTemperature] = useUnit("temperature", "trip.temperature");
  // A link is for the heater it was made for.
  const mine = state.from === "link" ? null : props.mine;
  const trip = tripFor(state.trip, mine);
  const change = (next: Trip) => keep(keptTrip(next, state.trip, mine));
  const units = { elevation: unit, temperature, chooseUnit, chooseTemperature };
  const answer = answerTo(fit, trip);
  return (
    <div class="trip page wide-page">
      <p class="on-paper">
        <strong>{t.safety.brief}</strong>
      </p>
      <TripNotes state={state} />
      <div class="trip-entry">
        <TripAdd fit={fit} trip={trip} units={units} onTrip={change} />
        <TripHeaterFields fit={fit} trip={trip} mine={mine} onTrip={change} />
      </div>
      <TripStops
        trip={trip}
        units={units}
        onTrip={change}
        onClear={() => {
          setLast(trip);
          change({ ...trip, stops: [] });
        }}
        onTune={(stop) => {
          props.onQuestion(atStop(props.question, stop, trip.heater));
          location.hash = "#/onsite";
        }}
      />
      {trip.stops.length === 0 && last && (
        <div class="row">
          <button type="button" onClick={() => change(last)}>
            {words.list.bringBack}
          </button>
        </div>
      )}
      {answer === "cannot" && <p class="warning">{words.result.cannot}</p>}
      {answer !== null && answer !== "cannot" && (
        <>
          <TripPlan answer={answer} window={trip.window} />
          <TripResult
            fit={fit}
            answer={answer}
            trip={trip}
            units={units}
            shown={stillThere(shown, answer)}
            onShown={setShown}
          />
          <TripNights answer={answer} trip={trip} />
          <div class="onward">
            <a href="#/card">{t.answer.printCard}</a>
          </div>
          <TripKeep answer={answer} state={{ ...state, trip }} fit={fit} />
        </>
      )}
      <section class="sheet road" aria-labelledby="on-the-road">
        <h2 id="on-the-road">{words.cautions.title}</h2>
        <ul>
          {words.cautions.lines.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      </section>
    </div>
  );
}

/** What was chosen, unless the trip no longer has it. */
function stillThere(shown: Shown, { stops, legs }: TripAnswer): Shown {
  const is = shown === "fewest" ? legs.length > 1 : shown === "one" || shown < stops.length;
  return is ? shown : "one";
}

/** What a link brought, or why it did not. */
function TripNotes({ state }: { state: ReturnType<typeof useTrip>[0] }) {
  if (state.refused) {
    return (
      <p class="warning" role="alert">
        {words.keep.linkRefused(state.refused)}
      </p>
    );
  }
  if (state.from !== "link") return null;
  return (
    <p class="note opened">
      {words.keep.opened(state.trip.stops.length)}{" "}
      {state.isKept && (
        <a class="button-like" href="#/trip">
          {words.keep.back}
        </a>
      )}
    </p>
  );
}

/** null: no stop yet; "cannot": numbers that cannot stand together. */
function answerTo(fit: PublishedFit, trip: Trip): TripAnswer | "cannot" | null {
  if (trip.stops.length === 0) return null;
  try {
    return planTrip(fit, trip);
  } catch {
    return "cannot";
  }
}
