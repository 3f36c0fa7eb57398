import { spawnSync } from "node:child_process";

/** Longest that it may say, bytes: a query's answer, or what went wrong. */
const SAYS_MOST = 64 * 1024 * 1024;

/**
 * Runs wrangler on this Node, asking nothing.
 * @param show whether it speaks to the terminal; otherwise what it says is the answer
 * @throws Error with what it said when it fails
 */
export function wrangler(args: readonly string[], show = false): string {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    ["node_modules/wrangler/bin/wrangler.js", ...args],
    {
      stdio: ["ignore", show ? "inherit" : "pipe", show ? "inherit" : "pipe"],
      encoding: "utf8",
      maxBuffer: SAYS_MOST,
      env: { ...process.env, WRANGLER_SEND_METRICS: "false", CI: "true" },
    },
  );
  if (status === 0) return stdout ?? "";
  throw new Error(
    [`wrangler ${args.slice(0, 2).join(" ")} failed.`, stdout, stderr]
      .map((text) => text?.trim())
      .filter(Boolean)
      .join("\n"),
  );
}
