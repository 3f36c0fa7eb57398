import { RUN_CURRENT_A, runCurrent, START_CURRENT_A, START_MINUTES } from "../../model/supply.ts";
import { nightsAt } from "../../model/trip/stop.ts";
import type { Refill, TankPlan } from "../../model/trip/tank.ts";
import type { TripAnswer } from "../../model/trip/trip.ts";
import { trip as words } from "../texts/trip.ts";
import { FiguresTable } from "../ui/figures-table.tsx";
import { OpensOnPaper } from "../ui/opens-on-paper.tsx";
import { format, formatDown, formatPercent, formatTenths, formatUp } from "../units.ts";
import type { Trip } from "./trip.ts";

/** Litres against the tank and ampere-hours, by stop and in all, with what is taken for granted. */
export function TripNights({ answer, trip }: { answer: TripAnswer; trip: Trip }) {
  const { stops, total, tank } = answer;
  const { supply_V = 12, tank_L } = trip.heater;
  const nights = stops.reduce((all, { stop }) => all + nightsAt(stop), 0);
  const volts = format(supply_V);
  const litres = stops.map(({ night }) => formatUp(night.fuel_L, 0.1));
  return (
    <section class="sheet nights" aria-labelledby="nights">
      <h2 id="nights">{words.nights.title}</h2>
      <p>
        {words.nights.count(nights)} {words.nights.fuel(formatUp(total.fuel_L, 0.1))},{" "}
        {words.nights.battery(formatUp(total.battery_Ah, 0.1), volts)}
      </p>
      <p>
        {words.nights.oneNight(
          litres.every((one) => one === litres[0])
            ? (litres[0] ?? "")
            : words.result.band(
                formatUp(Math.min(...stops.map(({ night }) => night.fuel_L)), 0.1),
                formatUp(Math.max(...stops.map(({ night }) => night.fuel_L)), 0.1),
              ),
          formatUp(stops[0]?.night.battery_Ah ?? 0, 0.1),
        )}
      </p>
      {tank && tank_L !== undefined ? (
        <OnTheTank tank={tank} tank_L={tank_L} answer={answer} />
      ) : (
        <p class="hint">{words.nights.noTank}</p>
      )}
      <OpensOnPaper summary={words.nights.perNight}>
        <NightsTable answer={answer} nights={nights} />
      </OpensOnPaper>
      <p class="note">
        {stops[0]?.fuel_from === "class" && <>{words.nights.noDose} </>}
        <Assumed trip={trip} />
      </p>
    </section>
  );
}

/** Whether the tank lasts and with how much to spare, and where to fill it when it does not. */
function OnTheTank(props: { tank: TankPlan; tank_L: number; answer: TripAnswer }) {
  const { tank, tank_L, answer } = props;
  const name = (i: number) => answer.stops[i]?.stop.name ?? "";
  const size = formatTenths(tank_L);
  const left = formatDown(tank.left_L ?? 0, 0.1);
  const short = tank.lasts.indexOf(0);
  if (short >= 0) return <p class="warning">{words.nights.tankShort(size, name(short))}</p>;
  if (tank.refills.length === 0) {
    const share = formatDown((100 * (tank.left_L ?? 0)) / tank_L, 1);
    return (
      <>
        <p data-tight={tank.tight}>
          <strong>{words.nights[tank.tight ? "tankTight" : "tankLasts"](size, left, share)}</strong>
        </p>
        {tank.tight && <p class="tight">{words.nights.tightWhy}</p>}
      </>
    );
  }
  return (
    <>
      <p>
        <strong>{words.nights.tankEnds(size)}</strong>
      </p>
      <ul class="refills">
        {tank.refills.map((refill) => (
          <li key={refill.stop} data-tight={refill.tight}>
            {refillSaid(refill, name(refill.stop))}
          </li>
        ))}
      </ul>
      <p data-tight={tank.tight}>
        {words.nights[tank.tight ? "afterLastTight" : "afterLast"](left)}
      </p>
    </>
  );
}

function refillSaid({ night, every, left_L, tight }: Refill, stop: string): string {
  return [
    words.nights.refill(stop, night),
    every === null ? "" : words.nights.refillEvery(every),
    words.nights.leftThen(formatDown(left_L, 0.1)),
    tight ? words.nights.fillEarlier : "",
  ].join("");
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
          <td>{formatUp(needs.fuel_L, 0.1)}</td>
          <td>{formatUp(needs.battery_Ah, 0.1)}</td>
          {tank && <td>{format(tank.lasts[i] ?? 0)}</td>}
        </tr>
      ))}
      <tr>
        <th scope="row">{words.nights.total}</th>
        <td>{format(nights)}</td>
        <td>{formatUp(total.fuel_L, 0.1)}</td>
        <td>{formatUp(total.battery_Ah, 0.1)}</td>
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
        formatTenths(hours),
        formatPercent(power_share * 100),
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
