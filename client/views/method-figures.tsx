import { useEffect, useState } from "preact/hooks";
import { FiguresTable } from "../parts/figures-table.tsx";
import { loadReport } from "../study/load-report.ts";
import {
  calibrationLines,
  METHOD_BANDS,
  METHOD_ESTIMATORS,
  methodLines,
} from "../study/method-figures.ts";
import { BANDS } from "../study/off-claim.ts";
import type { StudyReport } from "../study/report.ts";
import { estimatorName } from "../texts/estimators.ts";
import { m } from "../texts/method.ts";
import { format } from "../units.ts";

const list = (values: readonly number[]) => values.map((v) => format(v, 1)).join(" / ");

/** Errors and coverages by scenario, from the study's report; nothing where it cannot be had. */
export function MethodFigures() {
  const [report, setReport] = useState<StudyReport>();
  useEffect(() => {
    loadReport().then(setReport, () => setReport(undefined));
  }, []);
  if (!report) return null;
  const { title, intro, scenario, bands, band, none, table } = m.figures;
  return (
    <section class="sheet" aria-labelledby="method-figures">
      <h3 id="method-figures">{title}</h3>
      <p>{intro}</p>
      <FiguresTable
        label={table}
        columns={[
          scenario,
          ...METHOD_ESTIMATORS.map(estimatorName),
          ...METHOD_BANDS.map((of) => band(bands[of.band], format(100 * of.level))),
        ]}
        class="method-figures"
        whole
      >
        {methodLines(report).map(({ id, title: name, errors_pct, held_pct }) => (
          <tr key={id} data-scenario={id}>
            <th scope="row">{name}</th>
            {errors_pct.map((values, i) => (
              <td key={METHOD_ESTIMATORS[i]}>{values ? list(values) : none}</td>
            ))}
            {held_pct.map((values, i) => (
              <td key={`${METHOD_BANDS[i]?.band} ${METHOD_BANDS[i]?.level}`}>{list(values)}</td>
            ))}
          </tr>
        ))}
      </FiguresTable>
      <Calibration report={report} />
    </section>
  );
}

/** How often the bands held on clean data, by the number of contributors. */
function Calibration({ report }: { report: StudyReport }) {
  const { bands, band, calibration } = m.figures;
  return (
    <>
      <p>{calibration.intro}</p>
      <FiguresTable
        label={calibration.table}
        columns={[
          calibration.contributors,
          ...BANDS.flatMap((of) =>
            report.levels.map((level) => band(bands[of], format(100 * level))),
          ),
        ]}
        class="method-figures"
        whole
      >
        {calibrationLines(report).map(({ contributors, held_pct }) => (
          <tr key={contributors} data-contributors={contributors}>
            <th scope="row">{format(contributors)}</th>
            {BANDS.flatMap((of) =>
              held_pct[of].map((ends, i) => (
                <td key={`${of} ${report.levels[i]}`}>{ends.map((v) => format(v, 1)).join("–")}</td>
              )),
            )}
          </tr>
        ))}
      </FiguresTable>
    </>
  );
}
