import type { SweepReport } from "../../../client/atlas/bands/sweep-report.ts";
import { format } from "../../../client/units.ts";

export const SWEEP_PAGE = "docs/sweep.md";
const [BEGIN, END] = ["<!-- figures: begin -->", "<!-- figures: end -->"];

/** The page with its figures made again from the report. */
export function withSweepFigures(page: string, report: SweepReport): string {
  const [from, to] = [page.indexOf(BEGIN), page.indexOf(END)];
  if (from < 0 || to < from) throw new RangeError(`${SWEEP_PAGE} has lost its "figures" comments.`);
  return `${page.slice(0, from + BEGIN.length)}\n${figuresIn(report)}\n${page.slice(to)}`;
}

function figuresIn(report: SweepReport): string {
  const { runs, outcomes, broken, most, ends, ordinary } = report;
  const counts: [string, number | string][] = [
    ["sweeps, half of them at each end", runs],
    ["found, CO clearly higher on both sides", outcomes.found],
    ["not bracketed, and said so", outcomes["not bracketed"]],
    ["below the meter's floor, and said so", outcomes["below floor"]],
    ["above the meter's scale, and said so", outcomes["above scale"]],
    ["stopped after the third flame-out", outcomes.stopped],
    ["**found without a rise on both sides in the record**", broken.unbracketed],
    ["a move longer than 0.2 Hz (low end) or 0.4 Hz (high end)", broken.move],
    ["a third attempt to relight", broken.relight],
    [
      "more than 18 settings (those to relight aside), more than 4 readings at one, or no end",
      broken.endless,
    ],
    ["sent again to where the flame had gone out", broken.into_flame_out],
    [
      `found, of the ${format(ordinary.runs)} whose minimum lies in the 99 % band, burns, and shows on the meter`,
      ordinary.found,
    ],
    ["found, and bracketed by the true curve too", report.truly_bracketed],
    [
      "most settings (with those to relight), most readings in one sweep",
      `${most.settings}, ${most.readings}`,
    ],
    ["minima that stepping by hand named with no rise on both sides", report.unbracketed_by_hand],
  ];
  const shown = (value: number | string) => (typeof value === "number" ? format(value) : value);
  const lines = ends.flatMap(({ end, runs: of, guided, hand }) =>
    [["guided", guided] as const, ["by hand", hand] as const].map(([way, figures]) => [
      `${end === "both" ? "both ends" : `${end} end`}, ${way}`,
      format(of),
      format(figures.within_0_1_Hz_pct, 1),
      format(figures.within_0_2_Hz_pct, 1),
      `${format(figures.above_lowest_ppm, 1)} / ${format(figures.above_lowest_95_ppm, 1)}`,
      `${format(figures.settings_median)} / ${format(figures.readings_median)}`,
      format(figures.minutes_median),
      format(figures.flame_outs_per_100),
    ]),
  );
  const header = [
    "where the guided sweep found the minimum",
    "sweeps",
    "within 0.1 Hz, %",
    "within 0.2 Hz, %",
    "CO above the lowest, ppm: median / 95 in 100",
    "settings / readings",
    "minutes",
    "flame-outs in 100",
  ];
  return [
    `Code ${report.code}, seed ${report.seed}.`,
    table([["", "sweeps"], ...counts.map(([what, value]) => [what, shown(value)])]),
    table([header, ...lines]),
  ].join("\n\n");
}

function table([header = [], ...rows]: string[][]): string {
  const line = (row: string[]) => `| ${row.join(" | ")} |`;
  return [header, header.map(() => "---"), ...rows].map(line).join("\n");
}
