import { fitBounded } from "../model/bounded-fit.ts";
import { fingerprint } from "../model/fit/fingerprint.ts";
import type { GroupFit } from "../model/fit/group.ts";
import { NUMERICS, SETTINGS } from "../model/fit/settings.ts";
import { readFitFile } from "./fit-file.ts";
import { CommandError, type FitOptions, readOptions } from "./fit-options.ts";
import { type FitReport, reportGroups, reportText } from "./fit-report.ts";
import { RowsHash } from "./rows-hash.ts";
import { CODE_VERSION } from "./version.ts";

/**
 * The same fit as the atlas publishes, from a file: coefficients, bands, every row set aside, and what tells whether
 * code, settings and rows are the published version's.
 */
async function main(): Promise<void> {
  const options = readOptions();
  const { rows, unreadable } = readFitFile(options.file);
  const { groups, rejected } = fitBounded(rows);
  const hash = new RowsHash();
  for (const row of rows) hash.add(row);
  const report: FitReport = {
    code: CODE_VERSION,
    estimator: fingerprint(),
    settings: { ...SETTINGS, ...NUMERICS },
    rows_sha256: hash.toString(),
    ...reportGroups(
      { groups, rejected: [...unreadable, ...rejected] },
      wantedBy(options),
      options.densities,
    ),
  };
  console.log(options.json ? JSON.stringify(report, null, 1) : reportText(report));
}

function wantedBy({ heat_kW, end }: FitOptions) {
  return (group: Pick<GroupFit, "heat_kW" | "end">) =>
    (heat_kW === undefined || group.heat_kW === heat_kW) &&
    (end === undefined || group.end === end);
}

try {
  await main();
} catch (error) {
  if (!(error instanceof CommandError)) throw error;
  console.error(error.message);
  process.exitCode = 2;
}
