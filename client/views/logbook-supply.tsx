import { useState } from "preact/hooks";
import type { PublishedFit } from "../../model/fit/group.ts";
import { startTune } from "../../model/start.ts";
import { START_MINUTES, type Supply } from "../../model/supply.ts";
import { nightAt, USUAL_NIGHT } from "../../model/trip/nights.ts";
import type { LogbookEntry, LogbookHeater } from "../logbook/entry.ts";
import { TemperatureField } from "../parts/air-fields.tsx";
import { NumberField, useUnit } from "../parts/number-field.tsx";
import { t } from "../texts/app.ts";
import { logbookWords } from "../texts/logbook.ts";
import { format, formatDown, formatTenths, formatUp } from "../units.ts";

const words = logbookWords.supply;

interface Tonight {
  elevation_m: number | undefined;
  temperature_C?: number | undefined;
  hours: number | undefined;
  power_pct: number | undefined;
}

/** Litres, hours on the tank and charge for a night of one heater. */
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
  const supply = supplyFor(fit, heater, tonight);
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
      {supply ? (
        <Needs supply={supply} hours={tonight.hours ?? 0} />
      ) : (
        <p class="error">{words.cannot}</p>
      )}
    </section>
  );
}

function Needs({ supply, hours }: { supply: Supply; hours: number }) {
  const { fuel_L, heat_kW, tank_h, battery_Ah, fuel_from } = supply;
  return (
    <>
      <ul class="needs">
        <li>
          <strong>{words.fuel(formatUp(fuel_L, 0.1), formatTenths(hours))}</strong>,{" "}
          {words.heat(format(heat_kW, 1))}
        </li>
        <li>{tank_h === null ? words.noTank : words.tank(formatDown(tank_h, 1))}</li>
        <li>
          <strong>
            {words.battery(formatUp(battery_Ah.at_12_V, 0.1), formatUp(battery_Ah.at_24_V, 0.1))}
          </strong>
        </li>
        <li>{words.starts}</li>
      </ul>
      <p class="note">
        {words[fuel_from]} {words.assumes(START_MINUTES)}
      </p>
    </>
  );
}

function supplyFor(fit: PublishedFit, heater: LogbookHeater, tonight: Tonight): Supply | null {
  const { elevation_m, temperature_C, hours, power_pct } = tonight;
  if (elevation_m === undefined || hours === undefined || power_pct === undefined) return null;
  const { heat_kW, dose_uL, low_fan_rpm, high_fan_rpm } = heater;
  try {
    const start = startTune(fit, {
      heat_kW,
      dose_uL,
      low_fan_rpm,
      high_fan_rpm,
      site: { elevation_m, elevation_sd_m: 0, elevation_source: "given" },
      air: temperature_C === undefined ? {} : { temperature_C },
    });
    return nightAt(start, heater, { hours, power_share: power_pct / 100 });
  } catch {
    return null;
  }
}
