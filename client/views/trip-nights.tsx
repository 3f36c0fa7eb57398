import { at24V, RUN_CURRENT_A } from "../../model/supply.ts";
import { nightsAt } from "../../model/trip/stop.ts";
import type { TripAnswer } from "../../model/trip/trip.ts";
import { trip as words } from "../texts/trip.ts";
import type { Trip } from "../trip/trip.ts";
import { format } from "../units.ts";

/** Litres and ampere-hours by stop and in all, with what is taken for granted. */
export function TripNights({ answer, trip }: { answer: TripAnswer; trip: Trip }) {
  const { fuel_L, battery_Ah } = answer.total;
  const { hours, power_share } = trip.night;
  const { low, high } = RUN_CURRENT_A;
  const nights = answer.stops.reduce((all, { stop }) => all + nightsAt(stop), 0);
  const litres = (value: number | null) => (value === null ? "–" : format(value, 1));
  return (
    <section class="sheet" aria-labelledby="nights">
      <h2 id="nights">{words.nights.title}</h2>
      <p>
        {words.nights.count(nights)} {fuel_L !== null && <>{words.nights.fuel(litres(fuel_L))}, </>}
        {words.nights.battery(format(battery_Ah, 1), format(at24V(battery_Ah), 1))}
      </p>
      {fuel_L === null && <p class="hint">{words.nights.noDose}</p>}
      <details>
        <summary>{words.nights.perNight}</summary>
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a scrolling region must be reachable by keyboard */}
        <section class="scrolls" tabIndex={0} aria-label={words.nights.tableLabel}>
          <table>
            <thead>
              <tr>
                <th scope="col">{words.result.stop}</th>
                <th scope="col">{words.nights.nightsColumn}</th>
                <th scope="col">{words.nights.fuelColumn}</th>
                <th scope="col">{words.nights.batteryColumn}</th>
              </tr>
            </thead>
            <tbody>
              {answer.stops.map(({ stop, needs }, i) => (
                <tr key={i}>
                  <th scope="row">{stop.name}</th>
                  <td>{format(nightsAt(stop))}</td>
                  <td>{litres(needs.fuel_L)}</td>
                  <td>{format(needs.battery_Ah, 1)}</td>
                </tr>
              ))}
              <tr>
                <th scope="row">{words.nights.total}</th>
                <td>{format(nights)}</td>
                <td>{litres(fuel_L)}</td>
                <td>{format(battery_Ah, 1)}</td>
              </tr>
            </tbody>
          </table>
        </section>
      </details>
      <p class="note">
        {words.nights.assumes(
          format(hours, Number.isInteger(hours) ? 0 : 1),
          format(power_share * 100),
          format(low + (high - low) * power_share, 1),
        )}
      </p>
    </section>
  );
}
