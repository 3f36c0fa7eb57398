import { useState } from "preact/hooks";
import type { PublishedFit } from "../../model/fit/group.ts";
import { planTrip, type TripAnswer } from "../../model/trip/trip.ts";
import type { MyHeater } from "../app/heater/my-heater.ts";
import { atStop, type Question } from "../base/question.ts";
import { ChoiceField } from "../ui/choice-field.tsx";
import "./trip.css";
import "./trip-print.css";
import { t } from "../texts/app.ts";
import { trip as words } from "../texts/trip.ts";
import { TripAdd } from "./add-stop.tsx";
import { AllFigures } from "./all-figures.tsx";
import { TripKeep } from "./keep-trip.tsx";
import { OpenStop } from "./open-stop.tsx";
import { ownAt, ownBasis, widestStop } from "./own-along.ts";
import { ProfileKey, TripProfile } from "./profile.tsx";
import { planShown, type SetNow, type Shown, shownStill } from "./shown-plan.ts";
import { TripSupply } from "./supply.tsx";
import { keptTrip, type Trip, tripFor, withoutOwnTunes } from "./trip.ts";
import { TripHeaterFields } from "./trip-heater.tsx";
import { useTripUnits } from "./trip-units.ts";
import { useTrip } from "./use-trip.ts";
import { TripVerdict } from "./verdict.tsx";

/**
 * Stops in order in; one drawing out that says what to set at each, with the verdict above it and fuel and charge below. All
 * of it is worked out here, from the fit kept.
 */
export function TripView(props: {
  fit: PublishedFit;
  question: Question;
  mine: MyHeater | null | undefined;
  onQuestion: (question: Question) => void;
}) {
  const { fit } = props;
  const [state, keep, showIn] = useTrip();
  const [last, setLast] = useState<Trip | null>(null);
  const [chosen, setChosen] = useState<Shown | null>(null);
  const [opened, setOpened] = useState<number | null>(null);
  const units = useTripUnits(state.units, showIn);
  // A link is for the heater it was made for.
  const isLinked = state.from === "link";
  const mine = isLinked ? state.mine : props.mine;
  const trip = tripFor(state.trip, mine);
  const change = (next: Trip) =>
    keep(isLinked ? withoutOwnTunes(next) : keptTrip(next, state.trip, mine));
  const answer = answerTo(fit, trip);
  const now = mine?.settings;
  const answered =
    answer === null || answer === "cannot"
      ? null
      : { answer, plan: planShown(answer, shownStill(chosen, answer, now), trip, now) };
  const widest = answered && ownAt(fit, trip, mine, widestStop(answered.answer));
  const basis = widest && ownBasis(widest);
  const open = opened !== null && opened < trip.stops.length ? opened : null;
  const options = answered ? optionsOf(answered.answer, now) : [];
  return (
    <div class="trip page wide-page">
      <p class="on-paper">
        <strong>{t.safety.brief}</strong>
      </p>
      <TripNotes state={state} />
      {trip.stops.length === 0 && <p class="note">{words.list.empty}</p>}
      <div class="trip-columns">
        {trip.stops.length > 0 && (
          <section
            class="sheet trip-answer"
            aria-label={words.result.title}
            data-tunes={answered?.answer.legs.length}
            data-standing={answered?.answer.one.edge.standing}
          >
            {answer === "cannot" && <p class="warning">{words.result.cannot}</p>}
            {answered && (
              <>
                <TripVerdict {...answered} trip={trip} />
                <TripProfile
                  {...answered}
                  trip={trip}
                  units={units}
                  open={open}
                  onOpen={setOpened}
                />
              </>
            )}
            {open !== null && (
              <OpenStop
                {...{ fit, trip, answered, mine, units }}
                at={open}
                onTrip={change}
                onOpen={setOpened}
                onTune={(stop) => {
                  props.onQuestion(atStop(props.question, stop, trip.heater));
                  location.hash = "#/onsite";
                }}
              />
            )}
            {answered && (
              <>
                <TripSupply answer={answered.answer} trip={trip} />
                <ProfileKey {...answered} trip={trip} />
                {basis && <p class="note own-basis">{basis}</p>}
                {isLinked && (
                  <p class="note">
                    {state.mine
                      ? words.keep.openedOwn(state.mine.own_tunes.length)
                      : words.keep.openedAverage}
                  </p>
                )}
                <ChoiceField<Shown>
                  label={words.result.kept}
                  name="shown"
                  value={answered.plan.shown}
                  options={options}
                  onValue={setChosen}
                />
              </>
            )}
          </section>
        )}
        <div class="trip-entry">
          <TripAdd fit={fit} trip={trip} units={units} onTrip={change} />
          <TripHeaterFields {...{ fit, trip }} mine={isLinked ? null : mine} onTrip={change} />
          <div class="row">
            {trip.stops.length > 0 && (
              <button
                type="button"
                class="danger"
                onClick={() => {
                  setLast(trip);
                  setOpened(null);
                  change({ ...trip, stops: [] });
                }}
              >
                {words.list.clear}
              </button>
            )}
            {trip.stops.length === 0 && last && (
              <button type="button" onClick={() => change(last)}>
                {words.list.bringBack}
              </button>
            )}
          </div>
        </div>
      </div>
      {answered && (
        <>
          <AllFigures
            {...answered}
            fit={fit}
            planName={options.find(([shown]) => shown === answered.plan.shown)?.[1] ?? ""}
            isMine={basis !== null}
            trip={trip}
            units={units}
          />
          <div class="onward">
            <a href="#/card">{t.answer.printCard}</a>
          </div>
          <TripKeep answer={answered.answer} state={{ ...state, trip }} {...{ fit, mine, units }} />
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

/** What can be shown along the trip. */
function optionsOf({ stops, legs }: TripAnswer, now: SetNow): (readonly [Shown, string])[] {
  return [
    ...(legs.length > 1 ? [["fewest", words.result.fewest(legs.length)] as const] : []),
    ["one", words.result.oneTune],
    ...(stops.length > 1 ? [["each", words.result.each] as const] : []),
    ...(now ? [["now", words.result.now] as const] : []),
    ...stops.map(({ stop }, i) => [i, words.result.tuneOf(i + 1, stop.name)] as const),
  ];
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
