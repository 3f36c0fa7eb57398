import { useEffect, useState } from "preact/hooks";
import { FiguresTable } from "../parts/figures-table.tsx";
import { loadSweepReport, type SweepFigures, type SweepReport } from "../study/sweep-report.ts";
import { sweepStudy as words } from "../texts/sweep-study.ts";
import { format } from "../units.ts";

/** How well the guided sweep does beside stepping by hand, simulated. */
export function SweepStudy() {
  const [report, setReport] = useState<SweepReport | null>(null);
  useEffect(() => {
    loadSweepReport().then(setReport, () => {});
  }, []);
  if (!report) return null;
  return (
    <section class="sheet">
      <h2 id="sweep-study">{words.title}</h2>
      <p>{words.intro(format(report.ends[0]?.guided.runs ?? 0))}</p>
      <FiguresTable
        label={words.title}
        columns={[words.end, ...COLUMNS.map(([column]) => words[column]), words.share]}
      >
        {report.ends.flatMap(({ end, guided, hand, readings_of_hand_pct: share }) => [
          <Row key={`${end} guided`} end={end} way="guided" figures={guided} share={share} />,
          <Row key={`${end} hand`} end={end} way="hand" figures={hand} share={100} />,
        ])}
      </FiguresTable>
    </section>
  );
}

const COLUMNS = [
  ["within1", "within_1_step_pct", 1],
  ["within2", "within_2_steps_pct", 1],
  ["within3ppm", "within_3_ppm_pct", 1],
  ["readings", "settled_median", 0],
  ["confirmed", "confirmed_median", 0],
  ["minutes", "minutes_median", 0],
  ["held", "held_95_pct", 1],
] as const;

function Row(props: {
  end: keyof typeof words.ends;
  way: keyof typeof words.ways;
  figures: SweepFigures;
  share: number;
}) {
  const { end, way, figures, share } = props;
  return (
    <tr>
      <th scope="row">
        {words.ends[end]}, {words.ways[way]}
      </th>
      {COLUMNS.map(([column, name, decimals]) => (
        <td key={column}>
          {column === "held" && way === "hand" ? words.none : format(figures[name], decimals)}
        </td>
      ))}
      <td>{format(share, 0)}</td>
    </tr>
  );
}
