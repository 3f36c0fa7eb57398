import type { GroupFit } from "../../../model/fit/group.ts";
import { residual_pct } from "../../../model/residual.ts";
import type { ScalingAnswer, ScalingCurvePoint, ScalingPoint } from "../../../server/contract.ts";
import { scalingWords } from "../../texts/scaling.ts";
import { CsvButton } from "../../ui/csv-button.tsx";
import { FiguresTable } from "../../ui/figures-table.tsx";
import { format, formatIn, formatOfRates, type Unit } from "../../units.ts";
import { asideSentence } from "./aside-sentence.tsx";
import { curveCsv, pointsCsv } from "./scaling-csv.ts";

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

/** Every point of the charts in figures, and as a file. */
export function PointsTable(props: { scaling: ScalingAnswer; group: GroupFit; unit: Unit }) {
  const { scaling, group, unit } = props;
  const { points } = scaling;
  return (
    <section class="sheet" aria-labelledby="points">
      <h2 id="points">{scalingWords.table}</h2>
      <details>
        <summary>{scalingWords.showRows(Math.min(points.length, ROWS_AT_ONCE))}</summary>
        <Table
          label={scalingWords.table}
          columns={[...scalingWords.columns, scalingWords.residuals.axis]}
          points={points.slice(0, ROWS_AT_ONCE)}
          unit={unit}
          group={group}
        />
        {points.length > ROWS_AT_ONCE && <p class="note">{scalingWords.restInCsv(ROWS_AT_ONCE)}</p>}
      </details>
      <CsvButton
        label={scalingWords.csv.points}
        file={`scaling-${scaling.heat_kW}kW-${scaling.end}-tunes.csv`}
        csv={() => pointsCsv(scaling, group)}
      />
    </section>
  );
}

/** The curve and its bands in figures, and as a file. */
export function CurveTable({ scaling, unit }: { scaling: ScalingAnswer; unit: Unit }) {
  const { curve } = scaling;
  return (
    <section class="sheet" aria-labelledby="curve-table">
      <h2 id="curve-table">{scalingWords.curveTable}</h2>
      <details>
        <summary>{scalingWords.showRows(curve.length)}</summary>
        <CurveFigures curve={curve} unit={unit} />
      </details>
      <CsvButton
        label={scalingWords.csv.curve}
        file={`scaling-${scaling.heat_kW}kW-${scaling.end}-curve.csv`}
        csv={() => curveCsv(scaling)}
      />
    </section>
  );
}

function CurveFigures({ curve, unit }: { curve: ScalingCurvePoint[]; unit: Unit }) {
  const label = scalingWords.tableOf(scalingWords.curveTable);
  const range = ({ lower, upper }: { lower: number; upper: number }) =>
    `${format(lower, 3)}–${format(upper, 3)}`;
  return (
    <FiguresTable label={label} columns={scalingWords.curveColumns}>
      {curve.map((point) => (
        <tr key={point.density_kg_m3}>
          <th scope="row">{format(point.density_kg_m3, 3)}</th>
          <td>{formatIn(point.elevation_m, unit)}</td>
          <td>{format(point.pump_Hz_per_krpm, 3)}</td>
          <td>{range(point.mean_band)}</td>
          {point.new_heater_bands.map((band) => (
            <td key={band.level}>{range(band)}</td>
          ))}
        </tr>
      ))}
    </FiguresTable>
  );
}

function Table(props: {
  label: string;
  columns: readonly string[];
  points: ScalingPoint[];
  unit: Unit;
  withReason?: boolean;
  /** With it, each row's residual against its fit. */
  group?: GroupFit;
}) {
  const rate = formatOfRates(props.points.map(({ pump_Hz }) => pump_Hz));
  return (
    <FiguresTable label={scalingWords.tableOf(props.label)} columns={props.columns}>
      {props.points.map((point, i) => (
        <tr key={`${point.contributor} ${i}`} data-status={point.status}>
          {props.withReason && <td class="reason">{asideSentence(point)}</td>}
          <td>{formatIn(point.elevation_m, props.unit)}</td>
          <td>{format(point.density_kg_m3, 3)}</td>
          <td>{rate(point.pump_Hz)}</td>
          <td>{format(point.fan_rpm)}</td>
          <td>{format(point.pump_Hz_per_krpm, 3)}</td>
          <td>{scalingWords.status[point.status]}</td>
          {props.group && (
            <td>
              {signed(residual_pct(props.group, point.density_kg_m3, point.pump_Hz_per_krpm))}
            </td>
          )}
        </tr>
      ))}
    </FiguresTable>
  );
}

/** With its sign, one decimal. */
export function signed(value: number): string {
  return `${value < 0 ? "−" : "+"}${format(Math.abs(value), 1)}`;
}
