import { ENDS, type End } from "../../model/fit/group.ts";
import type { KeepFan, StartEnd, StartTune } from "../../model/start.ts";
import { t } from "../texts/en.ts";
import { format } from "../units.ts";

const hz = (value: number) => format(value, 2);
const percent = (level: number) => format(level * 100);

/** The start tune: both ends side by side, each a value inside its bands. */
export function Answer({ tune }: { tune: StartTune }) {
  return (
    <div class="ends">
      {ENDS.map((end) => (
        <EndAnswer key={end} end={end} answer={tune[end]} />
      ))}
    </div>
  );
}

function EndAnswer({ end, answer }: { end: End; answer: StartEnd }) {
  const outer = answer.new_heater_bands_Hz.at(-1);
  return (
    <section class="end" aria-labelledby={`answer-${end}`} data-end={end}>
      <h3 id={`answer-${end}`}>{t[end]}</h3>
      <p class="rate">
        <output data-value={answer.pump_Hz_exact}>{format(answer.pump_Hz, 1)}</output> Hz
      </p>
      <p class="note">
        {t.answer.fanAt(format(answer.fan_rpm))} · {t.answer.exact(hz(answer.pump_Hz_exact))}
      </p>
      {outer && (
        <p class="visually-hidden">
          {t.answer.spoken(
            t.endWord[end],
            format(answer.pump_Hz, 1),
            percent(outer.level),
            hz(outer.lower),
            hz(outer.upper),
          )}
        </p>
      )}
      <BandDrawing answer={answer} />
      <dl class="bands">
        <dt>{t.answer.meanBand(percent(answer.mean_band_Hz.level))}</dt>
        <dd>{t.answer.range(hz(answer.mean_band_Hz.lower), hz(answer.mean_band_Hz.upper))}</dd>
        {answer.new_heater_bands_Hz.map((band) => (
          <>
            <dt key={`${band.level} t`}>{t.answer.heaters(percent(band.level))}</dt>
            <dd key={`${band.level} d`}>{t.answer.range(hz(band.lower), hz(band.upper))}</dd>
          </>
        ))}
      </dl>
      {answer.fuel_L_h !== undefined && answer.heat_kW !== undefined && (
        <p class="note">{t.answer.burn(format(answer.fuel_L_h, 2), format(answer.heat_kW, 1))}</p>
      )}
    </section>
  );
}

const WIDTH = 220;
const HEIGHT = 64;
const MIDDLE = 26;

/** Bands nested like contour steps: the wider the claim, the thinner and paler the bar. */
function BandDrawing({ answer }: { answer: StartEnd }) {
  const [inner, outer] = answer.new_heater_bands_Hz;
  if (!inner || !outer) return null;
  const margin = (outer.upper - outer.lower) * 0.08;
  const [from, to] = [outer.lower - margin, outer.upper + margin];
  const x = (value: number) => ((value - from) / (to - from)) * WIDTH;
  const bar = (band: { lower: number; upper: number }, height: number, name: string) => (
    <rect
      class={name}
      x={x(band.lower)}
      y={MIDDLE - height / 2}
      width={Math.max(1, x(band.upper) - x(band.lower))}
      height={height}
    />
  );
  return (
    <svg class="band-drawing" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} aria-hidden="true">
      {bar(outer, 12, "band-outer")}
      {bar(inner, 22, "band-inner")}
      {bar(answer.mean_band_Hz, 32, "band-mean")}
      <line
        class="band-value"
        x1={x(answer.pump_Hz_exact)}
        x2={x(answer.pump_Hz_exact)}
        y1={4}
        y2={48}
      />
      {ticks(from, to).map((value) => (
        <g key={value}>
          <line class="tick" x1={x(value)} x2={x(value)} y1={44} y2={49} />
          <text x={x(value)} y={62} text-anchor="middle">
            {Number(value.toFixed(2))}
          </text>
        </g>
      ))}
    </svg>
  );
}

/** Round values within a range, three to six of them. */
function ticks(from: number, to: number): number[] {
  const step = [0.05, 0.1, 0.2, 0.5, 1, 2].find((s) => (to - from) / s <= 6) ?? 5;
  const first = Math.ceil(from / step);
  return Array.from({ length: Math.floor(to / step) - first + 1 }, (_, i) => (first + i) * step);
}

/** Keep the fan or keep the heat, side by side. */
export function Ways({ tune }: { tune: StartTune }) {
  const { keep_fan, keep_heat } = tune.strategies;
  const cell = ({ pump_Hz, fan_rpm }: StartEnd) =>
    `${format(pump_Hz, 1)} Hz, ${format(fan_rpm)} rpm`;
  const row = (name: string, way: KeepFan) => (
    <tr>
      <th scope="row">{name}</th>
      <td>{cell(way.low)}</td>
      <td>{cell(way.high)}</td>
      <td>{format(way.heat_fraction * 100)} %</td>
    </tr>
  );
  return (
    <section class="sheet" aria-labelledby="ways">
      <h3 id="ways">{t.answer.waysTitle}</h3>
      <div class="scrolls">
        <table>
          <thead>
            <tr>
              <th scope="col">{t.answer.way}</th>
              <th scope="col">{t.low}</th>
              <th scope="col">{t.high}</th>
              <th scope="col">{t.answer.heatLeft}</th>
            </tr>
          </thead>
          <tbody>
            {row(t.answer.keepFan, keep_fan)}
            {row(t.answer.keepHeat, keep_heat)}
          </tbody>
        </table>
      </div>
      {!keep_heat.fan_suffices && (
        <p class="warning">{t.answer.fanShort(format(keep_heat.fan_limit_rpm))}</p>
      )}
    </section>
  );
}

/** Tunes, contributors, range and age behind an answer. */
export function Basis({ tune, publishedAt }: { tune: StartTune; publishedAt: string | null }) {
  const { basis } = tune;
  const range = basis.density_range;
  return (
    <section class="sheet" aria-labelledby="basis">
      <h3 id="basis">{t.basis.title}</h3>
      <p>
        {basis.prior_only
          ? t.basis.prior(format(basis.heat_kW))
          : t.basis.tunes(
              format(basis.tunes),
              format(basis.contributors),
              format(basis.heat_kW),
            )}{" "}
        {range && t.basis.range(format(range[0], 2), format(range[1], 2))}{" "}
        {range && !basis.extrapolated && t.basis.inside}
      </p>
      {range && basis.extrapolated && <p class="warning">{t.basis.extrapolated}</p>}
      <p class="note">
        {publishedAt ? t.basis.fit(basis.fit, age(publishedAt)) : t.basis.priorFit}
      </p>
    </section>
  );
}

function age(publishedAt: string): string {
  const minutes = Math.max(0, (Date.now() - Date.parse(publishedAt)) / 60_000);
  if (minutes < 1) return t.basis.ages.now;
  if (minutes < 60) return t.basis.ages.minutes(Math.round(minutes));
  if (minutes < 48 * 60) return t.basis.ages.hours(Math.round(minutes / 60));
  return t.basis.ages.days(Math.round(minutes / 1440));
}
