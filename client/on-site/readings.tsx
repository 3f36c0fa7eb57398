import type { SweepReading } from "../../model/sweep/setup.ts";
import { onsite as words } from "../texts/onsite.ts";
import { coText } from "../ui/co-text.ts";
import { spanOf } from "./countdown.tsx";
import { hz } from "./figures.ts";

/** Every reading at this end, the latest first: the chart in figures. */
export function Readings(props: { readings: SweepReading[]; decimals: number }) {
  const { readings, decimals } = props;
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
                <td>{reading.flame_out ? words.chart.flameOut : coText(reading)}</td>
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
