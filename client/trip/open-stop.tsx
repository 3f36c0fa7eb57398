import { useLayoutEffect, useRef, useState } from "preact/hooks";
import { ENDS } from "../../model/end.ts";
import type { PublishedFit } from "../../model/fit/group.ts";
import type { Stop } from "../../model/trip/stop.ts";
import type { TripAnswer } from "../../model/trip/trip.ts";
import type { MyHeater } from "../app/heater/my-heater.ts";
import { leadSentence } from "../app/heater/own-words.ts";
import { atStop, FIRST_QUESTION } from "../base/question.ts";
import { t } from "../texts/app.ts";
import { trip as words } from "../texts/trip.ts";
import { NearFolded } from "../ui/near-folded.tsx";
import { format, formatUp } from "../units.ts";
import { bandInWords } from "./all-figures.tsx";
import { ownAt, ownBasis } from "./own-along.ts";
import { rateInWords } from "./rate-words.ts";
import { edgeInWords, type ShownPlan, shiftInWords } from "./shown-plan.ts";
import { StopFields } from "./stop-fields.tsx";
import { changed, moved, type Trip, without } from "./trip.ts";
import type { TripUnits } from "./trip-units.ts";

interface OpenStopProps {
  fit: PublishedFit;
  trip: Trip;
  /** None while the figures cannot stand together. */
  answered: { answer: TripAnswer; plan: ShownPlan } | null;
  mine: MyHeater | null | undefined;
  units: TripUnits;
  at: number;
  onTrip: (trip: Trip) => void;
  onOpen: (stop: number | null) => void;
  /** Goes to the heater with all that a stop says. */
  onTune: (stop: Stop) => void;
}

/** One stop with what to set there, its fields, and its place in the order; buttons move it, so keys can. */
export function OpenStop(props: OpenStopProps) {
  const { trip, units, at, onTrip, onOpen, onTune } = props;
  const [said, setSaid] = useState("");
  const heading = useRef<HTMLHeadingElement>(null);
  const panel = useRef<HTMLElement>(null);
  const { stops } = trip;
  const stop = stops[at] as Stop;
  // What was tapped is read out and in sight, and the keyboard goes on from there. A move takes the panel along.
  const movedTo = useRef<number | null>(null);
  useLayoutEffect(() => {
    if (movedTo.current === at) return;
    heading.current?.focus({ preventScroll: true });
    const { bottom = 0 } = panel.current?.getBoundingClientRect() ?? {};
    if (bottom > innerHeight) heading.current?.scrollIntoView({ block: "center" });
  }, [at]);
  const move = (to: number) => {
    movedTo.current = to;
    onTrip(moved(trip, at, to));
    onOpen(to);
    setSaid(words.list.nowAt(stop.name, to + 1, stops.length));
    // At either end only the other button is left.
    requestAnimationFrame(() => {
      const buttons = [
        ...(panel.current?.querySelectorAll<HTMLButtonElement>("[data-move]") ?? []),
      ];
      (to < at ? buttons : buttons.reverse()).find(({ disabled }) => !disabled)?.focus();
    });
  };
  return (
    <section class="open-stop" aria-labelledby="open-stop" ref={panel}>
      <div class="open-stop-head">
        <h3 id="open-stop" tabIndex={-1} ref={heading}>
          {words.list.stop(at + 1, stop.name)}
        </h3>
        <button type="button" onClick={() => closed(at, onOpen)}>
          {words.list.close}
        </button>
      </div>
      <StopFields
        stop={stop}
        at={at}
        units={units}
        onStop={(part) => onTrip(changed(trip, at, part))}
      />
      <div class="row">
        <button
          type="button"
          class="main"
          aria-label={words.list.tuneAt(stop.name)}
          onClick={() => onTune(stop)}
        >
          {words.list.tune}
        </button>
        <button
          type="button"
          disabled={at === 0}
          data-move
          aria-label={words.list.earlierThan(stop.name)}
          onClick={() => move(at - 1)}
        >
          ← {words.list.earlier}
        </button>
        <button
          type="button"
          disabled={at === stops.length - 1}
          data-move
          aria-label={words.list.laterThan(stop.name)}
          onClick={() => move(at + 1)}
        >
          {words.list.later} →
        </button>
        <button
          type="button"
          aria-label={words.list.removeThis(stop.name)}
          onClick={() => {
            onTrip(without(trip, at));
            closed(Math.min(at, stops.length - 2), onOpen);
          }}
        >
          {words.list.remove}
        </button>
      </div>
      <StopAnswer {...props} />
      <NearFolded
        key={at}
        question={atStop(FIRST_QUESTION, stop, trip.heater)}
        unit={units.elevation}
      />
      <p class="visually-hidden" aria-live="polite">
        {said}
      </p>
    </section>
  );
}

/** Folds the panel; the keyboard goes back to the stop it came from, or to the one that took its place. */
function closed(at: number, onOpen: (stop: null) => void): void {
  onOpen(null);
  requestAnimationFrame(() => {
    document.querySelector<HTMLElement>(`[data-stop-button="${at}"]`)?.focus();
  });
}

/** What to set at the stop and how far off that is, its own starting settings in their band, and what a night takes. */
function StopAnswer({ fit, trip, answered, mine, at }: OpenStopProps) {
  const here = answered?.answer.stops[at];
  if (!answered || !here) return null;
  const { plan } = answered;
  const view = ownAt(fit, trip, mine, at);
  const basis = view && ownBasis(view);
  return (
    <div class="stop-answer">
      <dl>
        {ENDS.map((end) => {
          const shift = plan.shifts[end][at] ?? 0;
          const edge = edgeInWords(shift, here.shift_95_pct[end], trip.window);
          const { pump_Hz, new_heater_bands_Hz } = here.start[end];
          const [band] = new_heater_bands_Hz;
          return (
            <div key={end}>
              <dt>{t[end]}</dt>
              <dd>
                <strong>{rateInWords(plan.rates_Hz[end][at] ?? 0, trip)} Hz</strong>,{" "}
                {shiftInWords(shift)}
                {edge && <strong class="beyond"> ({edge})</strong>}
              </dd>
              <dd class="note">
                {words.result.startHere(rateInWords(pump_Hz, trip))}{" "}
                {band &&
                  words.result[basis ? "bandMine" : "bandOthers"](
                    format(band.level * 10),
                    bandInWords(band),
                  )}
              </dd>
            </div>
          );
        })}
      </dl>
      {view?.shifts_pct && <p class="lead">{leadSentence(view.shifts_pct)}</p>}
      {basis && <p class="note own-basis">{basis}</p>}
      <p class="note">
        {words.nights.oneNight(
          formatUp(here.night.fuel_L, 0.1),
          formatUp(here.night.battery_Ah, 0.1),
        )}
      </p>
    </div>
  );
}
