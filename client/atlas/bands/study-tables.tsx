import type { ComponentChildren } from "preact";
import { saveFile } from "../../base/save-file.ts";
import { b } from "../../texts/bands.ts";
import { estimatorName, shortEstimatorName } from "../../texts/estimators.ts";
import { FiguresTable } from "../../ui/figures-table.tsx";
import { format } from "../../units.ts";
import { airName } from "./air-name.ts";
import { ALONE, BANDS, coverageOf, isOff, OWN, offBy, ownResult, widthOf } from "./off-claim.ts";
import type { StudyReport, StudyScenario } from "./report.ts";
import { coverageCsv, errorCsv } from "./study-csv.ts";

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
      save={{
        file: `bands-${scenario.id}-coverage.csv`,
        csv: () => coverageCsv(report, scenario),
      }}
    >
      {BANDS.flatMap((band) =>
        airs.map(({ label }, air) => (
          <tr key={`${band} ${label}`}>
            <td>{b.bands[band]}</td>
            <td>{airName(label)}</td>
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

/** How wide the bands are: by band and air, at each claimed level; also without the other classes, where there are any. */
export function WidthTable({ report, scenario }: Props) {
  const { airs, levels } = report;
  const own = scenario.results.filter(({ estimator }) => [OWN, ALONE].includes(estimator));
  return (
    <Figures
      label={b.widthTable}
      columns={[b.band, b.air, ...levels.map((level) => b.claims(format(100 * level)))]}
    >
      {own.flatMap((result) =>
        BANDS.flatMap((band) =>
          airs.map(({ label }, air) => (
            <tr key={`${result.estimator} ${band} ${label}`}>
              <td>
                {b.bands[band]}
                {result.estimator === ALONE && ` (${shortEstimatorName(ALONE)})`}
              </td>
              <td>{airName(label)}</td>
              {levels.map((level, l) => (
                <td key={level}>± {format(widthOf(result, band)[l]?.[air] ?? Number.NaN, 1)}</td>
              ))}
            </tr>
          )),
        ),
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

/** Of an estimator that sets rows aside: how many of the honest and of the wrong ones. */
export function AsideTable({ scenario }: Pick<Props, "scenario">) {
  const judging = scenario.results.filter(
    ({ false_rejection_pct, caught_pct }) => false_rejection_pct !== null || caught_pct !== null,
  );
  if (judging.length === 0) return null;
  const share = (pct: number | null) => (pct === null ? "–" : format(pct, 1));
  return (
    <Figures label={b.asideTable} columns={[b.estimator, b.honestAside, b.wrongAside]}>
      {judging.map(({ estimator, false_rejection_pct, caught_pct }) => (
        <tr key={estimator}>
          <td>{estimatorName(estimator)}</td>
          <td>{share(false_rejection_pct)}</td>
          <td>{share(caught_pct)}</td>
        </tr>
      ))}
    </Figures>
  );
}

/** The error chart in figures: by estimator, in each air. */
export function ErrorTable({ report, scenario }: Props) {
  return (
    <Figures
      label={b.errorTable}
      columns={[b.estimator, ...report.airs.map(({ label }) => b.errorAt(airName(label)))]}
      save={{ file: `bands-${scenario.id}-error.csv`, csv: () => errorCsv(report, scenario) }}
    >
      {scenario.results.map(({ estimator, rmse_pct }) => (
        <tr key={estimator}>
          <td>{estimatorName(estimator)}</td>
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
  /** What its button saves; without it there is none. */
  save?: { file: string; csv: () => string };
  children: ComponentChildren;
}) {
  const { label, columns, save, children } = props;
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
      {save && (
        <div class="row">
          <button
            type="button"
            onClick={() => saveFile(save.file, "text/csv;charset=utf-8", save.csv())}
          >
            {b.csv(label)}
          </button>
        </div>
      )}
    </>
  );
}
