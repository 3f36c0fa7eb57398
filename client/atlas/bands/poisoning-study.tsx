import { useEffect, useState } from "preact/hooks";
import { poisoningStudy as words } from "../../texts/poisoning-study.ts";
import { FiguresTable } from "../../ui/figures-table.tsx";
import { format } from "../../units.ts";
import { loadPoisoningReport, type PoisoningReport } from "./poisoning-report.ts";

/** What simulated lies did to invented atlases, and how long honest newcomers wait. */
export function PoisoningStudy() {
  const [report, setReport] = useState<PoisoningReport | null>(null);
  useEffect(() => {
    loadPoisoningReport().then(setReport, () => {});
  }, []);
  if (!report) return null;
  const { who, honest, attacks, median, most, goal, heldBack } = words;
  const { aWeek, meanwhile, days, mostDays, inAWeek } = words;
  return (
    <section class="sheet">
      <h2 id="poisoning-study">{words.title}</h2>
      <p>{words.intro}</p>
      <FiguresTable
        label={words.title}
        columns={[who, honest, attacks, median, most, goal, heldBack]}
      >
        {report.attacks.map((one) => (
          <tr key={one.id}>
            <th scope="row">{words.liars[one.id]}</th>
            <td>{format(one.honest)}</td>
            <td>{format(one.attacks)}</td>
            <td>{format(one.median_pct, 1)}</td>
            <td>{format(one.most_pct, 1)}</td>
            <td>{one.goal_pct === null ? words.noGoal : words.below(format(one.goal_pct))}</td>
            <td>{format(one.held_back)}</td>
          </tr>
        ))}
      </FiguresTable>
      <h3>{words.newcomers}</h3>
      <p>{words.newcomersIntro}</p>
      <FiguresTable
        label={words.newcomers}
        columns={[honest, aWeek, meanwhile, days, mostDays, inAWeek]}
      >
        {report.newcomers.map((one) => (
          <tr key={`${one.honest} ${one.a_week} ${one.attackers}`}>
            <th scope="row">{format(one.honest)}</th>
            <td>{format(one.a_week)}</td>
            <td>{format(one.attackers)}</td>
            <td>{format(one.median_days, 1)}</td>
            <td>{format(one.most_days, 1)}</td>
            <td>{words.of(format(one.within_a_week), format(one.newcomers))}</td>
          </tr>
        ))}
      </FiguresTable>
    </section>
  );
}
