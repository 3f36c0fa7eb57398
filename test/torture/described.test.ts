import { expect, test } from "vitest";
import { throwAtEveryRoute } from "./described.ts";

test("every route of the description, with requests within its schemas and just outside: a described status and body each time", async () => {
  const seen = await throwAtEveryRoute(150, 17);
  expect(seen.size).toBeGreaterThan(30);
  // A route that is never answered, or a run in which nothing is refused, would say little.
  for (const [operation, statuses] of seen)
    expect(Math.min(...statuses.keys()), operation).toBeLessThan(300);
  const refused = [...seen.values()].filter((statuses) => Math.max(...statuses.keys()) >= 400);
  expect(refused.length).toBeGreaterThan(20);
});
