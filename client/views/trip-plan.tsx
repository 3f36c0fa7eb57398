import { ENDS } from "../../model/fit/group.ts";
import type { KeptTune } from "../../model/trip/one-tune.ts";
import type { TripAnswer } from "../../model/trip/trip.ts";
import type { MixtureWindow } from "../../model/trip/window.ts";
import { t } from "../texts/app.ts";
import { trip as words } from "../texts/trip.ts";
import { format } from "../units.ts";

/** One tune for the whole trip, or an honest no; then the fewest, and where to change over. */
export function TripPlan({ answer, window }: { answer: TripAnswer; window: MixtureWindow }) {
  const { one, one_within, legs, stops } = answer;
  const name = (i: number) => stops[i]?.stop.name ?? "";
  const asOne =
    one_within !== null &&
    ENDS.every((end) => one_within[end].pump_Hz_exact === one[end].pump_Hz_exact);
  const sides = [shortest(window.rich_pct), shortest(window.lean_pct)] as const;
  return (
    <section class="sheet plan" aria-labelledby="plan" data-tunes={legs.length}>
      <h2 id="plan">{words.plan.title}</h2>
      <p class="verdict">
        <strong>{one_within ? words.plan.yes(...sides) : words.plan.no(...sides)}</strong>
      </p>
      <h3>{words.plan.oneTitle}</h3>
      <TuneFacts tune={one} name="one" />
      <h3>{words.plan.fewestTitle(legs.length)}</h3>
      {one_within && <p class="note">{asOne ? words.plan.same : words.plan.leanerWithin}</p>}
      {!asOne && (
        <ol class="legs">
          {legs.map(({ first, last, tune }, i) => (
            <li key={first}>
              {i > 0 && <p class="change-over">{words.plan.changeAt(name(first))}</p>}
              <h4>
                {words.plan.tune(i + 1)}: {words.plan.legs(name(first), name(last))}
              </h4>
              <TuneFacts tune={tune} name={`leg-${i}`} />
            </li>
          ))}
        </ol>
      )}
    </section>
  );
}

function TuneFacts({ tune, name }: { tune: KeptTune; name: string }) {
  return (
    <dl class="tune-facts" data-tune={name}>
      {ENDS.map((end) => {
        const { pump_Hz, pump_Hz_exact, worst_pct, settable_worst_pct } = tune[end];
        return (
          <div key={end}>
            <dt>{t[end]}</dt>
            <dd>
              <strong data-value={pump_Hz_exact}>{format(pump_Hz, 1)} Hz</strong>{" "}
              {words.plan.exactly(format(pump_Hz_exact, 2))}
              <br />
              <span class="note">
                {words.plan.worst(format(worst_pct, 1))};{" "}
                {words.plan.worstSet(format(pump_Hz, 1), format(settable_worst_pct, 1))}
              </span>
            </dd>
          </div>
        );
      })}
    </dl>
  );
}

const shortest = (value: number) => format(value, Number.isInteger(value) ? 0 : 1);
