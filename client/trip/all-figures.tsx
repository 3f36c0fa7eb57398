import { ENDS } from "../../model/end.ts";
import type { PublishedFit } from "../../model/fit/group.ts";
import type { StartEnd, StartTune } from "../../model/start.ts";
import { RUN_CURRENT_A, runCurrent, START_CURRENT_A, START_MINUTES } from "../../model/supply.ts";
import { nightsAt } from "../../model/trip/stop.ts";
import type { TripAnswer } from "../../model/trip/trip.ts";
import type { MixtureWindow } from "../../model/trip/window.ts";
import { locale } from "../language.ts";
import { t } from "../texts/app.ts";
import { basisWords } from "../texts/basis.ts";
import { trip as words } from "../texts/trip.ts";
import { FiguresTable } from "../ui/figures-table.tsx";
import { OpensOnPaper } from "../ui/opens-on-paper.tsx";
import {
  format,
  formatFineRate,
  formatIn,
  formatPercent,
  formatTenths,
  formatUp,
} from "../units.ts";
import { rateInWords } from "./rate-words.ts";
import { ShiftSwatch } from "./shift-signs.tsx";
import { edgeInWords, type ShownPlan, shiftInWords } from "./shown-plan.ts";
import type { Trip } from "./trip.ts";
import type { TripUnits } from "./trip-units.ts";

interface AllFiguresProps {
  fit: PublishedFit;
  answer: TripAnswer;
  plan: ShownPlan;
  /** What is shown, in words. */
  planName: string;
  /** Whether the bands are those of a heater with tunes of its own. */
  isMine: boolean;
  trip: Trip;
  units: TripUnits;
}

/** Every figure of the trip in one table, and what it rests on: folded on the screen, open on paper. */
export function AllFigures(props: AllFiguresProps) {
  const { fit, answer, plan, planName, isMine, trip, units } = props;
  const { stops, total, tank, battery } = answer;
  const first = stops[0]?.start;
  const nights = stops.reduce((all, { stop }) => all + nightsAt(stop), 0);
  return (
    <section class="sheet trip-figures">
      <OpensOnPaper summary={words.result.all}>
        {first && <RestsOn {...{ planName, isMine, fit }} start={first} />}
        <FiguresTable
          label={words.result.tableLabel}
          class="trip-table"
          whole
          columns={[
            words.result.stop,
            words.result.set,
            ...ENDS.map((end) => words.result.start(t.endWord[end])),
            ...ENDS.map((end) => words.result.shift(t.endWord[end])),
            words.nights.nightsColumn,
            words.nights.fuelColumn,
            words.nights.batteryColumn,
            ...(tank ? [words.nights.tankColumn] : []),
            ...(battery ? [words.nights.chargeColumn] : []),
          ]}
        >
          {stops.map(({ stop, air, start, shift_95_pct, needs }, i) => (
            <tr key={i}>
              <th scope="row">
                {stop.name}
                <br />
                <span class="note">
                  {formatIn(stop.elevation_m, units.elevation)},{" "}
                  {formatIn(air.temperature_C, units.temperature)}
                  {air.assumed.includes("temperature") && ` (${words.result.guessed})`}
                  {start.basis.extrapolated && !start.basis.prior_only && (
                    <>, {words.result.extrapolated}</>
                  )}
                </span>
              </th>
              <td>
                {rateInWords(plan.rates_Hz.low[i] ?? 0, trip)} /{" "}
                {rateInWords(plan.rates_Hz.high[i] ?? 0, trip)} Hz
              </td>
              {ENDS.map((end) => (
                <StartCell key={end} end={start[end]} trip={trip} />
              ))}
              {ENDS.map((end) => (
                <ShiftCell
                  key={end}
                  shift={plan.shifts[end][i] ?? 0}
                  unsure={shift_95_pct[end]}
                  window={trip.window}
                />
              ))}
              <td>{format(nightsAt(stop))}</td>
              <td>{formatUp(needs.fuel_L, 0.1)}</td>
              <td>{formatUp(needs.battery_Ah, 0.1)}</td>
              {tank && <td>{format(tank.lasts[i] ?? 0)}</td>}
              {battery && <td>{format(battery.lasts[i] ?? 0)}</td>}
            </tr>
          ))}
          <tr>
            <th scope="row">{words.nights.total}</th>
            <td colSpan={5} />
            <td>{format(nights)}</td>
            <td>{formatUp(total.fuel_L, 0.1)}</td>
            <td>{formatUp(total.battery_Ah, 0.1)}</td>
            {tank && <td />}
            {battery && <td />}
          </tr>
        </FiguresTable>
        <p class="note">{words.result.how}</p>
        <p class="note">
          {stops[0]?.fuel_from === "class" && <>{words.nights.noDose} </>}
          <Assumed trip={trip} />
        </p>
      </OpensOnPaper>
    </section>
  );
}

function StartCell({ end, trip }: { end: StartEnd; trip: Trip }) {
  const band = end.new_heater_bands_Hz.at(-1);
  return (
    <td data-value={end.pump_Hz}>
      <strong>{rateInWords(end.pump_Hz, trip)} Hz</strong>
      {band && (
        <>
          <br />
          <span class="note">{bandInWords(band)}</span>
        </>
      )}
    </td>
  );
}

export const bandInWords = ({ lower, upper }: { lower: number; upper: number }) =>
  words.result.band(formatFineRate(lower), formatFineRate(upper));

/** A shift in words, how sure it is, and whether it leaves the window or nearly; rich and lean by pattern too. */
function ShiftCell(props: { shift: number; unsure: number; window: MixtureWindow }) {
  const { shift, unsure, window } = props;
  const edge = edgeInWords(shift, unsure, window);
  return (
    <td data-shift={shift}>
      {shift !== 0 && <ShiftSwatch side={shift > 0 ? "rich" : "lean"} />}
      {shiftInWords(shift)} <span class="note">{words.result.about(format(unsure))}</span>
      {edge && (
        <>
          <br />
          <strong class="beyond">{edge}</strong>
        </>
      )}
    </td>
  );
}

/** Whose shifts these are, whose bands, the tunes behind them, and how old the fit is: on paper too. */
function RestsOn(props: {
  planName: string;
  isMine: boolean;
  fit: PublishedFit;
  start: StartTune;
}) {
  const { planName, isMine, fit, start } = props;
  const { basis, low, high } = start;
  const level = formatPercent((low.new_heater_bands_Hz.at(-1)?.level ?? 0) * 100);
  const date = fit.published_at && new Date(fit.published_at);
  return (
    <>
      <p class="note">
        {words.result.shifts(planName)}{" "}
        {words.result[isMine ? "bandsMine" : "bands"](
          format(low.fan_rpm),
          format(high.fan_rpm),
          level,
        )}{" "}
        {!basis.prior_only &&
          basisWords.tunes(
            format(basis.tunes),
            format(basis.contributors),
            format(basis.heat_kW, Number.isInteger(basis.heat_kW) ? 0 : 1),
          )}{" "}
        {date &&
          basisWords.fit(
            fit.version,
            words.result.published(date.toLocaleDateString(locale, { dateStyle: "medium" })),
          )}
      </p>
      {basis.prior_only && <p class="warning">{words.result.prior}</p>}
    </>
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
