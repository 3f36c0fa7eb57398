import { ENDS } from "../../model/fit/group.ts";
import { PUMP_STEP_Hz } from "../../model/heater.ts";
import type { Edge, KeptTune } from "../../model/trip/one-tune.ts";
import type { TripAnswer } from "../../model/trip/trip.ts";
import type { MixtureWindow } from "../../model/trip/window.ts";
import { t } from "../texts/app.ts";
import { trip as words } from "../texts/trip.ts";
import { formatPercent, formatRate } from "../units.ts";
import { roomInWords, shiftInWords } from "./shown-shift.ts";

/** One tune for the whole trip, or an honest no; then the fewest, and where to change over. */
export function TripPlan({ answer, window }: { answer: TripAnswer; window: MixtureWindow }) {
  const { one, legs, stops } = answer;
  const name = (i: number) => stops[i]?.stop.name ?? "";
  const { standing } = one.edge;
  const sides = [roomInWords(window.rich_pct), roomInWords(window.lean_pct)] as const;
  const verdict = { roomy: words.plan.yes, tight: words.plan.tightly, beyond: words.plan.no };
  return (
    <section
      class="sheet plan"
      aria-labelledby="plan"
      data-tunes={legs.length}
      data-standing={standing}
    >
      <h2 id="plan">{words.plan.title}</h2>
      <p class="verdict">
        <strong>{verdict[standing](...sides)}</strong>
      </p>
      <h3>{standing === "beyond" ? words.plan.leastTitle : words.plan.oneTitle}</h3>
      <TuneFacts tune={one} name="one" stopName={name} />
      {legs.length > 1 && (
        <>
          <h3>{words.plan.fewestTitle(legs.length)}</h3>
          <ol class="legs">
            {legs.map(({ first, last, tune }, i) => (
              <li key={first}>
                {i > 0 && <p class="change-over">{words.plan.changeAt(name(first))}</p>}
                <h4>
                  {words.plan.tune(i + 1)}: {words.plan.legs(name(first), name(last))}
                </h4>
                <TuneFacts tune={tune} name={`leg-${i}`} stopName={name} coarse />
              </li>
            ))}
          </ol>
        </>
      )}
      {legs.length === 1 && standing === "beyond" && <Coarse />}
    </section>
  );
}

/** What to set at both ends, how far it is off along its stops, and where it comes nearest to the window's edge. */
function TuneFacts(props: {
  tune: KeptTune;
  name: string;
  stopName: (stop: number) => string;
  /** Whether it is beyond the window only where no rate is within. */
  coarse?: boolean;
}) {
  const { tune, name, stopName, coarse } = props;
  return (
    <>
      <dl class="tune-facts" data-tune={name}>
        {ENDS.map((end) => {
          const { pump_Hz, shifts_pct } = tune[end];
          return (
            <div key={end}>
              <dt>{t[end]}</dt>
              <dd>
                <strong data-value={pump_Hz}>{formatRate(pump_Hz)} Hz</strong>{" "}
                <span class="note">{rangeInWords(shifts_pct)}</span>
              </dd>
            </div>
          );
        })}
      </dl>
      <p
        class={tune.edge.standing === "roomy" ? "note" : "tight"}
        data-standing={tune.edge.standing}
      >
        {edgeSaid(tune.edge, stopName)}
      </p>
      {coarse && tune.edge.standing === "beyond" && <Coarse />}
    </>
  );
}

function Coarse() {
  return <p class="note">{words.plan.coarse(formatRate(PUMP_STEP_Hz))}</p>;
}

/** From the leanest to the richest of some stops. */
function rangeInWords(shifts_pct: readonly number[]): string {
  const [leanest, richest] = [Math.min(...shifts_pct), Math.max(...shifts_pct)];
  return leanest === richest
    ? shiftInWords(leanest)
    : words.result.band(shiftInWords(leanest), shiftInWords(richest));
}

function edgeSaid(edge: Edge, stopName: (stop: number) => string): string {
  const { end, stop, shift_pct, unsure_pct, room_pct, standing } = edge;
  const said = [
    words.plan.where(stopName(stop), t.endWord[end]),
    shiftInWords(shift_pct),
    roomInWords(room_pct),
  ] as const;
  if (standing === "beyond") return words.plan.over(...said);
  if (standing === "roomy") return words.plan.room(...said);
  return room_pct < unsure_pct
    ? words.plan.unsure(...said, formatPercent(unsure_pct))
    : words.plan.tight(...said);
}
