import { again } from "../../texts/again.ts";
import { t } from "../../texts/app.ts";
import { FiguresTable } from "../../ui/figures-table.tsx";
import type { GroupAgain } from "./fit-again.ts";

const SHOWN = ["intercept", "slope", "spread"] as const;

/** Figures made here, in full, and whether each is the published one. */
export function FitAgainTable({ groups }: { groups: readonly GroupAgain[] }) {
  return (
    <FiguresTable
      label={again.tableLabel}
      columns={[again.group, ...SHOWN.map((name) => again.columns[name]), again.others]}
    >
      {groups.map((group) => (
        <tr key={`${group.heat_kW} ${group.end}`} data-same={group.same}>
          <th scope="row">
            {unbroken(t.heater.heatOption(group.heat_kW))}, {unbroken(t.endWord[group.end])}
          </th>
          {SHOWN.map((name) => (
            <Figure key={name} here={group.here?.[name]} published={group.published?.[name]} />
          ))}
          <td>{group.others_same ? again.agrees : again.differ}</td>
        </tr>
      ))}
    </FiguresTable>
  );
}

/** Digits as the API and the command print them: for comparing, not for reading. */
function Figure({ here, published }: Record<"here" | "published", number | undefined>) {
  return (
    <td>
      {here ?? again.none}
      <br />
      {here === published ? again.agrees : again.published(String(published ?? again.none))}
    </td>
  );
}

/** Without a place to break the line: beside long figures a narrow screen leaves little room. */
function unbroken(words: string): string {
  return words.replaceAll(" ", "\u00a0");
}
