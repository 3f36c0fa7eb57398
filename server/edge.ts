import { cpSync, rmSync } from "node:fs";
import { buildMissing } from "./build-missing.ts";
import { randomReceipt } from "./keys.ts";
import { wrangler } from "./wrangler.ts";

/** Where wrangler.toml looks for the page and the geography. */
const ASSETS = "data/edge";

/** Builds what is missing and puts the page and the geography together for the edge. */
export async function assembleEdge(): Promise<void> {
  await buildMissing({ geographyDir: "data/geography", pageDir: "dist" });
  rmSync(ASSETS, { recursive: true, force: true });
  cpSync("dist", ASSETS, { recursive: true });
  cpSync("data/geography", `${ASSETS}/geography`, { recursive: true });
}

/** Runs the atlas on workerd with D1, all on this machine; with `--files` only puts together what a deployment takes. */
if (import.meta.main) {
  await assembleEdge();
  if (process.argv.includes("--files")) process.exit(0);
  const port = process.env.PORT || "8787";
  wrangler(["d1", "migrations", "apply", "ATLAS_DB", "--local"], true);
  // A secret of the moment: receipts of an earlier run open nothing in this one unless it is set.
  const secret = process.env.ATLAS_SECRET || randomReceipt();
  const steward = process.env.STEWARD_TOKEN;
  wrangler(
    [
      ...["dev", "--port", port, "--var", `ATLAS_SECRET:${secret}`],
      ...(steward ? ["--var", `STEWARD_TOKEN:${steward}`] : []),
    ],
    true,
  );
}
