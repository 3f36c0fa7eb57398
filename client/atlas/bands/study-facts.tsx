import { b } from "../../texts/bands.ts";
import { format } from "../../units.ts";
import type { StudyReport } from "./report.ts";

/** What one needs to run the study again and get the same figures. */
export function StudyFacts({ report }: { report: StudyReport }) {
  const runs = report.scenarios.map((scenario) => scenario.runs);
  const all = runs.reduce((sum, n) => sum + n, 0);
  const facts = [
    [b.facts.code, report.code],
    [b.facts.size, b.sizes[report.size]],
    [b.facts.seed, String(report.seed)],
    [
      b.facts.runs,
      b.runs(format(all), format(Math.min(...runs)), format(Math.max(...runs)), runs.length),
    ],
  ] as const;
  return (
    <section class="sheet" aria-labelledby="simulated">
      <h2 id="simulated">{b.how}</h2>
      <dl class="letters">
        {facts.map(([name, value]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
        <div>
          <dt>{b.facts.again}</dt>
          <dd>
            <code>{b.again[report.size]}</code>
          </dd>
        </div>
      </dl>
      <p class="note">{b.againNote}</p>
    </section>
  );
}
