import { afterEach, beforeEach } from "vitest";
import { goodTune, openTestAtlas, type TestAtlas } from "./atlas.ts";

/** An empty atlas for each test of the file that calls this, closed after it. */
export function freshAtlas() {
  let atlas: TestAtlas;
  beforeEach(async () => {
    atlas = await openTestAtlas();
  });
  afterEach(() => atlas.close());
  return {
    get app() {
      return atlas.app;
    },
    get db() {
      return atlas.db;
    },
    get fit() {
      return atlas.fit;
    },
    get file() {
      return atlas.file;
    },
    get: (path: string, headers: Record<string, string> = {}) =>
      atlas.app.request(path, { headers }),
    /** The start tune of a heater with tunes of its own. */
    ask: (own_tunes: unknown, question: object = { heat_kW: 5, elevation_m: 2240 }) =>
      atlas.app.request("/api/start", {
        method: "POST",
        headers: { "Content-Type": "application/json" },
        body: JSON.stringify({ ...question, own_tunes }),
      }),
  };
}

export const bearer = (receipt: string) => ({ Authorization: `Bearer ${receipt}` });

/** A tune as its owner's own heater has it. */
export function ownTune(n = 1) {
  const { site, air, low, high } = goodTune(n);
  return { site, air, low, high };
}
