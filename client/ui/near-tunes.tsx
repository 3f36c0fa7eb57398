import type { RefObject } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import type { NearAnswer, NearTune } from "../../server/contract.ts";
import { api, Unreachable } from "../base/answers/api.ts";
import { monthName } from "../base/month-name.ts";
import type { Question } from "../base/question.ts";
import { chartAddress, mapAddress } from "../base/tune-address.ts";
import { heaterWords } from "../texts/heater.ts";
import { format, formatIn, formatOfRates, formatPercent, type Unit } from "../units.ts";
import { coText } from "./co-text.ts";
import { FiguresTable } from "./figures-table.tsx";
import { nearQuery } from "./near-query.ts";
import { nearScreen } from "./near-screen.ts";
import { useUnit } from "./number-field.tsx";
import { whatWentWrong } from "./went-wrong.tsx";

const words = heaterWords.near;
/** The atlas is asked once the question has rested for so long. */
const REST_ms = 400;

/** The tunes nearest in air; why they are not to be had. Not asked for before they are nearly in sight. */
function useNear(
  question: Question,
  where: RefObject<Element | null>,
): NearAnswer | { failed: unknown } | null {
  const [inSight, setInSight] = useState(false);
  const [seen, setSeen] = useState<NearAnswer | { failed: unknown } | null>(null);
  const query = JSON.stringify(nearQuery(question));
  useEffect(() => {
    if (where.current) nearScreen(where.current).then(() => setInSight(true));
  }, []);
  useEffect(() => {
    if (!inSight) return;
    let gone = false;
    const timer = setTimeout(() => {
      api.near(JSON.parse(query)).then(
        (answer) => !gone && setSeen(answer),
        (failed: unknown) => !gone && setSeen({ failed }),
      );
    }, REST_ms);
    return () => {
      gone = true;
      clearTimeout(timer);
    };
  }, [query, inSight]);
  return seen;
}

/** Tunes like this one: as their owners set them, and how they lie beside the average; each opens on the map and in the chart. */
export function NearTunes(props: {
  question: Question;
  unit: Unit;
  /** Where nothing above them names them. */
  titled?: boolean;
}) {
  const { question, unit, titled } = props;
  const here = useRef<HTMLDivElement>(null);
  const seen = useNear(question, here);
  return (
    <div ref={here} class="near" data-state={seen ? "seen" : "loading"}>
      {titled && (
        <h3 id="near-tunes" tabIndex={-1}>
          {words.title}
        </h3>
      )}
      {!seen && <p>{words.loading}</p>}
      {seen && "failed" in seen && (
        <p class="note">
          {seen.failed instanceof Unreachable ? words.offline : whatWentWrong(seen.failed)}
        </p>
      )}
      {seen && "tunes" in seen && <NearTable near={seen} unit={unit} />}
    </div>
  );
}

function NearTable({ near, unit }: { near: NearAnswer; unit: Unit }) {
  const [temperature] = useUnit("temperature", "atlas.temperature");
  if (near.tunes.length === 0) return <p class="note">{words.none(String(near.heat_kW))}</p>;
  const rate = formatOfRates(near.tunes.flatMap(({ low, high }) => [low.pump_Hz, high.pump_Hz]));
  return (
    <>
      <FiguresTable label={words.title} columns={words.columns}>
        {near.tunes.map((tune) => (
          <NearRow
            key={tune.id}
            tune={tune}
            rate={rate}
            elevation={unit}
            temperature={temperature}
          />
        ))}
      </FiguresTable>
      <p class="hint">{words.note}</p>
    </>
  );
}

function NearRow(props: {
  tune: NearTune;
  rate: (pump_Hz: number) => string;
  elevation: Unit;
  temperature: Unit;
}) {
  const { tune, rate, elevation, temperature } = props;
  const { low, high, temperature_C, against_average_pct: against } = tune;
  const set = words.pair(rate(low.pump_Hz), rate(high.pump_Hz));
  const place = formatIn(tune.elevation_m, elevation);
  return (
    <tr>
      <th scope="row">{set}</th>
      <td>{place}</td>
      <td>{temperature_C === null ? words.unknown : formatIn(temperature_C, temperature)}</td>
      <td>{words.pair(besideAverage(against.low), besideAverage(against.high))}</td>
      <td>{words.pair(format(low.fan_rpm), format(high.fan_rpm))}</td>
      <td>{words.pair(coText(low) ?? words.unknown, coText(high) ?? words.unknown)}</td>
      <td>{monthName(tune.month)}</td>
      <td>
        <span class="row">
          {tune.cell && (
            <a
              class="button-like"
              href={mapAddress(tune.cell)}
              aria-label={words.onMap(set, place)}
            >
              {words.map}
            </a>
          )}
          <a class="button-like" href={chartAddress(tune)} aria-label={words.inChart(set, place)}>
            {words.chart}
          </a>
        </span>
      </td>
    </tr>
  );
}

/** Richer or leaner than the average in its air, in words. */
function besideAverage(pct: number): string {
  const size = formatPercent(Math.abs(pct));
  if (size === formatPercent(0)) return words.even;
  return pct > 0 ? words.rich(size) : words.lean(size);
}
