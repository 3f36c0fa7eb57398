import type { PublishedFit } from "../../model/fit/group.ts";
import { usualFans } from "../../model/heater.ts";
import type { MyHeater } from "../app/heater/my-heater.ts";
import {
  type CardChoice,
  type CardUnits,
  ELEVATIONS_m,
  LEAST_CLIMB_m,
  LEAST_WARMTH_C,
  PAPERS,
  type Span,
  TEMPERATURES_C,
} from "../app/link/card-choice.ts";
import type { LogbookHeater } from "../app/records/entry.ts";
import { t } from "../texts/app.ts";
import { cardWords as words } from "../texts/card.ts";
import { heaterWords } from "../texts/heater.ts";
import { ChoiceField } from "../ui/choice-field.tsx";
import { classesOf, HeatClassField } from "../ui/heat-class-field.tsx";
import { NumberWithin } from "../ui/number-within.tsx";
import { format, formatIn, type Quantity, type Unit } from "../units.ts";

interface CardFieldsProps {
  fit: PublishedFit;
  choice: CardChoice;
  /** What is known of it is not asked again. */
  mine: MyHeater | null | undefined;
  onChoice: (choice: CardChoice) => void;
  units: CardUnits;
  onUnit: Record<keyof CardUnits, (name: string) => void>;
}

/** What the card is for: the heater, the air it will meet, the paper. */
export function CardFields({ fit, choice, mine, onChoice, units, onUnit }: CardFieldsProps) {
  const { heater } = choice;
  const known: Partial<LogbookHeater> = mine?.heater ?? {};
  const usual = usualFans(heater.heat_kW);
  const ofHeater = (part: Partial<CardChoice["heater"]>) =>
    onChoice({ ...choice, heater: { ...heater, ...part } });
  const low = heater.low_fan_rpm ?? usual.low_fan_rpm;
  const high = heater.high_fan_rpm ?? usual.high_fan_rpm;
  return (
    <div class="card-fields">
      {mine && <p class="note wide">{heaterWords.fromMine(mine.heater.name)}</p>}
      {known.heat_kW === undefined && (
        <HeatClassField
          id="card-heat"
          value={heater.heat_kW}
          classes={classesOf(fit, heater.heat_kW)}
          onValue={(heat_kW) => ofHeater({ heat_kW })}
        />
      )}
      {known.low_fan_rpm === undefined && (
        <Plain
          label={t.heater.lowFan}
          field="low.fan_rpm"
          range={[100, 20_000]}
          value={heater.low_fan_rpm}
          placeholder={String(usual.low_fan_rpm)}
          onValue={(low_fan_rpm) => ofHeater({ low_fan_rpm })}
        />
      )}
      {known.high_fan_rpm === undefined && (
        <Plain
          label={t.heater.highFan}
          field="high.fan_rpm"
          range={[100, 20_000]}
          value={heater.high_fan_rpm}
          placeholder={String(usual.high_fan_rpm)}
          onValue={(high_fan_rpm) => ofHeater({ high_fan_rpm })}
        />
      )}
      {known.dose_uL === undefined && (
        <Plain
          label={t.heater.dose}
          field="heater.dose_uL"
          range={[1, 500]}
          value={heater.dose_uL}
          onValue={(dose_uL) => ofHeater({ dose_uL })}
        />
      )}
      {low >= high && <p class="warning wide">{words.fields.fansSwapped}</p>}
      <RangeFields
        quantity="elevation"
        fields={["elevation.from_m", "elevation.to_m"]}
        labels={[words.fields.elevationFrom, words.fields.elevationTo]}
        span={choice.elevation_m}
        allowed={ELEVATIONS_m}
        apart={LEAST_CLIMB_m}
        unit={units.elevation}
        onUnit={onUnit.elevation}
        onSpan={(elevation_m) => onChoice({ ...choice, elevation_m })}
      />
      <RangeFields
        quantity="temperature"
        fields={["temperature.from_C", "temperature.to_C"]}
        labels={[words.fields.temperatureFrom, words.fields.temperatureTo]}
        span={choice.temperature_C}
        allowed={TEMPERATURES_C}
        apart={LEAST_WARMTH_C}
        unit={units.temperature}
        onUnit={onUnit.temperature}
        onSpan={(temperature_C) => onChoice({ ...choice, temperature_C })}
      />
      <ChoiceField
        label={words.fields.paper}
        name="paper"
        value={choice.paper}
        options={PAPERS.map((paper) => [paper, words.papers[paper]] as const)}
        hint={words.paperHint}
        onValue={(paper) => onChoice({ ...choice, paper })}
      />
    </div>
  );
}

function Plain(props: {
  label: string;
  field: string;
  range: Span;
  value: number | undefined;
  placeholder?: string;
  onValue: (value: number | undefined) => void;
}) {
  const [least, most] = props.range;
  return (
    <NumberWithin
      {...props}
      optional
      outOfRange={() => words.fields.outOfRange(format(least), format(most))}
    />
  );
}

interface RangeFieldsProps {
  quantity: Quantity;
  fields: readonly [from: string, to: string];
  labels: readonly [from: string, to: string];
  span: Span;
  allowed: Span;
  /** Least distance between the two. */
  apart: number;
  unit: Unit;
  onUnit: (name: string) => void;
  onSpan: (span: Span) => void;
}

/** The two ends of a range, each held below or above the other. */
function RangeFields(props: RangeFieldsProps) {
  const { quantity, fields, labels, span, allowed, apart, unit, onUnit, onSpan } = props;
  const [from, to] = span;
  const [least, most] = allowed;
  const shown = (si: number) => formatIn(si, unit);
  const say = (value: number | undefined, [lower, upper]: Span) => {
    if (value === undefined || value < least || value > most)
      return words.fields.outOfRange(shown(least), shown(most));
    return value < lower ? words.fields.atLeast(shown(lower)) : words.fields.atMost(shown(upper));
  };
  const ends = [
    { value: from, range: [least, to - apart] as const, take: (v: number) => [v, to] as const },
    { value: to, range: [from + apart, most] as const, take: (v: number) => [from, v] as const },
  ];
  return ends.map(({ value, range, take }, i) => (
    <NumberWithin
      key={fields[i]}
      label={labels[i] as string}
      field={fields[i] as string}
      quantity={quantity}
      unit={unit}
      onUnit={onUnit}
      value={value}
      range={range}
      outOfRange={(typed) => say(typed, range)}
      onValue={(typed) => onSpan(take(typed as number))}
    />
  ));
}
