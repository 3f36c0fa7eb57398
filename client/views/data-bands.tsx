import { useEffect, useRef, useState } from "preact/hooks";
import type { PublishedFit } from "../../model/fit/group.ts";
import { recall, remember } from "../remember.ts";
import { loadReport } from "../study/load-report.ts";
import type { StudyReport } from "../study/report.ts";
import { t } from "../texts/app.ts";
import { b } from "../texts/bands.ts";
import { Breakdown } from "./data-bands-breakdown.tsx";
import { OffClaims } from "./data-bands-off-claim.tsx";
import { PublishedBands } from "./data-bands-published.tsx";
import { BandsScenario } from "./data-bands-scenario.tsx";
import { StudyFacts } from "./data-bands-study-facts.tsx";
import { SweepStudy } from "./data-bands-sweep.tsx";

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
    </div>
  );
}
