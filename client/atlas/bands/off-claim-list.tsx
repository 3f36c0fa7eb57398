import { b } from "../../texts/bands.ts";
import { FiguresTable } from "../../ui/figures-table.tsx";
import { format } from "../../units.ts";
import { airName } from "./air-name.ts";
import { BANDS, beyondChance, CORRIDOR_points, type OffClaim, offClaim } from "./off-claim.ts";
import type { StudyReport } from "./report.ts";
import { scenarioTitle } from "./scenario-title.ts";

/** In which scenarios the 95 % bands leave their corridor, worst first. */
export function OffClaims(props: { report: StudyReport; onShow: (id: string) => void }) {
  const { report, onShow } = props;
  const { narrow, wide } = offClaim(report);
  const all = [...narrow, ...wide];
  return (
    <section class="sheet" aria-labelledby="fails">
      <h2 id="fails">{b.fails}</h2>
      <p>
        {b.verdict(report.scenarios.length, narrow.length, wide.length, format(CORRIDOR_points, 1))}{" "}
        {all.length > 0 && b.beyondChance(all.filter(beyondChance).length, all.length)}
      </p>
      <List title={b.narrow(narrow.length)} means={b.narrowMeans} rows={narrow} onShow={onShow} />
      <List title={b.wide(wide.length)} means={b.wideMeans} rows={wide} onShow={onShow} />
    </section>
  );
}

function List(props: {
  title: string;
  means: string;
  rows: readonly OffClaim[];
  onShow: (id: string) => void;
}) {
  const { title, means, rows, onShow } = props;
  if (rows.length === 0) return null;
  return (
    <>
      <h3>{title}</h3>
      <p class="note">{means}</p>
      <FiguresTable
        label={b.tableOf(title)}
        columns={[b.scenario, ...BANDS.map((band) => b.bands[band])]}
        class="off-claim"
      >
        {rows.map(({ scenario, ...held }) => (
          <tr key={scenario.id} data-scenario={scenario.id}>
            <th scope="row">
              <button
                type="button"
                class="plain"
                aria-label={b.show(scenarioTitle(scenario))}
                onClick={() => onShow(scenario.id)}
              >
                {scenarioTitle(scenario)}
              </button>
            </th>
            {BANDS.map((band) => (
              <td key={band}>{b.held(format(held[band].held_pct, 1), airName(held[band].air))}</td>
            ))}
          </tr>
        ))}
      </FiguresTable>
    </>
  );
}
