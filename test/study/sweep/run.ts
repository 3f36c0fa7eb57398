import { readFileSync, writeFileSync } from "node:fs";
import { CODE_VERSION } from "../../../server/version.ts";
import { reportOf, tallyOf } from "./figures.ts";
import { SWEEP_PAGE, withSweepFigures } from "./page.ts";

const REPORT = "client/atlas/bands/sweep-report.json";
const RUNS = 10_000;
const SEED = 20261125;
const USAGE = `npm run study:sweep -- [RUNS]
Guided sweeps over invented heaters and meters, ${RUNS} of them without RUNS; then writes ${REPORT} and the figures of
${SWEEP_PAGE}. With RUNS (a whole number above 1) it only prints. It fails when a sweep did what it must never do.`;

const runs = process.argv[2] === undefined ? RUNS : Number(process.argv[2]);
if (!(Number.isInteger(runs) && runs > 1)) {
  console.error(USAGE);
  process.exit(2);
}
const tallies = Array.from({ length: runs }, (_, run) => {
  if (run > 0 && run % 1000 === 0) console.error(`${run} of ${runs}`);
  return tallyOf(SEED, run);
});
const report = reportOf(tallies, CODE_VERSION, SEED);
console.log(JSON.stringify(report, null, 2));
if (process.argv[2] === undefined) {
  writeFileSync(REPORT, `${JSON.stringify(report, null, 2)}\n`);
  writeFileSync(SWEEP_PAGE, withSweepFigures(readFileSync(SWEEP_PAGE, "utf8"), report));
  console.log(`Written: ${REPORT}, ${SWEEP_PAGE}`);
}
const broken = tallies.flatMap(({ broken: promises }, run) =>
  promises.map((promise) => `run ${run}: ${promise}`),
);
if (broken.length > 0) {
  console.error(broken.join("\n"));
  process.exit(1);
}
