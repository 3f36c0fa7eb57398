import { useEffect, useState } from "preact/hooks";
import { sweepStudy as words } from "../../texts/sweep-study.ts";
import { FiguresTable } from "../../ui/figures-table.tsx";
import { format } from "../../units.ts";
import { loadSweepReport, type SweepFigures, type SweepReport } from "./sweep-report.ts";

/** What the guided sweep did on simulated heaters, beside stepping by hand. */
export function SweepStudy() {
  const [report, setReport] = useState<SweepReport | null>(null);
  useEffect(() => {
    loadSweepReport().then(setReport, () => {});
  }, []);
  if (!report) return null;
  const { runs, outcomes, broken, ordinary } = report;
  const share = (count: number) => format((100 * count) / runs, 0);
  return (
    <section class="sheet">
      <h2 id="sweep-study">{words.title}</h2>
      <p>{words.intro(format(runs))}</p>
      <p>
        {words.outcomes(
          share(outcomes.found),
          share(outcomes["not bracketed"]),
          share(outcomes["below floor"]),
          share(outcomes["above scale"]),
        )}{" "}
        {words.ordinary(format((100 * ordinary.found) / ordinary.runs, 0))}
      </p>
      <p>
        {words.promises(format(broken.unbracketed), format(broken.move), format(broken.relight))}{" "}
        {words.byHand(format(report.unbracketed_by_hand))}
      </p>
      <FiguresTable label={words.title} columns={[words.end, words.sweeps, ...COLUMNS.map(nameOf)]}>
        {report.ends.flatMap(({ end, runs: of, guided, hand }) => [
          <Row key={`${end} guided`} end={end} way="guided" runs={of} figures={guided} />,
          <Row key={`${end} hand`} end={end} way="hand" runs={of} figures={hand} />,
        ])}
      </FiguresTable>
    </section>
  );
}

const COLUMNS = [
  ["within1", "within_0_1_Hz_pct"],
  ["within2", "within_0_2_Hz_pct"],
  ["above", "above_lowest_95_ppm"],
  ["settings", "settings_median"],
  ["readings", "readings_median"],
  ["minutes", "minutes_median"],
  ["flameOuts", "flame_outs_per_100"],
] as const;
/** Figures that are no whole numbers. */
const TENTHS = new Set<string>(["within_0_1_Hz_pct", "within_0_2_Hz_pct"]);
const nameOf = ([name]: (typeof COLUMNS)[number]) => words[name];

function Row(props: {
  end: keyof typeof words.ends;
  way: keyof typeof words.ways;
  runs: number;
  figures: SweepFigures;
}) {
  const { end, way, runs, figures } = props;
  return (
    <tr>
      <th scope="row">
        {words.ends[end]}, {words.ways[way]}
      </th>
      <td>{format(runs)}</td>
      {COLUMNS.map(([column, name]) => (
        <td key={column}>{format(figures[name], TENTHS.has(name) ? 1 : 0)}</td>
      ))}
    </tr>
  );
}
