import { useState } from "preact/hooks";
import type { GivenAir } from "../../model/air.ts";
import { ENDS } from "../../model/end.ts";
import type { PublishedFit } from "../../model/fit/group.ts";
import type { EndSetting } from "../../model/mixture.ts";
import { type EndsSet, nightAsSet, retunedFor } from "../../model/own-night.ts";
import { settablePump } from "../../model/rounding.ts";
import { startTune } from "../../model/start.ts";
import { START_MINUTES, type Supply } from "../../model/supply.ts";
import { nightAt, USUAL_NIGHT } from "../../model/trip/nights.ts";
import type { LogbookEntry, LogbookHeater } from "../app/records/entry.ts";
import { locale } from "../language.ts";
import { t } from "../texts/app.ts";
import { logbookWords } from "../texts/logbook.ts";
import { NumberField, useUnit } from "../ui/number-field.tsx";
import { TemperatureField } from "../ui/temperature-field.tsx";
import { format, formatDown, formatRate, formatTenths, formatUp } from "../units.ts";

const words = logbookWords.supply;
const day = new Intl.DateTimeFormat(locale, { dateStyle: "medium" });

interface Tonight {
  elevation_m: number | undefined;
  temperature_C?: number | undefined;
  hours: number | undefined;
  power_pct: number | undefined;
}

/** Litres, hours on the tank and charge for a night of one heater, as it was last set where that and its dose are known. */
export function LogbookSupply(props: {
  heater: LogbookHeater;
  entries: readonly LogbookEntry[];
  fit: PublishedFit;
}) {
  const { heater, entries, fit } = props;
  const last = [...entries].reverse().find(({ site }) => site)?.site?.elevation_m;
  const [typed, setTyped] = useState<Partial<Tonight>>({});
  const [unit, chooseUnit] = useUnit("elevation", "logbook.elevation");
  const tonight: Tonight = {
    elevation_m: last ?? 500,
    hours: USUAL_NIGHT.hours,
    power_pct: USUAL_NIGHT.power_share * 100,
    ...typed,
  };
  const tune = [...entries].reverse().find(({ low, high }) => low && high);
  const plan = planFor(fit, heater, tonight, tune);
  const change = (part: Partial<Tonight>) => setTyped({ ...typed, ...part });
  const { temperature_C } = tonight;
  return (
    <section class="sheet" aria-labelledby="supply">
      <h2 id="supply">{words.title}</h2>
      <div class="columns">
        <NumberField
          label={words.elevation}
          field="tonight.elevation_m"
          quantity="elevation"
          unit={unit}
          onUnit={chooseUnit}
          value={tonight.elevation_m}
          onValue={(elevation_m) => change({ elevation_m })}
        />
        <TemperatureField
          form="tonight"
          air={{ temperature_C }}
          onAir={(air) => change({ temperature_C: air.temperature_C })}
          hint={t.air.temperatureShort}
        />
        <NumberField
          label={words.hours}
          field="tonight.hours"
          value={tonight.hours}
          onValue={(hours) => change({ hours })}
        />
        <NumberField
          label={words.share}
          field="tonight.power_pct"
          value={tonight.power_pct}
          onValue={(power_pct) => change({ power_pct })}
        />
      </div>
      {plan ? (
        <Needs plan={plan} hours={tonight.hours ?? 0} step_Hz={heater.step_Hz} />
      ) : (
        <p class="error">{words.cannot}</p>
      )}
    </section>
  );
}

function Needs(props: { plan: Plan; hours: number; step_Hz: number | undefined }) {
  const { plan, hours, step_Hz } = props;
  const { supply, logged, retuned } = plan;
  const { fuel_L, heat_kW, tank_h, battery_Ah, fuel_from } = supply;
  // With the decimals of the controller, or those they were set with.
  const rates = ({ low, high }: EndsSet) =>
    [formatRate(low.pump_Hz, step_Hz), formatRate(high.pump_Hz, step_Hz)] as const;
  return (
    <>
      <ul class="needs">
        <li>
          <strong>{words.fuel(formatUp(fuel_L, 0.1), formatTenths(hours))}</strong>,{" "}
          {words.heat(format(heat_kW, 1))}
        </li>
        {retuned && (
          <li>{words.retuned(...rates(retuned.ends), formatUp(retuned.supply.fuel_L, 0.1))}</li>
        )}
        <li>{tank_h === null ? words.noTank : words.tank(formatDown(tank_h, 1))}</li>
        <li>
          <strong>
            {words.battery(formatUp(battery_Ah.at_12_V, 0.1), formatUp(battery_Ah.at_24_V, 0.1))}
          </strong>
        </li>
        <li>{words.starts}</li>
      </ul>
      <p class="note">
        {logged
          ? words.logged(day.format(new Date(logged.at)), ...rates(logged.ends))
          : words[fuel_from]}{" "}
        {words.assumes(START_MINUTES)}
      </p>
    </>
  );
}

/** A night's needs, and how the heater is set for it. */
interface Plan {
  supply: Supply;
  /** As it was last set, where its dose tells what that burns. */
  logged?: { at: string; ends: EndsSet };
  /** Set anew for tonight's air, where that is another setting. */
  retuned?: { ends: EndsSet; supply: Supply } | undefined;
}

function planFor(
  fit: PublishedFit,
  heater: LogbookHeater,
  tonight: Tonight,
  tune: LogbookEntry | undefined,
): Plan | null {
  const { elevation_m, temperature_C, hours, power_pct } = tonight;
  if (elevation_m === undefined || hours === undefined || power_pct === undefined) return null;
  const { heat_kW, dose_uL, tank_L, step_Hz } = heater;
  const night = { hours, power_share: power_pct / 100 };
  const fans = {
    low_fan_rpm: tune?.low?.fan_rpm ?? heater.low_fan_rpm,
    high_fan_rpm: tune?.high?.fan_rpm ?? heater.high_fan_rpm,
  };
  const startAt = (site_m: number, air: GivenAir) =>
    startTune(fit, {
      heat_kW,
      dose_uL,
      step_Hz,
      ...fans,
      site: { elevation_m: site_m, elevation_sd_m: 0, elevation_source: "given" },
      air,
    });
  try {
    const now = startAt(elevation_m, temperature_C === undefined ? {} : { temperature_C });
    if (dose_uL === undefined || !tune?.low || !tune.high || !tune.site) {
      return { supply: nightAt(now, heater, night) };
    }
    const ends = { low: settingOf(tune.low), high: settingOf(tune.high) };
    const dosed = { heat_kW, dose_uL, tank_L };
    const then = startAt(tune.site.elevation_m, tune.air ?? {});
    const other = retunedFor(ends, then, now, step_Hz);
    const same = ENDS.every(
      (end) => other[end].pump_Hz === settablePump(ends[end].pump_Hz, step_Hz),
    );
    return {
      supply: nightAsSet(ends, dosed, night),
      logged: { at: tune.at, ends },
      retuned: same ? undefined : { ends: other, supply: nightAsSet(other, dosed, night) },
    };
  } catch {
    return null;
  }
}

const settingOf = ({ pump_Hz, fan_rpm }: EndSetting): EndSetting => ({ pump_Hz, fan_rpm });
