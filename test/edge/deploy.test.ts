import { globSync, mkdtempSync, readFileSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { expect, onTestFinished, test } from "vitest";
import { wrangler } from "../../server/wrangler.ts";

/** Of a worker, packed: developers.cloudflare.com/workers/platform/limits, free of charge, as read on 2026-11-30. */
const WORKER_MOST = 3 * 1024 * 1024;
/** Files beside it, and the largest of them: the same page. */
const [FILES_MOST, FILE_MOST] = [20_000, 25 * 1024 * 1024];

test("a deployment is complete without a network, and within the limits that cost nothing", async () => {
  const folder = mkdtempSync(join(tmpdir(), "hypsotune-deploy-"));
  onTestFinished(() => rmSync(folder, { recursive: true }));
  const said = wrangler(["deploy", "--dry-run", "--outdir", folder]);
  expect(said).toContain("ATLAS_DB");
  const packed = gzipSync(readFileSync(join(folder, "worker.js"))).length;
  console.log(`The worker is ${(packed / 1024).toFixed(0)} KiB packed.`);
  expect(packed).toBeGreaterThan(100_000);
  expect(packed).toBeLessThan(WORKER_MOST);
  const files = globSync("data/edge/**", { withFileTypes: true }).filter((file) => file.isFile());
  expect(files.length).toBeGreaterThan(1000);
  expect(files.length).toBeLessThan(FILES_MOST);
  const largest = Math.max(...files.map((file) => statSync(join(file.parentPath, file.name)).size));
  expect(largest).toBeLessThan(FILE_MOST);
});
