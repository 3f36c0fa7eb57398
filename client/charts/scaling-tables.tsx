import type { ScalingPoint } from "../../server/contract.ts";
import { InEnglish } from "../parts/in-english.tsx";
import { scalingWords } from "../texts/scaling.ts";
import { format, formatIn, type Unit } from "../units.ts";

/** Rows drawn into the table at once; a crowd's thousands would stall a phone. */
const ROWS_AT_ONCE = 200;

/** What is rejected or held, and why. */
export function AsideTable({ points, unit }: { points: ScalingPoint[]; unit: Unit }) {
  const aside = points.filter(({ status }) => status !== "kept");
  return (
    <section class="sheet" aria-labelledby="aside">
      <h2 id="aside">{scalingWords.aside}</h2>
      {aside.length === 0 ? (
        <p>{scalingWords.asideNone}</p>
      ) : (
        <Table
          label={scalingWords.aside}
          columns={[scalingWords.reason, ...scalingWords.columns]}
          points={aside}
          unit={unit}
          withReason
        />
      )}
    </section>
  );
}

/** Every point of the chart in figures. */
export function PointsTable({ points, unit }: { points: ScalingPoint[]; unit: Unit }) {
  return (
    <section class="sheet" aria-labelledby="points">
      <h2 id="points">{scalingWords.table}</h2>
      <details>
        <summary>{scalingWords.showRows(Math.min(points.length, ROWS_AT_ONCE))}</summary>
        <Table
          label={scalingWords.table}
          columns={scalingWords.columns}
          points={points.slice(0, ROWS_AT_ONCE)}
          unit={unit}
        />
        {points.length > ROWS_AT_ONCE && <p class="note">{scalingWords.restInCsv(ROWS_AT_ONCE)}</p>}
      </details>
    </section>
  );
}

function Table(props: {
  label: string;
  columns: readonly string[];
  points: ScalingPoint[];
  unit: Unit;
  withReason?: boolean;
}) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a scrolling region must be reachable by keyboard
    <section class="scrolls" tabIndex={0} aria-label={scalingWords.tableOf(props.label)}>
      <table>
        <thead>
          <tr>
            {props.columns.map((column) => (
              <th key={column} scope="col">
                {column}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {props.points.map((point, i) => (
            <tr key={`${point.contributor} ${i}`} data-status={point.status}>
              {props.withReason && (
                <td class="reason">
                  <InEnglish>{point.reason}</InEnglish>
                </td>
              )}
              <td>{formatIn(point.elevation_m, props.unit)}</td>
              <td>{format(point.density_kg_m3, 3)}</td>
              <td>{format(point.pump_Hz, 2)}</td>
              <td>{format(point.fan_rpm)}</td>
              <td>{format(point.pump_Hz_per_krpm, 3)}</td>
              <td>{scalingWords.status[point.status]}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
