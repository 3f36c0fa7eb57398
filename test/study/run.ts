import { writeFileSync } from "node:fs";
import { availableParallelism } from "node:os";
import { parseArgs } from "node:util";
import { progressOn } from "./progress.ts";
import { SCENARIOS } from "./scenarios/all.ts";
import { study } from "./study.ts";
import { breakdownTable, tableOf } from "./table.ts";

const REPORT = "client/study/report.json";
const SEED = 20261125;
const USAGE = `npm run study -- [--full] [--only PART-OF-ID] [--out FILE] [--list]
Simulates how well bands hold and what mistakes do, and writes ${REPORT}.
--full: more runs. --only: scenarios whose id holds the text; written only with --out. --list: the scenarios.`;

function options() {
  try {
    return parseArgs({
      options: {
        full: { type: "boolean", default: false },
        only: { type: "string", default: "" },
        out: { type: "string" },
        list: { type: "boolean", default: false },
      },
    }).values;
  } catch (error) {
    console.error(`${(error as Error).message}\n${USAGE}`);
    process.exit(2);
  }
}

const { full, only, out = only ? undefined : REPORT, list } = options();
const scenarios = SCENARIOS.filter(({ id }) => id.includes(only));
if (list) {
  for (const { id, title } of SCENARIOS) console.log(`${id}: ${title}`);
  process.exit(0);
}
if (scenarios.length === 0) {
  console.error(`No scenario's id holds "${only}"; --list shows them.\n${USAGE}`);
  process.exit(2);
}
const report = await study({
  scenarios,
  size: full ? "full" : "quick",
  seed: SEED,
  threads: availableParallelism(),
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
}
