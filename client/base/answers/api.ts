import type { End } from "../../../model/end.ts";
import type { PublishedFit } from "../../../model/fit/group.ts";
import type { Tune } from "../../../model/tune.ts";
import type {
  CellsAnswer,
  CellTunesAnswer,
  ElevationAnswer,
  Health,
  KeptTune,
  MapConfiguration,
  NearAnswer,
  Problem,
  ScalingAnswer,
  Submitted,
} from "../../../server/contract.ts";
import { t } from "../../texts/app.ts";
import { KEPT_HEADER } from "./cache-names.ts";
import type { PlacesFound } from "./places-here.ts";

/** The atlas said no, and why. */
export class AtlasProblem extends Error {
  readonly problem: Problem;
  constructor(problem: Problem) {
    super(problem.detail ?? problem.title);
    this.problem = problem;
  }
}

/** The atlas could not be reached; nothing is known of whether it got the request. */
export class Unreachable extends Error {
  /** An earlier answer to the same question that this browser has kept. */
  readonly kept: unknown;
  constructor(kept?: unknown) {
    super(t.notReached);
    this.kept = kept;
  }
}

/** Asks the API. @throws AtlasProblem, Unreachable */
export async function call<T>(path: string, init?: RequestInit): Promise<T> {
  return (await answer<T>(path, init)).body;
}

interface Answered<T> {
  body: T;
  /** When it came from the atlas, where it comes out of the cache now. */
  kept_at: string | null;
}

async function answer<T>(path: string, init?: RequestInit): Promise<Answered<T>> {
  let response: Response;
  try {
    // What others share must show at once: the browser asks again each time, and gets 304 when nothing is new.
    response = await fetch(`/api${path}`, { cache: "no-cache", ...init });
  } catch {
    throw new Unreachable();
  }
  const kept_at = response.headers.get(KEPT_HEADER);
  if (response.status === 204) return { body: undefined as T, kept_at };
  const body = await response.json().catch(() => null);
  if (response.ok) return { body, kept_at };
  throw new AtlasProblem(
    body ?? { type: "about:blank", title: "The atlas failed", status: response.status },
  );
}

/** Asks; where the atlas is out of reach, what this browser holds answers instead. */
async function orHere<T>(asked: Promise<T>, here: () => Promise<T>): Promise<T> {
  try {
    return await asked;
  } catch (error) {
    if (!(error instanceof Unreachable)) throw error;
    return await here().catch(() => Promise.reject(error));
  }
}

/** The published fit as the atlas has it now: one out of the cache comes as kept, with the error. */
async function publishedFit(): Promise<PublishedFit> {
  const { body, kept_at } = await answer<PublishedFit>("/fit");
  if (kept_at) throw new Unreachable(body);
  return body;
}

/** How settings scale, and when its tunes were seen. */
export interface ScalingSeen {
  scaling: ScalingAnswer;
  /** Missing: just now. Null: never, so there are none; curve and bands are those of the fit kept here. */
  seen_at?: string | null;
}

/** Where the atlas is out of reach: curve and bands from the fit kept here, with the tunes last seen. */
async function scaling(heat_kW: number, end: End): Promise<ScalingSeen> {
  const here = async () => (await import("./scaling-here.ts")).scalingHere(heat_kW, end);
  const asked = answer<ScalingAnswer>(`/scaling?${query({ heat_kW, end })}`).then(
    async ({ body, kept_at }) => {
      if (!kept_at) return { scaling: body };
      const { points, points_total } = body;
      return { scaling: { ...(await here()), points, points_total }, seen_at: kept_at };
    },
  );
  return orHere<ScalingSeen>(asked, async () => {
    const scaling = await here();
    return scaling.points_total > 0 ? { scaling, seen_at: null } : { scaling };
  });
}

const query = (values: Record<string, string | number>) =>
  new URLSearchParams(Object.entries(values).map(([k, v]) => [k, String(v)])).toString();

const json = (
  method: string,
  body: unknown,
  headers: Record<string, string> = {},
): RequestInit => ({
  method,
  headers: { "Content-Type": "application/json", ...headers },
  body: JSON.stringify(body),
});

const bearer = (receipt: string) => ({ Authorization: `Bearer ${receipt}` });

export const api = {
  health: () => call<Health>("/health"),
  fit: publishedFit,
  places: (q: string, signal: AbortSignal) =>
    orHere(call<PlacesFound>(`/places?${query({ q, limit: 6 })}`, { signal }), async () => {
      signal.throwIfAborted();
      return (await import("./places-here.ts")).placesHere(q, 6);
    }),
  elevation: (lat: number, lon: number) =>
    orHere(call<ElevationAnswer>(`/elevation?${query({ lat, lon })}`), async () =>
      (await import("./places-here.ts")).groundHere(lat, lon),
    ),
  scaling,
  /** Cells under a wide one, or of the whole world. */
  cells: (parent = "world") => call<CellsAnswer>(`/cells/${parent}`),
  cellTunes: (cell: string) => call<CellTunesAnswer>(`/cells/${cell}/tunes`),
  near: (asked: Record<string, number>) => call<NearAnswer>(`/tunes/near?${query(asked)}`),
  map: () => call<MapConfiguration>("/map"),
  submit: (tune: Tune, key: string, proof: Record<string, string> = {}) =>
    call<Submitted>("/tunes", json("POST", tune, { "Idempotency-Key": key, ...proof })),
  read: (id: string, receipt: string) =>
    call<KeptTune>(`/tunes/${id}`, { headers: bearer(receipt) }),
  revise: (id: string, receipt: string, tune: Tune) =>
    call<Submitted>(`/tunes/${id}`, json("PUT", tune, bearer(receipt))),
  withdraw: (id: string, receipt: string) =>
    call<void>(`/tunes/${id}`, { method: "DELETE", headers: bearer(receipt) }),
};
