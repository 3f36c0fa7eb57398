import { spawnSync } from "node:child_process";
import { cpSync, rmSync } from "node:fs";
import { buildMissing } from "./build-missing.ts";
import { randomReceipt } from "./keys.ts";

/** Where wrangler.toml looks for the page and the geography. */
const ASSETS = "data/edge";

/** Builds what is missing and puts the page and the geography together for the edge. */
export async function assembleEdge(): Promise<void> {
  await buildMissing({ geographyDir: "data/geography", pageDir: "dist" });
  rmSync(ASSETS, { recursive: true, force: true });
  cpSync("dist", ASSETS, { recursive: true });
  cpSync("data/geography", `${ASSETS}/geography`, { recursive: true });
}

function wrangler(...args: string[]): void {
  const { status } = spawnSync(
    process.execPath,
    ["node_modules/wrangler/bin/wrangler.js", ...args],
    {
      stdio: "inherit",
      env: { ...process.env, WRANGLER_SEND_METRICS: "false", CI: "true" },
    },
  );
  if (status !== 0) process.exit(status ?? 1);
}

/** Runs the atlas on workerd with D1, all on this machine. */
if (import.meta.main) {
  const port = process.env.PORT || "8787";
  await assembleEdge();
  wrangler("d1", "migrations", "apply", "hypsotune", "--local");
  // A secret of the moment: receipts of an earlier run open nothing in this one unless it is set.
  const secret = process.env.ATLAS_SECRET || randomReceipt();
  const steward = process.env.STEWARD_TOKEN;
  wrangler(
    ...["dev", "--port", port, "--var", `ATLAS_SECRET:${secret}`],
    ...(steward ? ["--var", `STEWARD_TOKEN:${steward}`] : []),
  );
}
