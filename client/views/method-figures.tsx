import { useEffect, useState } from "preact/hooks";
import { FiguresTable } from "../parts/figures-table.tsx";
import { loadReport } from "../study/load-report.ts";
import {
  METHOD_BANDS,
  METHOD_ESTIMATORS,
  type MethodLine,
  methodLines,
} from "../study/method-figures.ts";
import { m } from "../texts/method.ts";
import { format } from "../units.ts";

const list = (values: readonly number[]) => values.map((v) => format(v, 1)).join(" / ");

/** Errors and coverages by scenario, from the study's report; nothing where it cannot be had. */
export function MethodFigures() {
  const [lines, setLines] = useState<MethodLine[]>([]);
  useEffect(() => {
    loadReport().then(
      (report) => setLines(methodLines(report)),
      () => setLines([]),
    );
  }, []);
  if (lines.length === 0) return null;
  const { title, intro, scenario, bands, band, none, table } = m.figures;
  return (
    <section class="sheet" aria-labelledby="method-figures">
      <h3 id="method-figures">{title}</h3>
      <p>{intro}</p>
      <FiguresTable
        label={table}
        columns={[
          scenario,
          ...METHOD_ESTIMATORS,
          ...METHOD_BANDS.map((of) => band(bands[of.band], format(100 * of.level))),
        ]}
        class="method-figures"
        whole
      >
        {lines.map(({ id, title: name, errors_pct, held_pct }) => (
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
    </section>
  );
}
