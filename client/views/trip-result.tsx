import { ENDS, type PublishedFit } from "../../model/fit/group.ts";
import type { StartBasis, StartEnd } from "../../model/start.ts";
import type { TripAnswer } from "../../model/trip/trip.ts";
import { t } from "../texts/app.ts";
import { locale } from "../texts/language.ts";
import { trip as words } from "../texts/trip.ts";
import { isBeyond, type Shown, shiftInWords, shiftsShown } from "../trip/shown-shift.ts";
import type { Trip } from "../trip/trip.ts";
import type { TripUnits } from "../trip/trip-units.ts";
import { format, formatIn } from "../units.ts";
import { TripProfile } from "./trip-profile.tsx";

interface TripResultProps {
  fit: PublishedFit;
  answer: TripAnswer;
  trip: Trip;
  units: TripUnits;
  shown: Shown;
  onShown: (shown: Shown) => void;
}

/** Start tunes with bands, and the shift of the tune chosen, drawn and as a table. */
export function TripResult({ fit, answer, trip, units, shown, onShown }: TripResultProps) {
  const shifts = shiftsShown(answer, shown);
  const names = answer.stops.map(({ stop }) => stop.name);
  const shownName =
    shown === "one"
      ? words.result.oneTune
      : shown === "fewest"
        ? words.result.fewest(answer.legs.length)
        : words.result.tuneOf(shown + 1, names[shown] ?? "");
  const first = answer.stops[0]?.start;
  return (
    <section class="sheet" aria-labelledby="along">
      <h2 id="along">{words.result.title}</h2>
      <div class="field">
        <label for="shown-shift">{words.result.kept}</label>
        <select
          id="shown-shift"
          name="shown"
          value={String(shown)}
          onChange={({ currentTarget: { value } }) =>
            onShown(value === "one" || value === "fewest" ? value : Number(value))
          }
        >
          <option value="one">{words.result.oneTune}</option>
          <option value="fewest">{words.result.fewest(answer.legs.length)}</option>
          {names.map((name, i) => (
            <option key={i} value={String(i)}>
              {words.result.tuneOf(i + 1, name)}
            </option>
          ))}
        </select>
      </div>
      {first && <RestsOn shown={shownName} basis={first.basis} fit={fit} />}
      <TripProfile
        answer={answer}
        shifts={shifts}
        window={trip.window}
        unit={units.elevation}
        label={words.profile.label(shownName)}
        changes={shown === "fewest" ? answer.legs.slice(1).map(({ first }) => first) : []}
      />
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a scrolling region must be reachable by keyboard */}
      <section class="scrolls whole" tabIndex={0} aria-label={words.result.tableLabel}>
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
                        format((first[end].new_heater_bands_Hz.at(-1)?.level ?? 0) * 100),
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
                {ENDS.map((end) => {
                  const shift = shifts[end][i] ?? 0;
                  return (
                    <td key={end} data-shift={shift}>
                      {Math.round(shift) !== 0 && (
                        <span
                          class={shift > 0 ? "swatch rich" : "swatch lean"}
                          aria-hidden="true"
                        />
                      )}
                      {shiftInWords(shift)}{" "}
                      <span class="note">{words.result.about(format(shift_95_pct[end]))}</span>
                      {isBeyond(shift, trip.window) && (
                        <>
                          <br />
                          <strong class="beyond">{words.result.beyond}</strong>
                        </>
                      )}
                    </td>
                  );
                })}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <p class="note">{words.result.how}</p>
    </section>
  );
}

function StartCell({ end }: { end: StartEnd }) {
  const band = end.new_heater_bands_Hz.at(-1);
  return (
    <td data-value={end.pump_Hz_exact}>
      <strong>{format(end.pump_Hz, 1)} Hz</strong>
      {band && (
        <>
          <br />
          <span class="note">
            {words.result.band(format(band.lower, 2), format(band.upper, 2))}
          </span>
        </>
      )}
    </td>
  );
}

/** Whose shifts these are, the tunes behind them, and how old the fit is: on paper too. */
function RestsOn(props: { shown: string; basis: StartBasis; fit: PublishedFit }) {
  const { shown, basis, fit } = props;
  const date = fit.published_at && new Date(fit.published_at);
  return (
    <>
      <p class="note">
        {words.result.shifts(shown)}{" "}
        {!basis.prior_only &&
          t.basis.tunes(
            format(basis.tunes),
            format(basis.contributors),
            format(basis.heat_kW, Number.isInteger(basis.heat_kW) ? 0 : 1),
          )}{" "}
        {date &&
          t.basis.fit(
            fit.version,
            words.result.published(date.toLocaleDateString(locale, { dateStyle: "medium" })),
          )}
      </p>
      {basis.prior_only && <p class="warning">{words.result.prior}</p>}
    </>
  );
}
