import { useMemo } from "preact/hooks";
import { type Change, driftOf, type EndDrift } from "../../model/drift/drift.ts";
import { ENDS } from "../../model/end.ts";
import type { LogbookEntry } from "../app/records/entry.ts";
import { t } from "../texts/app.ts";
import { logbookWords } from "../texts/logbook.ts";
import { later } from "../ui/later.tsx";
import { format, formatPercent } from "../units.ts";
import { loggedOf } from "./logged.ts";

const words = logbookWords.drift;

// It brings the charts' library along.
const DriftPictures = later(() => import("./drift-picture.tsx").then((m) => m.DriftPictures));

/** What a heater's entries say about soot and clogging: nothing, unless the evidence bears it. */
export function LogbookDrift({ entries }: { entries: readonly LogbookEntry[] }) {
  const logged = useMemo(() => loggedOf(entries), [entries]);
  const drift = useMemo(() => driftOf(logged), [logged]);
  const lines = ENDS.map((end) => ({ end, said: linesOf(drift[end]) }));
  const some = lines.some(({ said }) => said.length > 0);
  const shown = ENDS.some((end) => drift[end].co?.shown || drift[end].mixture?.shown);
  return (
    <section class="sheet drift" aria-labelledby="drift" data-shown={shown}>
      <h2 id="drift">{words.title}</h2>
      {!some && <p>{words.none}</p>}
      {lines
        .filter(({ said }) => said.length > 0)
        .map(({ end, said }) => (
          <div key={end}>
            <h3>{t[end]}</h3>
            {said.map(({ text, loud }) => (
              <p key={text} class={loud ? "warning" : "note"}>
                {text}
              </p>
            ))}
          </div>
        ))}
      {shown && (
        <>
          <h3>{words.stepsTitle}</h3>
          <ol>
            {words.steps.map((step) => (
              <li key={step}>{step}</li>
            ))}
          </ol>
        </>
      )}
      {logged.length > 0 && <DriftPictures logged={logged} />}
      <details>
        <summary>{words.howTitle}</summary>
        <p>{words.how}</p>
      </details>
    </section>
  );
}

interface Line {
  text: string;
  loud: boolean;
}

function linesOf({ co, mixture, readings, risen_above_floor, without_meter }: EndDrift): Line[] {
  const quiet = (text: string): Line => ({ text, loud: false });
  const lines: Line[] = [];
  if (co?.shown) {
    const said = words.co(format(co.from_ppm), format(co.to_ppm), amountOf(co));
    lines.push({ text: `${said} ${rangeOf(co)}`, loud: true });
  } else if (co) {
    lines.push(quiet(`${words.coQuiet(co.points, amountOf(co))} ${rangeOf(co)}`));
  }
  if (risen_above_floor) {
    const { to_ppm, from_below_ppm } = risen_above_floor;
    lines.push(quiet(words.risen(format(to_ppm), format(from_below_ppm))));
  }
  if (readings.below_floor > 0) lines.push(quiet(words.floor(readings.below_floor)));
  if (readings.at_ceiling > 0) lines.push(quiet(words.ceiling(readings.at_ceiling)));
  if (without_meter > 0) lines.push(quiet(words.noMeter(without_meter)));
  if (mixture?.shown) {
    const pct = formatPercent(Math.abs(mixture.factor - 1) * 100);
    const said = mixture.factor > 1 ? words.richer : words.leaner;
    lines.push({ text: `${said(pct, amountOf(mixture))} ${pctRange(mixture)}`, loud: true });
  } else if (mixture) {
    lines.push(
      quiet(`${words.mixtureQuiet(mixture.points, amountOf(mixture))} ${pctRange(mixture)}`),
    );
  }
  return lines;
}

const amountOf = ({ over }: Change) => words.amount[over.axis](format(over.amount));

/** Beyond this an interval says nothing anyone could use. */
const USELESS = 1000;

function rangeOf({ factor, interval: { lower, upper } }: Change): string {
  if (lower === 0 || upper > USELESS) return words.changeOpen(format(factor, 1));
  return words.change(format(factor, 1), format(lower, 1), format(upper, 1));
}

function pctRange({ interval: { lower, upper } }: Change): string {
  if (lower === 0 || upper > USELESS) return "";
  return words.mixtureInterval(formatPercent((lower - 1) * 100), formatPercent((upper - 1) * 100));
}
