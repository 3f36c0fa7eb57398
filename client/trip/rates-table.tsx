import { ENDS } from "../../model/fit/group.ts";
import type { StartEnd } from "../../model/start.ts";
import type { TripAnswer } from "../../model/trip/trip.ts";
import type { MixtureWindow } from "../../model/trip/window.ts";
import { t } from "../texts/app.ts";
import { trip as words } from "../texts/trip.ts";
import { Scrolls } from "../ui/scrolls.tsx";
import { format, formatFineRate, formatIn, formatPercent, formatRate } from "../units.ts";
import { ShiftSwatch } from "./shift-signs.tsx";
import { edgeInWords, shiftInWords, type shiftsShown } from "./shown-shift.ts";
import type { Trip } from "./trip.ts";
import type { TripUnits } from "./trip-units.ts";

interface TripTableProps {
  answer: TripAnswer;
  shifts: ReturnType<typeof shiftsShown>;
  trip: Trip;
  units: TripUnits;
}

/** Start tune and mixture shift at each stop. */
export function TripTable({ answer, shifts, trip, units }: TripTableProps) {
  const first = answer.stops[0]?.start;
  return (
    <Scrolls label={words.result.tableLabel} whole>
      <table class="trip-table">
        <thead>
          <tr>
            <th scope="col">{words.result.stop}</th>
            {ENDS.map((end) => (
              <th key={end} scope="col">
                {words.result.start(t.endWord[end])}
                {first && (
                  <span class="note under">
                    {words.result.fan(
                      format(first[end].fan_rpm),
                      formatPercent((first[end].new_heater_bands_Hz.at(-1)?.level ?? 0) * 100),
                    )}
                  </span>
                )}
              </th>
            ))}
            {ENDS.map((end) => (
              <th key={end} scope="col">
                {words.result.shift(t.endWord[end])}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {answer.stops.map(({ stop, air, start, shift_95_pct }, i) => (
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
              {ENDS.map((end) => (
                <StartCell key={end} end={start[end]} />
              ))}
              {ENDS.map((end) => (
                <ShiftCell
                  key={end}
                  shift={shifts[end][i] ?? 0}
                  unsure={shift_95_pct[end]}
                  window={trip.window}
                />
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </Scrolls>
  );
}

function StartCell({ end }: { end: StartEnd }) {
  const band = end.new_heater_bands_Hz.at(-1);
  return (
    <td data-value={end.pump_Hz}>
      <strong>{formatRate(end.pump_Hz)} Hz</strong>
      {band && (
        <>
          <br />
          <span class="note">
            {words.result.band(formatFineRate(band.lower), formatFineRate(band.upper))}
          </span>
        </>
      )}
    </td>
  );
}

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
