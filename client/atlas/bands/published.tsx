import type { GroupFit, PublishedFit } from "../../../model/fit/group.ts";
import { t } from "../../texts/app.ts";
import { b } from "../../texts/bands.ts";
import { FiguresTable } from "../../ui/figures-table.tsx";
import { format } from "../../units.ts";

/** What the published fit found of its crowd: how far heaters and tunes scatter, and how many mistakes of each kind. */
export function PublishedBands({ fit }: { fit: PublishedFit }) {
  const words = b.published;
  const groups = fit.groups.filter(({ contributors }) => contributors > 0);
  return (
    <section class="sheet" aria-labelledby="published-bands">
      <h2 id="published-bands">{words.title}</h2>
      <p>{groups.length > 0 ? words.means(fit.version) : words.none}</p>
      {groups.length > 0 && (
        <FiguresTable
          label={b.tableOf(words.title)}
          columns={[
            words.group,
            words.owners,
            words.tunes,
            words.between,
            words.within,
            words.never,
            words.anything,
            words.feet,
            words.slips,
            words.crowd,
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
  const { heat_kW, end, contributors, tunes, between, within, shares } = group;
  return (
    <tr>
      <th scope="row">
        {t.heater.heatOption(heat_kW)}, {t.endWord[end]}
      </th>
      <td>{format(contributors)}</td>
      <td>{format(tunes)}</td>
      <td>±{percent(Math.expm1(between), 1)}</td>
      <td>±{percent(Math.expm1(within), 1)}</td>
      <td>{percent(shares.never_retuned)}</td>
      <td>{percent(shares.anything)}</td>
      <td>{percent(shares.feet)}</td>
      <td>{percent(shares.slips)}</td>
      <td>{crowdOf(group)}</td>
    </tr>
  );
}

function crowdOf({ second_crowd, shares }: GroupFit): string {
  const words = b.published;
  if (!second_crowd) return words.noCrowd;
  const { probability, shift } = second_crowd;
  const off = percent(Math.abs(Math.expm1(shift)));
  return words.crowdIs(
    percent(probability),
    percent(shares.second_crowd),
    shift > 0 ? words.richer(off) : words.leaner(off),
  );
}

const percent = (share: number, decimals = 0) => `${format(100 * share, decimals)} %`;
