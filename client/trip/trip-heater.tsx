import type { PublishedFit } from "../../model/fit/group.ts";
import { usualFans } from "../../model/heater.ts";
import { withoutDust } from "../../model/rounding.ts";
import { SUPPLIES_V } from "../../model/trip/nights.ts";
import type { MyHeater } from "../app/heater/my-heater.ts";
import type { LogbookHeater } from "../app/records/entry.ts";
import { t } from "../texts/app.ts";
import { heaterWords } from "../texts/heater.ts";
import { trip as words } from "../texts/trip.ts";
import { ChoiceField } from "../ui/choice-field.tsx";
import { classesOf, HeatClassField } from "../ui/heat-class-field.tsx";
import { NumberWithin } from "../ui/number-within.tsx";
import { format } from "../units.ts";
import { BATTERY_Ah, TANK_L, type Trip } from "./trip.ts";

/** The heater that goes along, the window, and how a night is heated. */
export function TripHeaterFields(props: {
  fit: PublishedFit;
  trip: Trip;
  /** What is known of it is not asked again. */
  mine: MyHeater | null | undefined;
  onTrip: (trip: Trip) => void;
}) {
  const { fit, trip, mine, onTrip } = props;
  const known: Partial<LogbookHeater> = mine?.heater ?? {};
  const { heater, window, night } = trip;
  const usual = usualFans(heater.heat_kW);
  const ofHeater = (part: Partial<Trip["heater"]>) =>
    onTrip({ ...trip, heater: { ...heater, ...part } });
  return (
    <details class="sheet trip-heater">
      <summary>
        <h2>{words.heater.title}</h2>
      </summary>
      <div class="fields">
        {mine && <p class="note wide">{heaterWords.fromMine(mine.heater.name)}</p>}
        {known.heat_kW === undefined && (
          <HeatClassField
            id="trip-heat"
            value={heater.heat_kW}
            classes={classesOf(fit, heater.heat_kW)}
            onValue={(heat_kW) => ofHeater({ heat_kW })}
          />
        )}
        {known.dose_uL === undefined && (
          <NumberWithin
            label={t.heater.dose}
            field="heater.dose_uL"
            {...within([1, 500])}
            value={heater.dose_uL}
            optional
            onValue={(dose_uL) => ofHeater({ dose_uL })}
          />
        )}
        {known.low_fan_rpm === undefined && (
          <NumberWithin
            label={t.heater.lowFan}
            field="low.fan_rpm"
            {...within([100, 20_000])}
            value={heater.low_fan_rpm}
            optional
            placeholder={String(usual.low_fan_rpm)}
            onValue={(low_fan_rpm) => ofHeater({ low_fan_rpm })}
          />
        )}
        {known.high_fan_rpm === undefined && (
          <NumberWithin
            label={t.heater.highFan}
            field="high.fan_rpm"
            {...within([100, 20_000])}
            value={heater.high_fan_rpm}
            optional
            placeholder={String(usual.high_fan_rpm)}
            onValue={(high_fan_rpm) => ofHeater({ high_fan_rpm })}
          />
        )}
        {known.supply_V === undefined && (
          <ChoiceField
            label={words.heater.supply}
            name="heater.supply_V"
            value={heater.supply_V ?? 12}
            options={SUPPLIES_V.map((volts) => [volts, `${format(volts)} V`] as const)}
            onValue={(supply_V) => ofHeater({ supply_V })}
          />
        )}
        {known.tank_L === undefined && (
          <NumberWithin
            label={words.heater.tank}
            field="heater.tank_L"
            {...within(TANK_L)}
            value={heater.tank_L}
            optional
            onValue={(tank_L) => ofHeater({ tank_L })}
          />
        )}
        <NumberWithin
          label={words.heater.battery}
          field="heater.battery_Ah"
          {...within(BATTERY_Ah)}
          value={heater.battery_Ah}
          optional
          onValue={(battery_Ah) => ofHeater({ battery_Ah })}
        />
        <NumberWithin
          label={words.heater.rich}
          field="window.rich_pct"
          {...within([0, 100])}
          value={window.rich_pct}
          onValue={(rich_pct = 0) => onTrip({ ...trip, window: { ...window, rich_pct } })}
        />
        <NumberWithin
          label={words.heater.lean}
          field="window.lean_pct"
          {...within([0, 90])}
          value={window.lean_pct}
          onValue={(lean_pct = 0) => onTrip({ ...trip, window: { ...window, lean_pct } })}
        />
        <p class="hint wide">{words.heater.windowWhy}</p>
        <NumberWithin
          label={words.heater.hours}
          field="night.hours"
          {...within([0.1, 24])}
          value={night.hours}
          onValue={(hours = 0.1) => onTrip({ ...trip, night: { ...night, hours } })}
        />
        <NumberWithin
          label={words.heater.share}
          field="night.power_share"
          hint={words.heater.shareHint}
          {...within([0, 100])}
          value={withoutDust(night.power_share * 100)}
          onValue={(pct = 0) => onTrip({ ...trip, night: { ...night, power_share: pct / 100 } })}
        />
      </div>
    </details>
  );
}

/** What is taken, and what is said of the rest. */
function within(range: readonly [least: number, most: number]) {
  const [least, most] = range.map((bound) => format(bound, Number.isInteger(bound) ? 0 : 1));
  return { range, outOfRange: () => words.heater.outOfRange(least ?? "", most ?? "") };
}
