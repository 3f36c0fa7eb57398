import { expect, test } from "vitest";
import { ownServer } from "./own-command.ts";

/** Another address of the loopback network (RFC 1122, 3.2.1.3), as good as a foreign one for a server bound to 127.0.0.1. */
const ELSEWHERE = "127.0.0.2";

/** In memory nothing is kept beside the database. */
const SECRET = { ATLAS_SECRET: "a secret for tests only" };

test.each([
  ["unset: this machine's own address alone", {}, [], false],
  ["0.0.0.0: all addresses", { HOST: "0.0.0.0" }, [], true],
  [
    "0.0.0.0 of a demo: this machine's own address all the same",
    { HOST: "0.0.0.0" },
    ["--demo"],
    false,
  ],
] as const)("HOST %s", async (_, env, options, isReached) => {
  const server = await ownServer(":memory:", { ...SECRET, ...env }, ...options);
  const { port } = new URL(server.url);
  const health = (host: string) => fetch(`http://${host}:${port}/api/health`).then((r) => r.ok);
  expect(await health("127.0.0.1")).toBe(true);
  if (isReached) expect(await health(ELSEWHERE)).toBe(true);
  else await expect(health(ELSEWHERE)).rejects.toThrow("fetch failed");
  server.process.kill("SIGTERM");
  expect(await server.ended).toBe(0);
});

test("HOST no address of this machine: refused with the remedy", async () => {
  // Kept for documentation (RFC 5737): nobody has it.
  const server = await ownServer(":memory:", { ...SECRET, HOST: "192.0.2.1" });
  expect(await server.ended).toBe(1);
  expect(server.complaints()).toMatch(/HOST is 192\.0\.2\.1, which is no address of this machine/);
});
