import type { PublishedFit } from "../model/fit/group.ts";
import type { Tune } from "../model/tune.ts";
import type {
  CellsAnswer,
  ElevationAnswer,
  KeptTune,
  MapConfiguration,
  PlacesAnswer,
  Problem,
  ScalingAnswer,
  Submitted,
} from "../server/contract.ts";

/** The atlas said no, and why. */
export class AtlasProblem extends Error {
  readonly problem: Problem;
  constructor(problem: Problem) {
    super(problem.detail ?? problem.title);
    this.problem = problem;
  }
}

/** The atlas could not be reached; nothing is known of whether it got the request. */
export class Unreachable extends Error {}

async function call<T>(path: string, init?: RequestInit): Promise<T> {
  let response: Response;
  try {
    // What others share must show at once: the browser asks again each time, and gets 304 when nothing is new.
    response = await fetch(`/api${path}`, { cache: "no-cache", ...init });
  } catch {
    throw new Unreachable("The atlas cannot be reached. Check the connection and try again.");
  }
  if (response.status === 204) return undefined as T;
  const body = await response.json().catch(() => null);
  if (response.ok) return body as T;
  throw new AtlasProblem(
    body ?? { type: "about:blank", title: "The atlas failed", status: response.status },
  );
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
  fit: () => call<PublishedFit>("/fit"),
  places: (q: string, signal: AbortSignal) =>
    call<PlacesAnswer>(`/places?${query({ q, limit: 6 })}`, { signal }),
  elevation: (lat: number, lon: number) =>
    call<ElevationAnswer>(`/elevation?${query({ lat, lon })}`),
  scaling: (heat_kW: number, end: string) =>
    call<ScalingAnswer>(`/scaling?${query({ heat_kW, end })}`),
  cells: () => call<CellsAnswer>("/cells/world"),
  map: () => call<MapConfiguration>("/map"),
  submit: (tune: Tune, key: string) =>
    call<Submitted>("/tunes", json("POST", tune, { "Idempotency-Key": key })),
  read: (id: string, receipt: string) =>
    call<KeptTune>(`/tunes/${id}`, { headers: bearer(receipt) }),
  revise: (id: string, receipt: string, tune: Tune) =>
    call<Submitted>(`/tunes/${id}`, json("PUT", tune, bearer(receipt))),
  withdraw: (id: string, receipt: string) =>
    call<void>(`/tunes/${id}`, { method: "DELETE", headers: bearer(receipt) }),
};
