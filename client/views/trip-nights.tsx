import { RUN_CURRENT_A, runCurrent, START_CURRENT_A, START_MINUTES } from "../../model/supply.ts";
import { nightsAt } from "../../model/trip/stop.ts";
import type { TankPlan } from "../../model/trip/tank.ts";
import type { TripAnswer } from "../../model/trip/trip.ts";
import { FiguresTable } from "../parts/figures-table.tsx";
import { trip as words } from "../texts/trip.ts";
import type { Trip } from "../trip/trip.ts";
import { format } from "../units.ts";

/** Litres against the tank and ampere-hours, by stop and in all, with what is taken for granted. */
export function TripNights({ answer, trip }: { answer: TripAnswer; trip: Trip }) {
  const { stops, total, tank } = answer;
  const { supply_V = 12, tank_L } = trip.heater;
  const nights = stops.reduce((all, { stop }) => all + nightsAt(stop), 0);
  const volts = format(supply_V);
  const litres = stops.map(({ night }) => format(night.fuel_L, 1));
  return (
    <section class="sheet" aria-labelledby="nights">
      <h2 id="nights">{words.nights.title}</h2>
      <p>
        {words.nights.count(nights)} {words.nights.fuel(format(total.fuel_L, 1))},{" "}
        {words.nights.battery(format(total.battery_Ah, 1), volts)}
      </p>
      <p>
        {words.nights.oneNight(
          litres.every((one) => one === litres[0])
            ? (litres[0] ?? "")
            : words.result.band(
                format(Math.min(...stops.map(({ night }) => night.fuel_L)), 1),
                format(Math.max(...stops.map(({ night }) => night.fuel_L)), 1),
              ),
          format(stops[0]?.night.battery_Ah ?? 0, 1),
        )}
      </p>
      {tank && tank_L !== undefined ? (
        <OnTheTank tank={tank} tank_L={tank_L} answer={answer} />
      ) : (
        <p class="hint">{words.nights.noTank}</p>
      )}
      <details>
        <summary>{words.nights.perNight}</summary>
        <NightsTable answer={answer} nights={nights} />
      </details>
      <p class="note">
        {stops[0]?.fuel_from === "class" && <>{words.nights.noDose} </>}
        <Assumed trip={trip} />
      </p>
    </section>
  );
}

/** Whether the tank lasts, and where to fill it when it does not. */
function OnTheTank(props: { tank: TankPlan; tank_L: number; answer: TripAnswer }) {
  const { tank, answer } = props;
  const name = (i: number) => answer.stops[i]?.stop.name ?? "";
  const size = litresOf(props.tank_L);
  const short = tank.lasts.indexOf(0);
  if (short >= 0) return <p class="warning">{words.nights.tankShort(size, name(short))}</p>;
  if (tank.refills.length === 0) {
    return (
      <p>
        <strong>{words.nights.tankLasts(size)}</strong>
      </p>
    );
  }
  return (
    <>
      <p>
        <strong>{words.nights.tankEnds(size)}</strong>
      </p>
      <ul class="refills">
        {tank.refills.map(({ stop, night, every }) => (
          <li key={stop}>
            {words.nights.refill(name(stop), night)}
            {every !== null && words.nights.refillEvery(every)}
          </li>
        ))}
      </ul>
    </>
  );
}

function NightsTable({ answer, nights }: { answer: TripAnswer; nights: number }) {
  const { stops, total, tank } = answer;
  return (
    <FiguresTable
      label={words.nights.tableLabel}
      columns={[
        words.result.stop,
        words.nights.nightsColumn,
        words.nights.fuelColumn,
        words.nights.batteryColumn,
        ...(tank ? [words.nights.tankColumn] : []),
      ]}
    >
      {stops.map(({ stop, needs }, i) => (
        <tr key={i}>
          <th scope="row">{stop.name}</th>
          <td>{format(nightsAt(stop))}</td>
          <td>{format(needs.fuel_L, 1)}</td>
          <td>{format(needs.battery_Ah, 1)}</td>
          {tank && <td>{format(tank.lasts[i] ?? 0)}</td>}
        </tr>
      ))}
      <tr>
        <th scope="row">{words.nights.total}</th>
        <td>{format(nights)}</td>
        <td>{format(total.fuel_L, 1)}</td>
        <td>{format(total.battery_Ah, 1)}</td>
        {tank && <td />}
      </tr>
    </FiguresTable>
  );
}

function Assumed({ trip }: { trip: Trip }) {
  const { hours, power_share } = trip.night;
  const { supply_V = 12 } = trip.heater;
  const amps = (at_12_V: number, decimals = 1) => format((at_12_V * 12) / supply_V, decimals);
  return (
    <>
      {words.nights.assumes(
        format(hours, Number.isInteger(hours) ? 0 : 1),
        format(power_share * 100),
        amps(runCurrent(power_share)),
        format(supply_V),
      )}{" "}
      {words.nights.practice(
        words.result.band(amps(RUN_CURRENT_A.low), amps(RUN_CURRENT_A.high)),
        words.result.band(amps(START_CURRENT_A.least, 0), amps(START_CURRENT_A.most, 0)),
        START_MINUTES,
      )}
    </>
  );
}

const litresOf = (value: number) => format(value, Number.isInteger(value) ? 0 : 1);
