import { rmSync } from "node:fs";
import { dirname } from "node:path";
import { expect, test } from "vitest";
import { goodTune, openTestAtlas, post, type TestAtlas } from "../server/atlas.ts";

const DAY_ms = 86_400_000;

const versionOf = async ({ app }: TestAtlas): Promise<string> =>
  (await (await app.request("/api/fit")).json()).version;

test("the clock goes back by a day, forward, and back again between two starts: versions only grow, and the fit follows each tune", async () => {
  const versions: string[] = [];
  let n = 0;
  const another = async (atlas: TestAtlas) => {
    expect((await post(atlas.app, goodTune(n++))).status).toBe(201);
    await atlas.fit.refresh();
    versions.push(await versionOf(atlas));
    const health = await (await atlas.app.request("/api/health")).json();
    expect(health.tunes).toBe(n);
    expect(health.fit_age_s).toBeGreaterThanOrEqual(0);
  };
  const atlas = await openTestAtlas({ opened: "2026-11-25T12:00:00Z" });
  await another(atlas);
  await another(atlas);
  atlas.pass(-DAY_ms);
  await another(atlas);
  atlas.pass(2 * DAY_ms);
  await another(atlas);
  atlas.pass(-3 * DAY_ms);
  await another(atlas);
  await atlas.stop();
  const again = await openTestAtlas({ file: atlas.file, opened: "2026-11-20T08:00:00Z" });
  await another(again);
  await again.stop();
  rmSync(dirname(atlas.file), { recursive: true });
  expect(versions).toEqual([
    "2026-11-25.1",
    "2026-11-25.2",
    "2026-11-25.3",
    "2026-11-26.1",
    "2026-11-26.2",
    "2026-11-26.3",
  ]);
});

test("the clock goes back by a day within a client's minute: the client waits a minute at most, not a day", async () => {
  const atlas = await openTestAtlas({ writeLimit: 1 });
  expect((await post(atlas.app, goodTune(0))).status).toBe(201);
  expect((await post(atlas.app, goodTune(1))).status).toBe(429);
  atlas.pass(-DAY_ms);
  expect((await post(atlas.app, goodTune(1))).status).toBe(201);
  const refused = await post(atlas.app, goodTune(2));
  expect(refused.status).toBe(429);
  expect(Number(refused.headers.get("Retry-After"))).toBeLessThanOrEqual(60);
  await atlas.close();
});
