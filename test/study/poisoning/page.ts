import type {
  Attacked,
  FewOwners,
  PoisoningReport,
} from "../../../client/atlas/bands/poisoning-report.ts";
import { format } from "../../../client/units.ts";

export const POISONING_PAGE = "docs/operating.md";
const [BEGIN, END] = ["<!-- figures: begin -->", "<!-- figures: end -->"];

/** The page with its figures made again from the report. */
export function withPoisoningFigures(page: string, report: PoisoningReport): string {
  const [from, to] = [page.indexOf(BEGIN), page.indexOf(END)];
  if (from < 0 || to < from)
    throw new RangeError(`${POISONING_PAGE} has lost its "figures" comments.`);
  return `${page.slice(0, from + BEGIN.length)}\n${figuresIn(report)}\n${page.slice(to)}`;
}

const clients = ({ clients }: Attacked) =>
  clients === 1 ? "one client" : `${clients} clients of as many networks`;
const sent = ({ keys, tunes }: Attacked) =>
  keys === tunes ? `${tunes} tunes, each under a fresh key` : `${tunes} tunes under one key`;
const time = ({ days }: Attacked) => (days === 7 ? "a week" : `${days} days`);

function figuresIn({ code, seed, attacks, newcomers, few_owners }: PoisoningReport): string {
  const told = attacks.map((one) => [
    `${clients(one)}: ${sent(one)} in ${time(one)}${one.waits_days === 0 ? ", with `NEW_KEY_DAYS=0`" : ""}`,
    format(one.honest),
    format(one.attacks),
    format(one.median_pct, 2),
    format(one.most_pct, 2),
    one.goal_pct === null ? "" : `below ${one.goal_pct}`,
    format(one.held_back),
  ]);
  const came = newcomers.map((one) => [
    format(one.honest),
    format(one.a_week),
    one.attackers === 0
      ? "nobody"
      : one.attackers === 1
        ? "one client, 300 fresh keys in the first week"
        : `${one.attackers} clients, a fresh key each in the first week`,
    format(one.newcomers),
    format(one.median_days, 1),
    format(one.most_days, 1),
    format(one.within_a_week),
  ]);
  return [
    `Code ${code}, seed ${seed}.`,
    table([
      [
        "who lies",
        "honest owners",
        "attacks",
        "average moved, %: median",
        "most",
        "goal",
        "a version held back in",
      ],
      ...told,
    ]),
    table([
      [
        "honest owners",
        "newcomers a week",
        "who lies meanwhile",
        "newcomers",
        "days until in the published fit: median",
        "most",
        "within a week",
      ],
      ...came,
    ]),
    fewIn(few_owners),
  ].join("\n\n");
}

const fewIn = (few: FewOwners) =>
  [
    `A heater size with few owners, beside ten of another: of ${few.lies} lies, each told by one of its first ${few.first} owners, half moved its first average by`,
    `${format(few.median_pct, 1)} % or less from where an honest owner would have left it, and the worst by ${format(few.most_pct, 1)} %; the band of 95 % left that out after ${few.outside_band || "none"} of them.`,
    `One honest owner more than ${few.from} to ${few.to} moved the average by 2 % in ${few.held_back} of ${few.more} cases.`,
  ].join("\n");

function table([header = [], ...rows]: string[][]): string {
  const line = (row: string[]) => `| ${row.join(" | ")} |`;
  return [header, header.map(() => "---"), ...rows].map(line).join("\n");
}
