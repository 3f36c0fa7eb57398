import { expect, test, vi } from "vitest";
import type { ObjectNamespace } from "../../server/durable.ts";
import { type Bindings, limitsOf, newKeyDaysOf } from "../../server/edge-settings.ts";
import { openKeys } from "../../server/keys.ts";
import { limitsHere } from "../../server/limits.ts";
import { sharedLimits, WriteLimits } from "../../server/shared-limits.ts";
import { goodTune } from "./atlas.ts";

const SECRET = "a secret for tests only";
const now = () => new Date("2026-11-25T12:00:00Z");
const keys = await openKeys(SECRET);
const here = () => limitsHere({ writes: 2, reads: 1, tunes: 1 }, keys, now);

const objects = (fetch: (request: Request) => Promise<Response>): ObjectNamespace => ({
  idFromName: (name) => name,
  get: () => ({ fetch: (address, init) => fetch(new Request(address, init)) }),
});

test("what the object refuses is refused as if it were counted here, with the time to wait and the challenge", async () => {
  vi.useFakeTimers({ now: now() });
  const env = {
    ATLAS_SECRET: SECRET,
    WRITE_LIMIT: "2",
    READ_LIMIT: "1",
    FLOOD_LIMIT: "1",
  } as Bindings;
  const object = new WriteLimits({} as never, env);
  const inside = objects((request) => object.fetch(request));
  const isolates = [sharedLimits(inside, here()), sharedLimits(inside, here())] as const;
  await isolates[0].write("203.0.113.7");
  await isolates[1].write("203.0.113.7");
  await isolates[1].write("198.51.100.1");
  await expect(isolates[0].write("203.0.113.7")).rejects.toMatchObject({
    status: 429,
    message: "At most 2 writes a minute. Nothing was stored; send it again in 60 s.",
    headers: { "Retry-After": "60" },
  });
  // Reads are counted apart.
  await isolates[0].read("203.0.113.7");
  await expect(isolates[1].read("203.0.113.7")).rejects.toMatchObject({
    status: 429,
    title: "Too many at once",
    headers: { "Retry-After": "60" },
  });
  await isolates[0].tune(goodTune(), undefined);
  await expect(isolates[1].tune(goodTune(1), undefined)).rejects.toMatchObject({
    title: "A proof of work is needed",
    challenge: { signature: expect.any(String) },
  });
  vi.useRealTimers();
});

test("a limit that is left empty is the usual one, as on Node, and one that is no number is refused by name", () => {
  const env = { WRITE_LIMIT: "", READ_LIMIT: "7", NEW_KEY_DAYS: "" } as Bindings;
  expect(limitsOf(env)).toEqual({ writes: 30, reads: 7, tunes: 100 });
  expect(newKeyDaysOf(env)).toBe(6);
  expect(() => limitsOf({ FLOOD_LIMIT: "many" } as Bindings)).toThrow(/FLOOD_LIMIT.*whole number/);
});

test("an object that fails fails no write: the isolate counts by itself", async () => {
  const said = vi.spyOn(console, "error").mockImplementation(() => {});
  for (const failing of [
    objects(async () => new Response("", { status: 500 })),
    objects(() => Promise.reject(new Error("overloaded"))),
  ]) {
    const limits = sharedLimits(failing, here());
    await limits.write("203.0.113.7");
    await limits.write("203.0.113.7");
    await expect(limits.write("203.0.113.7")).rejects.toMatchObject({ status: 429 });
  }
  expect(said).toHaveBeenCalledTimes(6);
  said.mockRestore();
});
