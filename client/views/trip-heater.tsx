import { useState } from "preact/hooks";
import type { PublishedFit } from "../../model/fit/group.ts";
import { usualFans } from "../../model/heater.ts";
import { classesOf, HeatClassField } from "../parts/heat-class-field.tsx";
import { NumberField } from "../parts/number-field.tsx";
import { t } from "../texts/app.ts";
import { trip as words } from "../texts/trip.ts";
import type { Trip } from "../trip/trip.ts";
import { format } from "../units.ts";

/** The heater that goes along, the window, and how a night is heated. */
export function TripHeaterFields(props: {
  fit: PublishedFit;
  trip: Trip;
  onTrip: (trip: Trip) => void;
}) {
  const { fit, trip, onTrip } = props;
  const { heater, window, night } = trip;
  const usual = usualFans(heater.heat_kW);
  const ofHeater = (part: Partial<Trip["heater"]>) =>
    onTrip({ ...trip, heater: { ...heater, ...part } });
  return (
    <section class="sheet fields" aria-labelledby="trip-heater">
      <h2 id="trip-heater">{words.heater.title}</h2>
      <HeatClassField
        id="trip-heat"
        value={heater.heat_kW}
        classes={classesOf(fit, heater.heat_kW)}
        onValue={(heat_kW) => ofHeater({ heat_kW })}
      />
      <Within
        label={t.heater.dose}
        field="heater.dose_uL"
        range={[1, 500]}
        value={heater.dose_uL}
        optional
        onValue={(dose_uL) => ofHeater({ dose_uL })}
      />
      <Within
        label={t.heater.lowFan}
        field="low.fan_rpm"
        range={[100, 20_000]}
        value={heater.low_fan_rpm}
        optional
        placeholder={String(usual.low_fan_rpm)}
        onValue={(low_fan_rpm) => ofHeater({ low_fan_rpm })}
      />
      <Within
        label={t.heater.highFan}
        field="high.fan_rpm"
        range={[100, 20_000]}
        value={heater.high_fan_rpm}
        optional
        placeholder={String(usual.high_fan_rpm)}
        onValue={(high_fan_rpm) => ofHeater({ high_fan_rpm })}
      />
      <Within
        label={words.heater.rich}
        field="window.rich_pct"
        range={[0, 100]}
        value={window.rich_pct}
        onValue={(rich_pct = 0) => onTrip({ ...trip, window: { ...window, rich_pct } })}
      />
      <Within
        label={words.heater.lean}
        field="window.lean_pct"
        range={[0, 90]}
        value={window.lean_pct}
        onValue={(lean_pct = 0) => onTrip({ ...trip, window: { ...window, lean_pct } })}
      />
      <p class="hint wide">{words.heater.windowWhy}</p>
      <Within
        label={words.heater.hours}
        field="night.hours"
        range={[0.1, 24]}
        value={night.hours}
        onValue={(hours = 0.1) => onTrip({ ...trip, night: { ...night, hours } })}
      />
      <Within
        label={words.heater.share}
        field="night.power_share"
        hint={words.heater.shareHint}
        range={[0, 100]}
        value={Number((night.power_share * 100).toFixed(6))}
        onValue={(pct = 0) => onTrip({ ...trip, night: { ...night, power_share: pct / 100 } })}
      />
    </section>
  );
}

interface WithinProps {
  label: string;
  field: string;
  range: readonly [number, number];
  value: number | undefined;
  onValue: (value: number | undefined) => void;
  optional?: boolean;
  placeholder?: string;
  hint?: string;
}

/** A number that is taken only while it lies in its range. */
function Within({ range, optional, onValue, ...rest }: WithinProps) {
  const [wrong, setWrong] = useState(false);
  const [least, most] = range;
  return (
    <NumberField
      {...rest}
      onValue={(value) => {
        const good = value === undefined ? optional === true : value >= least && value <= most;
        setWrong(!good);
        if (good) onValue(value);
      }}
      error={
        wrong
          ? words.heater.outOfRange(format(least, least < 1 && least > 0 ? 1 : 0), format(most))
          : undefined
      }
    />
  );
}
