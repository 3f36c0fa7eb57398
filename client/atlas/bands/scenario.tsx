import type { Ref } from "preact";
import { useCallback } from "preact/hooks";
import { b } from "../../texts/bands.ts";
import { estimatorName } from "../../texts/estimators.ts";
import { ChartPlace } from "../../ui/charts/chart-place.tsx";
import { LineKey } from "../../ui/charts/line-key.tsx";
import { format } from "../../units.ts";
import { airName } from "./air-name.ts";
import { BANDS, type Band, CORRIDOR_points, chance_points, JUDGED_LEVEL } from "./off-claim.ts";
import type { StudyReport, StudyScenario } from "./report.ts";
import { scenarioTitle } from "./scenario-title.ts";
import { coverageChart, errorChart } from "./study-charts.ts";
import { AsideTable, CoverageTable, ErrorTable, WidthTable } from "./study-tables.tsx";

interface Props {
  report: StudyReport;
  scenario: StudyScenario;
}

/** One scenario in charts and tables. */
export function BandsScenario(
  props: Props & { onChoose: (id: string) => void; select: Ref<HTMLSelectElement> },
) {
  const { report, scenario, onChoose, select } = props;
  return (
    <>
      <section class="sheet" aria-labelledby="scenario-title">
        <h2 id="scenario-title">{b.chosen}</h2>
        <div class="field">
          <label for="bands-scenario">{b.scenario}</label>
          <select
            id="bands-scenario"
            ref={select}
            value={scenario.id}
            onChange={(e) => onChoose(e.currentTarget.value)}
          >
            {familiesOf(report).map(([family, members]) => (
              <optgroup key={family} label={b.families[family]}>
                {members.map((member) => (
                  <option key={member.id} value={member.id}>
                    {scenarioTitle(member)}
                  </option>
                ))}
              </optgroup>
            ))}
          </select>
        </div>
        <p>
          {b.counts(scenario.contributors, format(scenario.runs))} {b.truth[scenario.truth]}{" "}
          {b.chance(format(chance_points(JUDGED_LEVEL, scenario.runs), 1))}
        </p>
      </section>
      <section class="sheet" aria-labelledby="coverage">
        <h2 id="coverage">{b.coverage}</h2>
        <p class="note">{b.coverageNote(format(CORRIDOR_points, 1))}</p>
        <div class="chart-pair">
          {BANDS.map((band) => (
            <CoverageChart key={band} report={report} scenario={scenario} band={band} />
          ))}
        </div>
        <LineKey labels={report.airs.map(({ label }) => airName(label))} />
        <CoverageTable report={report} scenario={scenario} />
        <WidthTable report={report} scenario={scenario} />
      </section>
      <section class="sheet" aria-labelledby="error">
        <h2 id="error">{b.error}</h2>
        <p class="note">{b.errorNote}</p>
        <ErrorChart report={report} scenario={scenario} />
        <LineKey labels={scenario.results.map(({ estimator }) => estimatorName(estimator))} />
        <ErrorTable report={report} scenario={scenario} />
        <AsideTable scenario={scenario} />
      </section>
    </>
  );
}

function familiesOf({ scenarios }: StudyReport) {
  return [...new Set(scenarios.map(({ family }) => family))].map(
    (family) => [family, scenarios.filter((s) => s.family === family)] as const,
  );
}

function CoverageChart({ report, scenario, band }: Props & { band: Band }) {
  const draw = useCallback(
    (width: number) => coverageChart({ report, scenario }, band, width),
    [report, scenario, band],
  );
  return (
    <figure>
      <figcaption>{b.bands[band]}</figcaption>
      <ChartPlace draw={draw} axes={{ x: b.claimedAxis, y: b.offAxis }} />
    </figure>
  );
}

function ErrorChart({ report, scenario }: Props) {
  const draw = useCallback(
    (width: number) => errorChart({ report, scenario }, width),
    [report, scenario],
  );
  return <ChartPlace draw={draw} axes={{ x: b.airAxis, y: b.errorAxis }} />;
}
