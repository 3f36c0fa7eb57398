import { readFileSync, writeFileSync } from "node:fs";
import { availableParallelism } from "node:os";
import { parseArgs } from "node:util";
import { METHOD_PAGE, withFigures } from "./method-figures.ts";
import { progressOn } from "./progress.ts";
import { SCENARIOS } from "./scenarios/all.ts";
import { planOf, study } from "./study.ts";
import { breakdownTable, tableOf } from "./table.ts";

const REPORT = "client/atlas/bands/report.json";
const SEED = 20261125;
const USAGE = `npm run study -- [--full] [--only PART-OF-ID] [--runs NUMBER] [--out FILE] [--list] [--figures] [--again]
Simulates how well bands hold and what mistakes do, writes ${REPORT} and the tables of ${METHOD_PAGE}.
--full: more runs. --only: scenarios whose id holds the text. --runs: so many of each. With either of the two the report
is written only with --out. --again: the scenarios and runs of the report that is kept. --list: the scenarios.
--figures: no simulation, only the tables again, from the report as it is.`;

function options() {
  try {
    return parseArgs({
      options: {
        full: { type: "boolean", default: false },
        only: { type: "string", default: "" },
        runs: { type: "string" },
        out: { type: "string" },
        list: { type: "boolean", default: false },
        figures: { type: "boolean", default: false },
        again: { type: "boolean", default: false },
      },
    }).values;
  } catch (error) {
    console.error(`${(error as Error).message}\n${USAGE}`);
    process.exit(2);
  }
}

const {
  full,
  only,
  runs,
  out = only || runs ? undefined : REPORT,
  list,
  figures,
  again,
} = options();
if (figures) {
  writeFigures();
  process.exit(0);
}
const kept = again ? planOf(JSON.parse(readFileSync(REPORT, "utf8"))) : undefined;
const scenarios = (kept?.scenarios ?? SCENARIOS).filter(({ id }) => id.includes(only));
if (list) {
  for (const { id, title } of SCENARIOS) console.log(`${id}: ${title}`);
  process.exit(0);
}
if (scenarios.length === 0) {
  console.error(`No scenario's id holds "${only}"; --list shows them.\n${USAGE}`);
  process.exit(2);
}
if (runs !== undefined && !(Number.isInteger(Number(runs)) && Number(runs) > 0)) {
  console.error(`--runs must be a whole number above 0, not "${runs}".\n${USAGE}`);
  process.exit(2);
}
const report = await study({
  size: full ? "full" : "quick",
  ...kept,
  scenarios,
  seed: SEED,
  threads: availableParallelism(),
  ...(runs === undefined ? {} : { runs: () => Number(runs) }),
  progress: progressOn(process.stderr),
});
for (const scenario of report.scenarios) console.log(tableOf(scenario));
console.log(breakdownTable(report));
if (out) {
  // A line for each scenario: what changed shows in a comparison of two reports.
  const lines = report.scenarios.map((s) => JSON.stringify(s)).join(",\n");
  const head = JSON.stringify({ ...report, scenarios: [] });
  writeFileSync(out, `${head.replace('"scenarios":[]', `"scenarios":[\n${lines}\n]`)}\n`);
  console.log(`\nWritten: ${out}`);
  if (out === REPORT && !only && !runs) writeFigures();
}

/** Puts the report's figures into the page on the method, so that the two cannot drift apart. */
function writeFigures(): void {
  const written = JSON.parse(readFileSync(REPORT, "utf8"));
  writeFileSync(METHOD_PAGE, withFigures(readFileSync(METHOD_PAGE, "utf8"), written));
  console.log(`Written: ${METHOD_PAGE}`);
}
