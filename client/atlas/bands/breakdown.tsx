import { b } from "../../texts/bands.ts";
import { estimatorName } from "../../texts/estimators.ts";
import { FiguresTable } from "../../ui/figures-table.tsx";
import { format } from "../../units.ts";
import { airName } from "./air-name.ts";
import type { StudyBreakdown, StudyReport } from "./report.ts";
import { scenarioTitle } from "./scenario-title.ts";

/** Up to which share of each kind of mistake the estimators hold. */
export function Breakdown({ report }: { report: StudyReport }) {
  const { breakdown = [] } = report;
  const [first] = breakdown;
  if (!first) return null;
  const { title, note, mistake } = b.breakdown;
  const estimators = first.holds_to_pct.map(({ estimator }) => estimator);
  return (
    <section class="sheet" aria-labelledby="breakdown">
      <h2 id="breakdown">{title}</h2>
      <p class="note">{note(format(first.limit_pct), airName(first.air))}</p>
      <FiguresTable
        label={b.tableOf(title)}
        columns={[mistake, ...estimators.map(estimatorName)]}
        class="figures breakdown"
        whole
      >
        {breakdown.map((kind) => (
          <tr key={kind.kind}>
            <th scope="row">{titleOf(report, kind)}</th>
            {estimators.map((estimator) => (
              <td key={estimator}>{holdsTo(kind, estimator)}</td>
            ))}
          </tr>
        ))}
      </FiguresTable>
    </section>
  );
}

/** The title that its scenarios share, without the share. */
function titleOf({ scenarios }: StudyReport, { kind, shares_pct }: StudyBreakdown): string {
  const first = scenarios.find(({ id }) => id === `${kind}-${shares_pct[0]}pct`);
  return first ? scenarioTitle(first).replace(/\d+(?=\s%)/, "…") : kind;
}

/** The largest share simulated at which it holds; below the smallest, where it does not even there. */
function holdsTo({ shares_pct, holds_to_pct }: StudyBreakdown, name: string): string {
  const share = holds_to_pct.find(({ estimator }) => estimator === name)?.share_pct;
  if (share === undefined) return "–";
  if (share === 0) return b.breakdown.below(format(shares_pct[0] ?? Number.NaN));
  return share === shares_pct.at(-1) ? b.breakdown.least(format(share)) : format(share);
}
