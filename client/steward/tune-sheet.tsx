import type { ComponentChildren, RefObject } from "preact";
import { ENDS, type End } from "../../model/end.ts";
import { STEWARD_VERDICTS, type StewardVerdict } from "../../model/steward-reasons.ts";
import type { RecordedDecision, StewardsTune } from "../../server/contract.ts";
import { monthName } from "../base/month-name.ts";
import { mapAddress } from "../base/tune-address.ts";
import { t } from "../texts/app.ts";
import { stewardWords as words } from "../texts/steward.ts";
import { coText } from "../ui/co-text.ts";
import { FiguresTable } from "../ui/figures-table.tsx";
import { reasonSentence } from "../ui/reason-sentence.tsx";
import { format, formatOfRates, formatTenths, ofUnit } from "../units.ts";
import { besideAverage, dayOrMonthOf } from "./shift-words.ts";
import { KEYS } from "./shortcuts.ts";
import { SimilarTunes } from "./similar-tunes.tsx";
import { lineOf } from "./tune-list.tsx";
import type { Desk } from "./use-desk.ts";

const BUTTONS: Record<StewardVerdict, { label: string; key: string }> = {
  accepted: { label: words.accept, key: KEYS.accept[0] },
  held: { label: words.hold, key: KEYS.hold[0] },
  removed: { label: words.remove, key: KEYS.remove[0] },
};

/** The tune before one: why it is held, what was set, how that lies beside others, and what to do with it. */
export function TuneSheet(props: {
  desk: Desk;
  tune: StewardsTune;
  heading: RefObject<HTMLHeadingElement | null>;
  /** Where a reason is chosen, below the buttons that ask for it. */
  children: ComponentChildren;
}) {
  const { desk, tune, heading } = props;
  const many = desk.selected.size > 0;
  return (
    <section class="sheet" aria-labelledby="steward-tune" data-tune={tune.id}>
      <div class="row steward-head">
        <h3 id="steward-tune" ref={heading} tabIndex={-1}>
          {lineOf(tune)}
        </h3>
        <p>{words.place(desk.at + 1, desk.count)}</p>
      </div>
      <h4>{words.why}</h4>
      {tune.reasons.length === 0 ? (
        <p>{words.noReasons}</p>
      ) : (
        <ul>
          {tune.reasons.map((reason) => (
            <li key={reason.code + reason.field}>{reasonSentence(reason)}</li>
          ))}
        </ul>
      )}
      <div class="row">
        {STEWARD_VERDICTS.map((verdict) => (
          <button
            key={verdict}
            type="button"
            class={verdict === "removed" ? "danger" : undefined}
            aria-pressed={desk.choosing === verdict}
            aria-keyshortcuts={BUTTONS[verdict].key}
            onClick={() => desk.choose(verdict)}
          >
            {BUTTONS[verdict].label}
          </button>
        ))}
        <button type="button" disabled={!desk.canUndo} onClick={() => void desk.undo()}>
          {words.undo}
        </button>
        <button type="button" disabled={desk.at === 0} onClick={() => desk.goTo(desk.at - 1)}>
          {words.previous}
        </button>
        <button
          type="button"
          disabled={desk.at + 1 >= desk.tunes.length}
          onClick={() => desk.goTo(desk.at + 1)}
        >
          {words.next}
        </button>
      </div>
      {props.children}
      {many && <p>{words.selected(desk.selected.size)}</p>}
      <p class="hint">{words.holdHint}</p>
      <Figures tune={tune} />
      <Facts tune={tune} />
      <div class="row">
        <button type="button" onClick={() => desk.show({ of: "owner", name: tune.contributor })}>
          {words.sameOwner}
        </button>
        <button type="button" onClick={() => void desk.without()}>
          {many ? words.withoutSelection : words.without}
        </button>
      </div>
      <SimilarTunes key={tune.id} tune={tune} />
      <details>
        <summary>{words.history}</summary>
        <ul>
          {tune.decisions.map((decision) => (
            <li key={decision.number}>{saidOf(decision)}</li>
          ))}
        </ul>
      </details>
    </section>
  );
}

/** A decision in a line, with its reasons. */
export function saidOf({ number, decided_on, by, verdict, reasons }: RecordedDecision) {
  const who = words.by[by as keyof typeof words.by] ?? by;
  return (
    <>
      {words.entry(number, dayOrMonthOf(decided_on), who, words.verdicts[verdict])}.{" "}
      {reasons.map((reason) => (
        <span key={reason.code + reason.field}>{reasonSentence(reason)} </span>
      ))}
    </>
  );
}

function Figures({ tune }: { tune: StewardsTune }) {
  const { columns } = words;
  const rate = formatOfRates(ENDS.map((end) => tune.tune[end].pump_Hz));
  return (
    <FiguresTable
      label={words.figures}
      columns={[columns.power, columns.against, columns.pump, columns.fan, columns.co]}
    >
      {ENDS.map((end) => (
        <tr key={end}>
          <th scope="row">{t[end]}</th>
          <td>{against(tune, end)}</td>
          <td>{rate(tune.tune[end].pump_Hz)}</td>
          <td>{format(tune.tune[end].fan_rpm)}</td>
          <td>{coText(tune.tune[end]) ?? words.unknown}</td>
        </tr>
      ))}
    </FiguresTable>
  );
}

function against({ compared }: StewardsTune, end: End): ComponentChildren {
  const found = compared.find((one) => one.end === end);
  if (!found) return words.unknown;
  return (
    <>
      <strong>{besideAverage(found.mixture_shift_pct)}</strong>
      <br />
      {found.inside_band ? words.inside : words.outside}
    </>
  );
}

function Facts({ tune }: { tune: StewardsTune }) {
  const { facts } = words;
  const { heater, site, air = {}, tuned_on, found } = tune.tune;
  const given = (value: number | undefined, unit: string) =>
    value === undefined ? words.unknown : ofUnit(formatTenths(value), unit);
  const rows: [string, ComponentChildren][] = [
    [facts.elevation, given(site.elevation_m, "m")],
    [facts.temperature, given(air.temperature_C, "°C")],
    [facts.pressure, given(air.pressure_hPa ?? air.qnh_hPa, air.qnh_hPa ? "hPa (QNH)" : "hPa")],
    [facts.density, `${format(tune.air.density_kg_m3, 3)} kg/m³`],
    [facts.dose, given(heater.dose_uL, "µL")],
    [facts.tuned, tuned_on ? monthName(tuned_on) : words.unknown],
    [facts.came, monthName(tune.submitted_on)],
    [facts.map, tune.cell ? <a href={mapAddress(tune.cell)}>{words.onMap}</a> : words.noPlace],
    [facts.found, found ? words.found[found] : words.unknown],
    [facts.owner, tune.waits ? `${tune.contributor}, ${words.waits}` : tune.contributor],
    [facts.verdict, words.verdicts[tune.verdict]],
  ];
  return (
    <dl class="steward-facts">
      {rows.map(([name, value]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}
