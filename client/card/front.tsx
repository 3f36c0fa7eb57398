import type { CardHeater, CardTable } from "../../model/card/card-table.ts";
import { ENDS } from "../../model/end.ts";
import type { PublishedFit } from "../../model/fit/group.ts";
import type { CardUnits } from "../app/link/card-choice.ts";
import { locale } from "../language.ts";
import { t } from "../texts/app.ts";
import { cardWords as words } from "../texts/card.ts";
import { format } from "../units.ts";
import type { CardFigures } from "./card-figures.ts";
import { RateTable } from "./rate-table.tsx";

interface FrontProps {
  fit: PublishedFit;
  figures: CardFigures;
  units: CardUnits;
  heater: CardHeater;
}

/** The card's front: carbon monoxide first, for a front may go without its back; both ends' rates, what they rest on, and lines to write the found tune on. */
export function Front({ fit, figures, units, heater }: FrontProps) {
  const { table } = figures;
  const { basis } = table;
  const { dose_uL, step_Hz } = heater;
  const perHz = table.low.fuel_L_h_per_Hz;
  const dose =
    dose_uL !== undefined &&
    perHz !== undefined &&
    words.dose(format(dose_uL, dose_uL % 1 ? 1 : 0), format(perHz, 3));
  return (
    <section class="card-side" data-side="front">
      <h3>{words.heading(format(basis.heat_kW, basis.heat_kW % 1 ? 1 : 0))}</h3>
      <p class="card-caution">
        <strong>{t.safety.brief}</strong> {words.safety.front}
      </p>
      {(basis.demo || dose) && (
        <p>
          {basis.demo && <strong>{words.demo}</strong>} {dose}
        </p>
      )}
      {ENDS.map((end) => (
        <RateTable key={end} {...{ end, figures, units, step_Hz }} />
      ))}
      <p>
        {table.own_tunes > 0 ? words.bandsMine : words.bandsMean}{" "}
        {!basis.prior_only && table.extrapolated && words.extrapolated}
      </p>
      {basis.prior_only && (
        <p class="card-mark">
          {table.own_tunes > 0 ? words.ownAlone(table.own_tunes) : words.prior}
        </p>
      )}
      <p>
        {!basis.prior_only && restsOn(table)}{" "}
        {fit.published_at ? words.fit(fit.version, dateOf(fit.published_at)) : words.noFit}{" "}
        {words.printed(dateOf())}
      </p>
      <p class="card-holds">{words.holds(...recheckAfter(units))}</p>
      <Notes />
    </section>
  );
}

function restsOn({ basis, own_tunes }: CardTable): string {
  const others = [format(basis.tunes), format(basis.contributors)] as const;
  return own_tunes > 0 ? words.ownTunes(...others, own_tunes) : words.tunes(...others);
}

/** Blank lines for a pen. */
function Notes() {
  const { notes } = words;
  return (
    <div class="card-notes">
      {[
        [notes.heater, notes.place, notes.date],
        ENDS.map((end) => notes.found(t.endWord[end])),
      ].map((line) => (
        <div key={line[0]}>
          {line.map((name) => (
            <div key={name}>
              <span>{name}</span>
              <span class="card-blank" />
            </div>
          ))}
        </div>
      ))}
    </div>
  );
}

function dateOf(time?: string): string {
  const date = time === undefined ? new Date() : new Date(time);
  return date.toLocaleDateString(locale, { dateStyle: "medium" });
}

/** 500 m or 15 °C; in US units round figures that are no longer: 1,600 ft or 27 °F. */
function recheckAfter({ elevation, temperature }: CardUnits): [climb: string, warmth: string] {
  return [
    elevation.name === "m" ? `${format(500)} m` : `${format(1600)} ft`,
    temperature.name === "°C" ? "15 °C" : "27 °F",
  ];
}
