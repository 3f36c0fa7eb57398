import type { ComponentChildren } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import { ENDS, type End } from "../../model/end.ts";
import type { Cell, CellTune, CellTunesAnswer } from "../../server/contract.ts";
import { api } from "../base/answers/api.ts";
import { monthName } from "../base/month-name.ts";
import { mapWords } from "../texts/map.ts";
import { coInPpm } from "../ui/co-text.ts";
import { FiguresTable } from "../ui/figures-table.tsx";
import { goToHeading } from "../ui/go-to.ts";
import { useUnit } from "../ui/number-field.tsx";
import { whatWentWrong } from "../ui/went-wrong.tsx";
import { format, formatIn, formatOfRates, type Unit } from "../units.ts";

const words = mapWords.cell;

/** The tunes of the cell that is open; why they are not to be had. */
export type CellTunesSeen = CellTunesAnswer | { failed: ComponentChildren } | null;

export function useCellTunes(cell: string | undefined): CellTunesSeen {
  const [seen, setSeen] = useState<CellTunesSeen>(null);
  useEffect(() => {
    let gone = false;
    setSeen(null);
    if (cell)
      api.cellTunes(cell).then(
        (answer) => !gone && setSeen(answer),
        (error: unknown) => !gone && setSeen({ failed: whatWentWrong(error) }),
      );
    return () => {
      gone = true;
    };
  }, [cell]);
  return seen;
}

interface CellProps {
  cell: Cell;
  seen: CellTunesSeen;
  unit: Unit;
}

/** A cell in brief: how many tunes, how high, from when; and the way to them. */
export function CellFoot({ cell, seen, unit, onShow }: CellProps & { onShow: () => void }) {
  return (
    <>
      <p>
        <strong>{nameOf(cell)}</strong>
      </p>
      <p>{summary({ cell, seen, unit })}</p>
      <button type="button" onClick={onShow}>
        {words.show}
      </button>
    </>
  );
}

/** Each tune of a cell as its owner set it. */
export function CellTunes({ cell, seen, unit, onClose }: CellProps & { onClose: () => void }) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => goToHeading(heading.current), [cell.cell]);
  const [temperature] = useUnit("temperature", "map.temperature");
  const tunes = seen && "tunes" in seen ? seen : null;
  const rateOf = {
    low: formatOfRates(tunes?.tunes.map(({ low }) => low.pump_Hz) ?? []),
    high: formatOfRates(tunes?.tunes.map(({ high }) => high.pump_Hz) ?? []),
  };
  return (
    <section class="cell-tunes" aria-labelledby="cell-tunes">
      <h3 id="cell-tunes" ref={heading} tabIndex={-1}>
        {nameOf(cell)}
      </h3>
      <p role="status">{summary({ cell, seen, unit })}</p>
      {tunes && (
        <>
          <FiguresTable label={words.list} columns={words.columns}>
            {tunes.tunes.map((tune, i) => (
              <TuneRow
                key={i}
                tune={tune}
                rateOf={rateOf}
                elevation={unit}
                temperature={temperature}
              />
            ))}
          </FiguresTable>
          {tunes.tunes_total > tunes.tunes.length && (
            <p class="note">{words.newest(tunes.tunes.length, format(tunes.tunes_total))}</p>
          )}
          {isWide(cell.cell) && <p class="hint">{words.wide}</p>}
          <p class="hint">{words.meters}</p>
        </>
      )}
      <button type="button" onClick={onClose}>
        {mapWords.foot.close}
      </button>
    </section>
  );
}

function TuneRow(props: {
  tune: CellTune;
  rateOf: Record<End, (pump_Hz: number) => string>;
  elevation: Unit;
  temperature: Unit;
}) {
  const { tune, rateOf, elevation, temperature } = props;
  return (
    <tr>
      <th scope="row">{monthName(tune.month)}</th>
      <td>{formatIn(tune.elevation_m, elevation)}</td>
      <td>
        {tune.temperature_C === null ? words.unknown : formatIn(tune.temperature_C, temperature)}
      </td>
      <td>{tune.heat_kW} kW</td>
      {ENDS.map((end) => (
        <td key={end}>
          {words.set(rateOf[end](tune[end].pump_Hz), format(tune[end].fan_rpm))},{" "}
          {coInPpm(tune[end]) ?? words.coUnknown}
        </td>
      ))}
    </tr>
  );
}

/** How many, how high and from when. */
function summary({ cell, seen, unit }: CellProps): ComponentChildren {
  const count = words.count(cell.tunes, cell.contributors);
  if (!seen) return `${count}. ${words.loading}`;
  if ("failed" in seen)
    return (
      <>
        {count}. {seen.failed}
      </>
    );
  const [lowest, highest] = seen.elevation_range_m;
  const [oldest, newest] = seen.month_range;
  return [
    count,
    lowest === highest
      ? mapWords.atElevation(formatIn(lowest, unit))
      : words.between(formatIn(lowest, unit), formatIn(highest, unit)),
    `${oldest === newest ? monthName(newest) : words.since(monthName(oldest), monthName(newest))}.`,
  ].join(", ");
}

/** Whether a cell is one of those that whoever tuned in several places is shown in: an H3 address has its resolution as the second digit. */
const isWide = (cell: string) => cell.startsWith("82");

/** What a cell is called: where it is. */
export function nameOf({ lat, lon }: Cell): string {
  return words.title(format(lat, 1), format(lon, 1));
}
