import { useCallback } from "preact/hooks";
import { ENDS, type GroupFit, type PublishedFit } from "../../model/fit/group.ts";
import { ChartPlace } from "../charts/chart-place.tsx";
import { labelledLines } from "../charts/labelled-lines.ts";
import { coverageCsv } from "../charts/scaling-csv.ts";
import { signed } from "../charts/scaling-tables.tsx";
import { CsvButton } from "../parts/csv-button.tsx";
import { FiguresTable } from "../parts/figures-table.tsx";
import { t } from "../texts/app.ts";
import { scalingWords } from "../texts/scaling.ts";
import { format } from "../units.ts";

/** How far the axis reaches at least, points. */
const LEAST_REACH_points = 4;

/** Claimed against observed coverage of the new-heater bands: the class in a chart, every class and end in figures. */
export function Coverage({ fit, heat_kW }: { fit: PublishedFit; heat_kW: number }) {
  const words = scalingWords.coverage;
  const checked = fit.groups.filter(({ held }) => held.length > 0);
  const ofClass = checked.filter((group) => group.heat_kW === heat_kW);
  const draw = useCallback(
    (width: number) => coverageChart(ofClass, heat_kW, width),
    [fit, heat_kW],
  );
  return (
    <section class="sheet" aria-labelledby="coverage">
      <h2 id="coverage">{words.title}</h2>
      <p>{checked.length > 0 ? words.means : words.none}</p>
      {ofClass.length > 0 && (
        <ChartPlace draw={draw} axes={{ x: words.claimedAxis, y: words.offAxis }} />
      )}
      {checked.length > 0 && (
        <>
          <CoverageTable groups={checked} />
          <CsvButton
            label={scalingWords.csv.coverage}
            file="scaling-coverage.csv"
            csv={() => coverageCsv(fit.version, checked)}
          />
        </>
      )}
    </section>
  );
}

/** Observed less claimed at each claimed level, a line for each end. */
function coverageChart(groups: readonly GroupFit[], heat_kW: number, width: number) {
  const words = scalingWords.coverage;
  const lines = groups.map(({ end, held }) => ({
    number: ENDS.indexOf(end),
    label: t[end],
    values: held.map(({ level, observed }) => 100 * (observed - level)),
  }));
  const reach = Math.max(
    LEAST_REACH_points,
    ...lines.flatMap(({ values }) => values.map(Math.abs)),
  );
  return labelledLines({
    name: words.chart(format(heat_kW)),
    width,
    lines,
    x: { steps: (groups[0]?.held ?? []).map(({ level }) => format(100 * level)) },
    y: {
      domain: [-Math.ceil(reach), Math.ceil(reach)],
      format: (value) => (value === 0 ? "0" : signed(value)),
    },
    corridor: [-1.5, 1.5],
  });
}

function CoverageTable({ groups }: { groups: readonly GroupFit[] }) {
  const words = scalingWords.coverage;
  const levels = groups[0]?.held.map(({ level }) => level) ?? [];
  return (
    <FiguresTable
      label={scalingWords.tableOf(words.title)}
      columns={[words.group, ...levels.map((level) => words.claimed(format(100 * level)))]}
    >
      {groups.map(({ heat_kW, end, held }) => (
        <tr key={`${heat_kW} ${end}`}>
          <th scope="row">
            {format(heat_kW)} kW, {t.endWord[end]}
          </th>
          {held.map(({ level, observed }) => (
            <td key={level}>{format(100 * observed, 1)}</td>
          ))}
        </tr>
      ))}
    </FiguresTable>
  );
}
