import { useRef, useState } from "preact/hooks";
import { type GivenAir, standardTemperature } from "../../model/air.ts";
import { ENDS } from "../../model/end.ts";
import type { PublishedFit } from "../../model/fit/group.ts";
import { usualFans } from "../../model/heater.ts";
import { startForHeater } from "../../model/own-start.ts";
import type { StartTune } from "../../model/start.ts";
import type { MyHeater } from "../app/heater/my-heater.ts";
import { type Question, withoutPressure } from "../base/question.ts";
import { randomText } from "../base/random.ts";
import { recall, remember } from "../base/remember.ts";
import { t } from "../texts/app.ts";
import { heaterWords } from "../texts/heater.ts";
import { onsite as words } from "../texts/onsite.ts";
import { PressureFields } from "../ui/air-fields.tsx";
import { goToFirstMarked } from "../ui/first-marked.ts";
import { NumberField, useUnit } from "../ui/number-field.tsx";
import { SiteQuestion } from "../ui/site-question.tsx";
import { TemperatureField } from "../ui/temperature-field.tsx";
import { format, formatIn, formatPercent, formatRate, formatTenths, type Unit } from "../units.ts";
import { airNow, keepAirNow } from "./air-now.ts";
import { Folded } from "./folded.tsx";
import { MeterFields, PreparationNumber } from "./meter.tsx";
import {
  faultsOf,
  firstPreparation,
  type Preparation,
  planOf,
  preparationFor,
  preparationKept,
} from "./plan.ts";
import { newSession, type Session } from "./session.ts";

const KEPT_AS = "onsite.preparation";

/** What the sweep has to know: the Atlas's question as it stands, what is set now, and the meter. */
export function Prepare(props: {
  fit: PublishedFit;
  question: Question;
  /** What is known of it is not asked again. */
  mine: MyHeater | null | undefined;
  onQuestion: (question: Question) => void;
  onBegin: (session: Session) => void;
}) {
  const { fit, question, mine, onQuestion, onBegin } = props;
  const [typed, setPreparation] = useState<Preparation>(() => ({
    ...firstPreparation(),
    ...recall<Preparation>(KEPT_AS),
  }));
  const [tried, setTried] = useState(false);
  const [unit, chooseUnit] = useUnit("elevation", "atlas.elevation");
  const [temperature] = useUnit("temperature", "atlas.temperature");
  const change = (next: Preparation) => {
    const kept = preparationKept(next, typed, mine);
    setPreparation(kept);
    remember(KEPT_AS, kept);
  };
  const preparation = preparationFor(typed, mine);
  const [air, setAir] = useState(() => airNow(Date.now()));
  const changeAir = (next: GivenAir) => {
    setAir(next);
    keepAirNow(next, Date.now());
  };
  const ask = (next: Question) => {
    // A pressure was read at the place that was left.
    if (next.place !== question.place || next.lat !== question.lat || next.lon !== question.lon)
      changeAir(withoutPressure(air));
    onQuestion(next);
  };
  // The heater draws in the air of now; the night's is the Atlas's, and stays so.
  const faults = faultsOf(preparation);
  const step_Hz = faults.step_Hz ? undefined : preparation.step_Hz;
  const here = { ...question, air, step_Hz };
  const tune = startFor(fit, here, mine);
  const form = useRef<HTMLFormElement>(null);
  const begin = () => {
    setTried(true);
    // What was typed and is no number has left the last good one standing: the field is marked, and nothing begins.
    const marked = form.current?.querySelector("[aria-invalid]");
    if (!tune || marked || Object.keys(faults).length > 0) return goToFirstMarked(form.current);
    onBegin(
      newSession(
        planOf(here, tune, preparation, question.air.temperature_C),
        randomText(),
        Date.now(),
      ),
    );
    scrollTo(0, 0);
  };
  const field = { preparation, onPreparation: change, tried };
  const usual = usualFans(question.heat_kW);
  const askedFans = ENDS.filter((end) => mine?.heater[`${end}_fan_rpm`] === undefined);
  const asksStep = mine?.heater.step_Hz === undefined;
  const asksSupply = mine?.heater.supply_V === undefined;
  return (
    <form
      ref={form}
      noValidate
      onSubmit={(e) => {
        e.preventDefault();
        begin();
      }}
    >
      <section class="sheet" aria-labelledby="onsite">
        <h2 id="onsite" tabIndex={-1}>
          {words.title}
        </h2>
        <p>{words.intro}</p>
        <p class="note">
          <strong>{t.safety.brief}</strong>
        </p>
      </section>
      <Folded title={words.prepare.basis} says={siteNow(question, unit, temperature)}>
        <SiteQuestion
          fit={fit}
          question={question}
          unit={unit}
          onUnit={chooseUnit}
          onQuestion={ask}
          nightHint={words.prepare.nightWhy}
          isMine={Boolean(mine)}
        />
      </Folded>
      <fieldset class="sheet columns">
        <legend>{words.prepare.air}</legend>
        <TemperatureField
          form="onsite"
          prefix="now"
          label={words.prepare.temperatureNow}
          bounded
          air={air}
          onAir={changeAir}
          hint={words.prepare.airNow}
        />
        <Folded title={words.prepare.finerAir} says={finerNow(air)}>
          <PressureFields
            form="onsite"
            prefix="now"
            air={air}
            elevation_m={question.site.elevation_m}
            onAir={changeAir}
          />
        </Folded>
      </fieldset>
      <fieldset class="sheet columns">
        <legend>{words.prepare.before}</legend>
        <p class="hint wide">{words.prepare.beforeWhy}</p>
        <div class="rates-now wide">
          <PreparationNumber {...field} label={words.prepare.lowBefore} name="low_before_Hz" />
          <PreparationNumber {...field} label={words.prepare.highBefore} name="high_before_Hz" />
        </div>
        {mine && <p class="note wide">{heaterWords.fromMine(mine.heater.name)}</p>}
        {(askedFans.length > 0 || asksStep || asksSupply) && (
          <Folded title={words.prepare.fansAndSteps} says={fansNow(question, preparation)}>
            {askedFans.map((end) => (
              <NumberField
                key={end}
                label={end === "low" ? t.heater.lowFan : t.heater.highFan}
                field={`${end}.fan_rpm`}
                value={question[`${end}_fan_rpm`]}
                placeholder={String(usual[`${end}_fan_rpm`])}
                onValue={(rpm) => onQuestion({ ...question, [`${end}_fan_rpm`]: rpm })}
              />
            ))}
            {askedFans.length > 0 && <p class="hint wide">{words.prepare.fanWhy}</p>}
            {asksStep && <PreparationNumber {...field} label={words.prepare.step} name="step_Hz" />}
            {asksSupply && (
              <PreparationNumber {...field} label={words.prepare.supply} name="supply_V" />
            )}
          </Folded>
        )}
      </fieldset>
      <MeterFields {...field} />
      {tune ? (
        <p>
          {words.prepare.start(
            formatRate(tune.low.pump_Hz, step_Hz),
            formatRate(tune.high.pump_Hz, step_Hz),
          )}{" "}
          {words.prepare.fansAt(format(tune.low.fan_rpm), format(tune.high.fan_rpm))}
        </p>
      ) : (
        <p class="warning" role="alert" tabIndex={-1}>
          {words.prepare.cannot}
        </p>
      )}
      {tried && Object.keys(faults).length > 0 && (
        <p class="error" role="alert">
          {words.prepare.fix}
        </p>
      )}
      <div class="row">
        <button type="submit" class="main">
          {words.prepare.begin}
        </button>
      </div>
    </form>
  );
}

/** Where, how cold the night, and which size, as they stand. */
function siteNow({ place, site, air, heat_kW }: Question, elevation: Unit, temperature: Unit) {
  const { temperature_C } = air;
  const night = formatIn(temperature_C ?? standardTemperature(site.elevation_m), temperature);
  return [
    place,
    formatIn(site.elevation_m, elevation),
    `${night} ${temperature_C === undefined ? t.site.assumed : t.site.tonight}`,
    t.heater.heatOption(heat_kW),
  ]
    .filter(Boolean)
    .join(", ");
}

function finerNow({ pressure_hPa, qnh_hPa, humidity_pct }: GivenAir): string {
  const pressure = pressure_hPa ?? qnh_hPa;
  const said = [
    pressure !== undefined && `${format(pressure)} hPa`,
    humidity_pct !== undefined && `${formatPercent(humidity_pct)} %`,
  ].filter(Boolean);
  return said.join(", ") || t.site.assumed;
}

function fansNow(question: Question, { step_Hz, supply_V }: Preparation): string {
  const { heat_kW, low_fan_rpm, high_fan_rpm } = question;
  const usual = usualFans(heat_kW);
  const fans = [low_fan_rpm ?? usual.low_fan_rpm, high_fan_rpm ?? usual.high_fan_rpm];
  const [low, high] = fans.map((rpm) => format(rpm)) as [string, string];
  const isUsual = low_fan_rpm === undefined && high_fan_rpm === undefined;
  return [
    isUsual ? heaterWords.line.usual(low, high) : heaterWords.line.fans(low, high),
    step_Hz !== undefined && `${formatRate(step_Hz)} Hz`,
    supply_V !== undefined && `${formatTenths(supply_V)} V`,
  ]
    .filter(Boolean)
    .join(", ");
}

/** What the sweep looks for: centred on my heater where it has tunes of its own; null where the figures cannot stand together. */
function startFor(
  fit: PublishedFit,
  question: Question,
  mine: MyHeater | null | undefined,
): StartTune | null {
  try {
    return startForHeater(fit, question, mine?.own_tunes);
  } catch {
    return null;
  }
}
