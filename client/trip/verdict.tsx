import { PUMP_STEP_Hz } from "../../model/heater.ts";
import type { Edge } from "../../model/trip/one-tune.ts";
import type { TripAnswer } from "../../model/trip/trip.ts";
import { listed } from "../language.ts";
import { trip as words } from "../texts/trip.ts";
import { formatPercent, formatRate } from "../units.ts";
import { rateInWords } from "./rate-words.ts";
import { roomInWords, type ShownPlan, shiftInWords } from "./shown-plan.ts";
import type { Trip } from "./trip.ts";

/** One tune for the whole trip, or an honest no; then where to change over, and how far from the limits what is shown keeps. */
export function TripVerdict(props: { answer: TripAnswer; plan: ShownPlan; trip: Trip }) {
  const { answer, plan, trip } = props;
  const { one, legs, stops } = answer;
  const name = (i: number) => stops[i]?.stop.name ?? "";
  const rates = `${rateInWords(one.low.pump_Hz, trip)} / ${rateInWords(one.high.pump_Hz, trip)}`;
  const { standing } = one.edge;
  const verdict = {
    roomy: words.plan.yes(rates),
    tight: words.plan.tightly(rates),
    beyond: legs.length > 1 ? words.plan.no(legs.length) : words.plan.notQuite,
  };
  const coarse = legs.some(({ tune }) => tune.edge.standing === "beyond");
  return (
    <>
      <h2 class="verdict" id="trip-verdict" tabIndex={-1}>
        {verdict[standing]}
      </h2>
      <p
        class={plan.edge.standing === "roomy" ? "note" : "tight"}
        data-standing={plan.edge.standing}
      >
        {plan.shown === "fewest" && (
          <strong>{words.plan.changeAt(listed(plan.changes.map(name)))} </strong>
        )}
        {edgeSaid(plan.edge, name)}
      </p>
      {coarse && (
        <p class="note">{words.plan.coarse(formatRate(trip.heater.step_Hz ?? PUMP_STEP_Hz))}</p>
      )}
    </>
  );
}

function edgeSaid(edge: Edge, stopName: (stop: number) => string): string {
  const { stop, shift_pct, unsure_pct, room_pct, standing } = edge;
  const [name, room] = [stopName(stop), roomInWords(room_pct)];
  if (standing === "beyond") return words.plan.over(name, shiftInWords(shift_pct), room);
  if (standing === "roomy") return words.plan.room(name, room);
  return room_pct < unsure_pct
    ? words.plan.unsure(name, room, formatPercent(unsure_pct))
    : words.plan.tight(name, room);
}
