import type { SweepReading } from "../../model/sweep/setup.ts";
import { onsite as words } from "../texts/onsite.ts";
import { format } from "../units.ts";
import { spanOf } from "./countdown.tsx";
import { hz } from "./figures.ts";
import type { Plan } from "./plan.ts";

/** Every reading at this end, the latest first: the chart in figures. */
export function Readings(props: { readings: SweepReading[]; decimals: number; plan: Plan }) {
  const { readings, decimals, plan } = props;
  return (
    <section class="sheet" aria-labelledby="readings">
      <h3 id="readings">{words.chart.readings}</h3>
      {readings.length === 0 ? (
        <p class="note">{words.chart.none}</p>
      ) : (
        <table class="readings">
          <thead>
            <tr>
              <th scope="col">{words.chart.rate}</th>
              <th scope="col">{words.chart.co}</th>
              <th scope="col">{words.chart.time}</th>
            </tr>
          </thead>
          <tbody>
            {readings.toReversed().map((reading) => (
              <tr key={`${reading.time_s} ${reading.pump_Hz}`}>
                <td>{hz(reading.pump_Hz, decimals)}</td>
                <td>{shown(reading, plan)}</td>
                <td>
                  {spanOf(reading.time_s - (reading.set_s ?? reading.time_s))}
                  {reading.still && `, ${words.chart.settled}`}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
}

function shown({ co_ppm, co_below_ppm, at_ceiling, flame_out }: SweepReading, { meter }: Plan) {
  if (flame_out) return words.chart.flameOut;
  if (at_ceiling) return words.chart.aboveIs(format(meter.ceiling_ppm));
  if (co_ppm === undefined) return words.chart.belowIs(format(co_below_ppm ?? 0));
  return format(co_ppm, Number.isInteger(co_ppm) ? 0 : 1);
}
