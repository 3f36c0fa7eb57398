import { LARGE_PLACES_FILE, PACKS_FILE } from "../../../model/geography/place-packs.ts";
import { GEOGRAPHY_CACHES, SAVED_CACHE } from "../../base/answers/cache-names.ts";
import { renewSaved } from "../../base/answers/saved-countries.ts";
import { forget, recall, remember } from "../../base/remember.ts";

/** How far this browser is with keeping map and places. */
export type Keeping =
  | { is: "unable" | "waiting" | "kept" | "full" | "interrupted" }
  | { is: "keeping"; done: number; of: number; cleared: boolean };

/** Says what the geography was built from; kept last, so that it stands for a whole cache. */
const STAMP_FILE = "/geography/format";
const AT_ONCE = 6;
/** Zooms everyone keeps; the deepest comes with a saved country. */
const ZOOMS = [0, 1, 2, 3];

const FILES = [
  ...["land", "lakes", "rivers", "borders", "labels"].map((name) => `${name}.json`),
  ...["grid.bin", "points.bin", LARGE_PLACES_FILE, PACKS_FILE],
  ...ZOOMS.flatMap((zoom) => {
    const all = Array.from({ length: 2 ** zoom }, (_, i) => i);
    return all.flatMap((x) => all.map((y) => `tiles/${zoom}/${x}/${y}.png`));
  }),
].map((file) => `/geography/${file}`);

/** Keeps what start tunes, places and the map from afar need without a network; takes up where it was left. */
export async function keepGeography(tell: (keeping: Keeping) => void): Promise<void> {
  if (!("caches" in globalThis)) return tell({ is: "unable" });
  try {
    const stamp = await fetch(STAMP_FILE, { cache: "no-cache" });
    if (!stamp.ok) throw new Error(`${stamp.status}`);
    const name = GEOGRAPHY_CACHES + (await stamp.clone().text()).replaceAll(/\s+/g, "-");
    const cache = await caches.open(name);
    if (!(await cache.match(STAMP_FILE))) {
      await fill(cache, recall("geography") === name, tell);
      await cache.put(STAMP_FILE, stamp);
      await dropOthers(name);
      await renewSaved();
    }
    remember("geography", name);
    tell({ is: "kept" });
  } catch (error) {
    tell({ is: await standing(error) });
  }
}

async function fill(cache: Cache, cleared: boolean, tell: (keeping: Keeping) => void) {
  let done = 0;
  let failure: unknown;
  const left = [...FILES];
  const stop = new AbortController();
  const next = async (): Promise<void> => {
    try {
      for (let file = left.shift(); file; file = left.shift()) {
        if (!(await cache.match(file))) {
          const response = await fetch(file, { cache: "no-cache", signal: stop.signal });
          if (!response.ok) throw new Error(`${file}: ${response.status}`);
          await cache.put(file, response);
        }
        tell({ is: "keeping", done: ++done, of: FILES.length, cleared });
      }
    } catch (error) {
      // The others end too: what they told afterwards would stand in place of what went wrong.
      failure ??= error;
      left.length = 0;
      stop.abort();
    }
  };
  await Promise.all(Array.from({ length: AT_ONCE }, next));
  if (failure) throw failure;
}

/** What to say after a failure: full is the person's to mend; without a network an earlier whole cache still serves. */
async function standing(error: unknown): Promise<"full" | "kept" | "interrupted"> {
  if (error instanceof DOMException && error.name === "QuotaExceededError") return "full";
  const names = await caches.keys().catch(() => []);
  for (const name of names.filter((n) => n.startsWith(GEOGRAPHY_CACHES) && n !== SAVED_CACHE)) {
    if (await (await caches.open(name)).match(STAMP_FILE)) return "kept";
  }
  return "interrupted";
}

async function dropOthers(name: string): Promise<void> {
  for (const other of await caches.keys()) {
    if (other.startsWith(GEOGRAPHY_CACHES) && other !== name && other !== SAVED_CACHE) {
      await caches.delete(other);
    }
  }
  if (recall("geography") !== name) forget("geography");
}
