import { METER_KINDS } from "../../model/tune.ts";
import { heaterWords } from "../texts/heater.ts";
import { onsite as words } from "../texts/onsite.ts";
import { ChoiceField } from "../ui/choice-field.tsx";
import { NumberField } from "../ui/number-field.tsx";
import { asTyped, format } from "../units.ts";
import { Folded } from "./folded.tsx";
import {
  faultsOf,
  type Preparation,
  type PreparationField,
  RANGES,
  usualMeter,
  valueIn,
  withField,
} from "./plan.ts";

interface PreparationProps {
  preparation: Preparation;
  onPreparation: (preparation: Preparation) => void;
  /** Beginning was tried: from now on what is missing is said too. */
  tried: boolean;
}

/** A number of the preparation, with what is wrong with it. */
export function PreparationNumber(
  props: PreparationProps & { label: string; name: PreparationField; hint?: string },
) {
  const { preparation, onPreparation, tried, label, name, hint } = props;
  const fault = faultsOf(preparation)[name];
  const shown = fault === "missing" && !tried ? undefined : fault;
  const [least, most] = RANGES[name];
  return (
    <NumberField
      label={label}
      field={name}
      value={valueIn(preparation, name)}
      onValue={(value) => onPreparation(withField(preparation, name, value))}
      hint={hint}
      error={
        shown === "range"
          ? words.prepare.range(short(least), short(most))
          : shown && words.prepare[shown]
      }
    />
  );
}

/** As many decimals as the bound has. */
function short(bound: number): string {
  return format(bound, `${bound}`.split(".")[1]?.length ?? 0);
}

/** The meter: its kind fills in what such meters usually show. */
export function MeterFields(props: PreparationProps) {
  const { preparation, onPreparation } = props;
  return (
    <fieldset class="sheet columns">
      <legend>{words.prepare.meter}</legend>
      <ChoiceField
        label={words.prepare.kind}
        id="onsite-meter"
        name="meter.kind"
        value={preparation.meter.kind}
        options={METER_KINDS.map((kind) => [kind, heaterWords.meterKinds[kind]] as const)}
        onValue={(kind) => {
          const { distance_m } = preparation.meter;
          onPreparation({ ...preparation, meter: { ...usualMeter(kind), distance_m } });
        }}
      />
      <Folded title={words.prepare.figures} says={figuresNow(preparation)}>
        <p class="hint wide">{words.prepare.meterWhy}</p>
        <PreparationNumber
          {...props}
          label={words.prepare.distance}
          name="meter.distance_m"
          hint={words.prepare.distanceHint}
        />
        <PreparationNumber
          {...props}
          label={words.prepare.resolution}
          name="meter.resolution_ppm"
        />
        <PreparationNumber
          {...props}
          label={words.prepare.floor}
          name="meter.floor_ppm"
          hint={words.prepare.floorHint}
        />
        <PreparationNumber {...props} label={words.prepare.ceiling} name="meter.ceiling_ppm" />
        <PreparationNumber
          {...props}
          label={words.prepare.lag}
          name="meter.lag_s"
          hint={words.prepare.lagHint}
        />
      </Folded>
    </fieldset>
  );
}

/** What the meter is taken to show, how fast, and from where. */
function figuresNow({ meter }: Preparation): string {
  const { floor_ppm, ceiling_ppm, lag_s, distance_m } = meter;
  const said = (value: number | undefined) => (value === undefined ? "?" : asTyped(value, 2));
  return `${said(floor_ppm)}–${said(ceiling_ppm)} ppm, ${said(lag_s)} s, ${said(distance_m)} m`;
}
