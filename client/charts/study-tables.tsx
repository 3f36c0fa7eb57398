import type { ComponentChildren } from "preact";
import { FiguresTable } from "../parts/figures-table.tsx";
import { saveFile } from "../save-file.ts";
import { coverageCsv, errorCsv } from "../study/csv.ts";
import { BANDS, coverageOf, isOff, offBy, ownResult } from "../study/off-claim.ts";
import type { StudyReport, StudyScenario } from "../study/report.ts";
import { b } from "../texts/bands.ts";
import { format } from "../units.ts";

interface Props {
  report: StudyReport;
  scenario: StudyScenario;
}

/** The coverage chart in figures: by band and air, at each claimed level. */
export function CoverageTable({ report, scenario }: Props) {
  const result = ownResult(scenario);
  if (!result) return null;
  const { airs, levels } = report;
  return (
    <Figures
      label={b.coverageTable}
      columns={[b.band, b.air, ...levels.map((level) => b.claims(format(100 * level)))]}
      csv={() => coverageCsv(report, scenario)}
      file={`bands-${scenario.id}-coverage.csv`}
    >
      {BANDS.flatMap((band) =>
        airs.map(({ label }, air) => (
          <tr key={`${band} ${label}`}>
            <td>{b.bands[band]}</td>
            <td>{label}</td>
            {levels.map((level, l) => (
              <CoverageCell
                key={level}
                observed_pct={coverageOf(result, band)[l]?.[air] ?? Number.NaN}
                level={level}
              />
            ))}
          </tr>
        )),
      )}
    </Figures>
  );
}

function CoverageCell({ observed_pct, level }: { observed_pct: number; level: number }) {
  const points = offBy(observed_pct, level);
  return (
    <td data-off={isOff(points) || undefined}>
      {format(observed_pct, 1)} {isOff(points) && <strong>{b.off(points)}</strong>}
    </td>
  );
}

/** The error chart in figures: by estimator, in each air. */
export function ErrorTable({ report, scenario }: Props) {
  return (
    <Figures
      label={b.errorTable}
      columns={[b.estimator, ...report.airs.map(({ label }) => b.errorAt(label))]}
      csv={() => errorCsv(report, scenario)}
      file={`bands-${scenario.id}-error.csv`}
    >
      {scenario.results.map(({ estimator, rmse_pct }) => (
        <tr key={estimator}>
          <td>{estimator}</td>
          {rmse_pct.map((rmse, air) => (
            <td key={report.airs[air]?.label}>{format(rmse, 1)}</td>
          ))}
        </tr>
      ))}
    </Figures>
  );
}

function Figures(props: {
  label: string;
  columns: readonly string[];
  csv: () => string;
  file: string;
  children: ComponentChildren;
}) {
  const { label, columns, csv, file, children } = props;
  return (
    <>
      <FiguresTable
        label={b.tableOf(label)}
        columns={columns}
        class="figures"
        caption={label}
        whole
      >
        {children}
      </FiguresTable>
      <div class="row">
        <button type="button" onClick={() => saveFile(file, "text/csv;charset=utf-8", csv())}>
          {b.csv(label)}
        </button>
      </div>
    </>
  );
}
