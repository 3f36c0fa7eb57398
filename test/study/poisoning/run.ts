import { readFileSync, writeFileSync } from "node:fs";
import type { PoisoningReport } from "../../../client/atlas/bands/poisoning-report.ts";
import { CODE_VERSION } from "../../../server/version.ts";
import { attacksOf, fewOwnersOf, newcomersOf, sampleOf } from "./figures.ts";
import { POISONING_PAGE, withPoisoningFigures } from "./page.ts";

/**
 * `npm run study:poisoning`: lies told to invented atlases, and how long honest newcomers wait. Writes the report and the
 * figures of the page for operators; fails when an average moved further than it may.
 */
const REPORT = "client/atlas/bands/poisoning-report.json";
const SEED = 20261130;

// What is held back is told to the log, hundreds of times.
console.warn = () => {};
const report: PoisoningReport = {
  code: CODE_VERSION,
  seed: SEED,
  attacks: await attacksOf(SEED, console.log),
  newcomers: await newcomersOf(SEED, console.log),
  few_owners: await fewOwnersOf(SEED),
  sample: await sampleOf(SEED),
};
writeFileSync(REPORT, `${JSON.stringify(report, null, 2)}\n`);
const page = readFileSync(POISONING_PAGE, "utf8");
writeFileSync(POISONING_PAGE, withPoisoningFigures(page, report));
console.log(`Written: ${REPORT}, ${POISONING_PAGE}`);
const missed = report.attacks.filter(({ most_pct, goal_pct }) => goal_pct && most_pct >= goal_pct);
if (missed.length > 0) {
  console.error(`Moved too far by: ${missed.map(({ id }) => id).join(", ")}`);
  process.exit(1);
}
