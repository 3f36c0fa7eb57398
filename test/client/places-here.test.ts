import { afterEach, expect, test, vi } from "vitest";
import { api } from "../../client/base/answers/api.ts";
import { offline } from "../../client/texts/offline.ts";

afterEach(() => vi.unstubAllGlobals());

test("out of reach and with no places saved: place search says that, and what to do instead", async () => {
  vi.stubGlobal("fetch", () => Promise.reject(new TypeError("no network")));
  const { places, none } = await api.places("Leadville", new AbortController().signal);
  expect(places).toEqual([]);
  expect(none).toBe(offline.noPlacesKept);
});
