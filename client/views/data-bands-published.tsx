import type { GroupFit, PublishedFit } from "../../model/fit/group.ts";
import { FiguresTable } from "../parts/figures-table.tsx";
import { t } from "../texts/app.ts";
import { b } from "../texts/bands.ts";
import { format } from "../units.ts";

/** What the published fit says of its own bands: claimed against observed, and what its votes were taken to be. */
export function PublishedBands({ fit }: { fit: PublishedFit }) {
  const groups = fit.groups.filter(({ held }) => held.length > 0);
  const levels = groups[0]?.held.map(({ level }) => level) ?? [];
  return (
    <section class="sheet" aria-labelledby="published-bands">
      <h2 id="published-bands">{b.published.title}</h2>
      <p>{groups.length > 0 ? b.published.means(fit.version) : b.published.none}</p>
      {groups.length > 0 && (
        <FiguresTable
          label={b.tableOf(b.published.title)}
          columns={[
            b.published.group,
            b.published.contributors,
            ...levels.map((level) => b.published.claimed(format(100 * level))),
            b.published.honest,
            b.published.air,
            b.published.co,
          ]}
        >
          {groups.map((group) => (
            <GroupLine key={`${group.heat_kW} ${group.end}`} group={group} />
          ))}
        </FiguresTable>
      )}
    </section>
  );
}

function GroupLine({ group }: { group: GroupFit }) {
  const { heat_kW, end, contributors, held, shares, discounts, votes } = group;
  // Votes are counted after what doubt has cost.
  const all = votes + discounts.air + discounts.co;
  const lost = (part: number) => `${format((100 * part) / all, 1)} %`;
  return (
    <tr>
      <th scope="row">
        {t.heater.heatOption(heat_kW)}, {t.endWord[end]}
      </th>
      <td>{format(contributors)}</td>
      {held.map(({ level, observed }) => (
        <td key={level}>{format(100 * observed, 1)}</td>
      ))}
      <td>{`${format(100 * shares.honest)} %`}</td>
      <td>{lost(discounts.air)}</td>
      <td>{lost(discounts.co)}</td>
    </tr>
  );
}
