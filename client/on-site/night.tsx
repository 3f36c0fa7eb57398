import { ENDS, type End } from "../../model/end.ts";
import type { PublishedFit } from "../../model/fit/group.ts";
import type { EndSetting } from "../../model/mixture.ts";
import { type EndAtNight, type TuneAtNight, tuneAtNight } from "../../model/night-air.ts";
import { WORKING_WINDOW } from "../../model/trip/window.ts";
import { t } from "../texts/app.ts";
import { onsite } from "../texts/onsite.ts";
import { useUnit } from "../ui/number-field.tsx";
import { NumberWithin } from "../ui/number-within.tsx";
import { AIR_RANGE_C, airOutOfRange } from "../ui/temperature-field.tsx";
import { format, formatIn, formatPercent } from "../units.ts";
import { decimalsOf, hz } from "./figures.ts";
import { Keys } from "./keys.tsx";
import { runOf } from "./run.ts";
import type { Session } from "./session.ts";

const words = onsite.done.night;

/** The tune was found in the air of the moment: how it sits in the coming night's, and what to set for that. */
export function InNightAir(props: {
  fit: PublishedFit;
  session: Session;
  onSession: (session: Session) => void;
}) {
  const { fit, session, onSession } = props;
  const [unit, chooseUnit] = useUnit("temperature", "atlas.temperature");
  const night_C = nightIn(session);
  const at = night_C === undefined ? undefined : nightOf(fit, session, night_C);
  return (
    <section class="sheet" aria-labelledby="night">
      <h2 id="night">{words.title}</h2>
      <Keys minus>
        <NumberWithin
          inputMode="none"
          label={t.air.temperature}
          field="night.temperature_C"
          quantity="temperature"
          unit={unit}
          onUnit={chooseUnit}
          value={night_C}
          onValue={(value) => onSession({ ...session, night_C: value ?? null })}
          hint={night_C === undefined ? words.type : undefined}
          range={AIR_RANGE_C}
          optional
          outOfRange={() => airOutOfRange(unit)}
        />
      </Keys>
      {at && (
        <>
          <p>{densityIn(at, (temperature_C) => formatIn(temperature_C, unit))}</p>
          {at.found_in.assumed.includes("temperature") && (
            <p class="note">{words.assumed(formatIn(at.found_in.temperature_C, unit))}</p>
          )}
          <Advice at={at} session={session} night={formatIn(at.night.temperature_C, unit)} />
          <AtNight at={at} session={session} />
          <p class="note">{words.worked}</p>
        </>
      )}
    </section>
  );
}

/** As typed here, else as it was when the sweep began; nothing that no night has. */
function nightIn({ night_C, plan }: Session): number | undefined {
  const known = night_C === undefined ? plan.night_C : night_C;
  const [coldest, hottest] = AIR_RANGE_C;
  return known != null && known >= coldest && known <= hottest ? known : undefined;
}

function nightOf(
  fit: PublishedFit,
  session: Session,
  night_C: number,
): (TuneAtNight & { tune: Record<End, EndSetting> }) | undefined {
  const { plan } = session;
  const { results } = runOf(session);
  const { low, high } = results;
  if (!low || !high) return undefined;
  const { heater, elevation_m, elevation_sd_m = 0, air, step_Hz, step_rpm, ends } = plan;
  const tune = {
    low: { pump_Hz: low.pump_Hz, fan_rpm: ends.low.fan_rpm },
    high: { pump_Hz: high.pump_Hz, fan_rpm: ends.high.fan_rpm },
  };
  const site = { elevation_m, elevation_sd_m, elevation_source: "given" as const };
  const { heat_kW } = heater;
  const asked = { heat_kW, site, air, night_C, tune, step_Hz, step_rpm };
  return { tune, ...tuneAtNight(fit, asked) };
}

function densityIn({ night, found_in, denser_pct }: TuneAtNight, shown: (C: number) => string) {
  const [then, now] = [shown(night.temperature_C), shown(found_in.temperature_C)];
  if (denser_pct === 0) return words.same(then, now);
  const size = formatPercent(Math.abs(denser_pct));
  return words.air(then, denser_pct > 0 ? words.denser(size) : words.thinner(size), now);
}

function Advice(props: { at: TuneAtNight; session: Session; night: string }) {
  const { at, session, night } = props;
  const limits = [
    formatPercent(WORKING_WINDOW.rich_pct),
    formatPercent(WORKING_WINDOW.lean_pct),
  ] as const;
  if (at.standing === "beyond") return <p class="warning">{words.set(...limits)}</p>;
  const { results } = runOf(session);
  // The window is the usual heater's: this one has shown that its flame goes out within it.
  const nearOut = ENDS.find(
    (end) => results[end]?.flame_out_Hz !== undefined && at[end].shift_pct < 0,
  );
  if (nearOut) return <p class="warning">{words.nearOut(t[nearOut], night)}</p>;
  if (at.standing === "tight")
    return <p class="warning">{words.tight(formatPercent(at.room_pct), ...limits)}</p>;
  const isAlike = ENDS.every((end) => at[end].shift_pct === 0);
  return <p>{isAlike ? words.well : words.stay(...limits)}</p>;
}

function AtNight(props: { at: TuneAtNight & { tune: Record<End, EndSetting> }; session: Session }) {
  const { at, session } = props;
  const { ends, step_Hz } = session.plan;
  const areFansGiven = ENDS.every((end) => ends[end].given_rpm !== undefined);
  const row = (name: string, cell: (one: EndAtNight, end: End) => string) => (
    <tr>
      <th scope="row">{name}</th>
      {ENDS.map((end) => (
        <td key={end} data-end={end}>
          {cell(at[end], end)}
        </td>
      ))}
    </tr>
  );
  return (
    <table class="results night">
      <thead>
        <tr>
          <th scope="col">{onsite.done.end}</th>
          {ENDS.map((end) => (
            <th key={end} scope="col">
              {t[end]}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {row(words.asIs, ({ shift_pct }) => shiftIn(shift_pct))}
        {row(words.pump, ({ pump_Hz, pump_shift_pct }, end) => {
          const rate = hz(pump_Hz, decimalsOf(step_Hz));
          const isSame = pump_Hz === at.tune[end].pump_Hz;
          return `${rate}: ${isSame ? `${words.unchanged}, ` : ""}${shiftIn(pump_shift_pct)}`;
        })}
        {areFansGiven
          ? row(words.fan, ({ fan_rpm, fan_shift_pct = 0 }) =>
              fan_rpm === undefined
                ? words.fanEnds
                : `${format(fan_rpm)}: ${shiftIn(fan_shift_pct)}`,
            )
          : row(words.fanUsual, ({ fan_change_pct }) => changeIn(fan_change_pct))}
      </tbody>
    </table>
  );
}

/** A shift in words: richer or leaner, never by sign alone. */
function shiftIn(shift_pct: number): string {
  if (shift_pct === 0) return words.none;
  const size = formatPercent(Math.abs(shift_pct));
  return shift_pct > 0 ? words.richer(size) : words.leaner(size);
}

function changeIn(change_pct: number): string {
  if (change_pct === 0) return words.unchanged;
  const size = formatPercent(Math.abs(change_pct));
  return change_pct > 0 ? words.faster(size) : words.slower(size);
}
