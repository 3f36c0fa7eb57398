import { useEffect, useRef, useState } from "preact/hooks";
import type { PublishedFit } from "../../../model/fit/group.ts";
import { recall, remember } from "../../base/remember.ts";
import { t } from "../../texts/app.ts";
import { b } from "../../texts/bands.ts";
import { Breakdown } from "./breakdown.tsx";
import { loadReport } from "./load-report.ts";
import { OffClaims } from "./off-claim-list.tsx";
import { PoisoningStudy } from "./poisoning-study.tsx";
import { PublishedBands } from "./published.tsx";
import type { StudyReport } from "./report.ts";
import { BandsScenario } from "./scenario.tsx";
import { StudyFacts } from "./study-facts.tsx";
import { SweepStudy } from "./sweep-study.tsx";

/** How well the bands hold, as the simulation study found it. */
export function DataBands({ fit }: { fit: PublishedFit }) {
  const [report, setReport] = useState<StudyReport | null>(null);
  const [failed, setFailed] = useState(false);
  const [chosen, setChosen] = useState(() => recall<string>("bands.scenario"));
  const select = useRef<HTMLSelectElement>(null);
  useEffect(() => {
    loadReport().then(setReport, () => setFailed(true));
  }, []);
  const choose = (id: string) => {
    setChosen(id);
    remember("bands.scenario", id);
  };
  const scenario = report?.scenarios.find(({ id }) => id === chosen) ?? report?.scenarios[0];
  return (
    <div class="page wide-page">
      <section class="sheet" aria-labelledby="bands">
        <h2 id="bands">{b.title}</h2>
        <p>{b.intro}</p>
        <p>{b.simulated}</p>
        {failed && <p class="warning">{t.partMissing}</p>}
        {!report && !failed && <p>{b.loading}</p>}
      </section>
      <PublishedBands fit={fit} />
      {report && scenario && (
        <>
          <OffClaims
            report={report}
            onShow={(id) => {
              choose(id);
              select.current?.focus();
            }}
          />
          <BandsScenario report={report} scenario={scenario} onChoose={choose} select={select} />
          <Breakdown report={report} />
          <StudyFacts report={report} />
        </>
      )}
      <SweepStudy />
      <PoisoningStudy />
    </div>
  );
}
