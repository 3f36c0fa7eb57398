import type { StewardVerdict } from "../../model/steward-reasons.ts";
import type {
  AlarmsAnswer,
  AuditTrail,
  ClustersAnswer,
  Counted,
  Decided,
  HeldTunes,
  Publication,
  StewardsTunes,
  WaitingAnswer,
  WithoutAnswer,
} from "../../server/contract.ts";
import { call } from "../base/answers/api.ts";

/** A page of the queue. */
const PAGE = 50;
/** As many ids as an address may have. */
const IDS_AT_ONCE = 60;

/** Why, as one of the usual reasons by its code or in words. */
export type Why = { usual_reason: string } | { reason: string };

/** The steward's part of the API, opened by a token. */
export function stewardApi(token: string) {
  const ask = <T>(path: string, body?: unknown) =>
    call<T>(`/steward/${path}`, {
      cache: "no-store",
      headers: {
        Authorization: `Bearer ${token}`,
        ...(body !== undefined && { "Content-Type": "application/json" }),
      },
      ...(body !== undefined && { method: "POST", body: JSON.stringify(body) }),
    });
  return {
    held: (undecided: boolean, after: number) =>
      ask<HeldTunes>(`held?undecided=${undecided}&limit=${PAGE}&after=${after}`),
    ofOwner: (contributor: string) => ask<StewardsTunes>(`tunes?contributor=${contributor}`),
    byIds: async (ids: readonly string[]) => {
      const parts = Array.from({ length: Math.ceil(ids.length / IDS_AT_ONCE) }, (_, n) =>
        ids.slice(n * IDS_AT_ONCE, (n + 1) * IDS_AT_ONCE),
      );
      const found = await Promise.all(
        parts.map((part) => ask<StewardsTunes>(`tunes?ids=${part.join(",")}`)),
      );
      return found.flatMap(({ tunes }) => tunes);
    },
    decide: (tunes: readonly string[], verdict: StewardVerdict, why: Why) =>
      ask<Decided>("decisions", { tunes, verdict, ...why }),
    undo: (decisions: readonly number[]) => ask<Decided>("undo", { decisions }),
    trail: (after: number | null) =>
      ask<AuditTrail>(`decisions?limit=20${after === null ? "" : `&after=${after}`}`),
    alarms: () => ask<AlarmsAnswer>("alarms"),
    publication: (what: "publish" | "keep-back", reason: string) =>
      ask<Publication>(what, { reason }),
    /** So many pages of those who wait, as one. */
    waiting: async (pages: number) => {
      let found = await ask<WaitingAnswer>(`waiting?limit=${PAGE}`);
      for (let n = 1; n < pages && found.next !== null; n++) {
        const { waiting, next } = await ask<WaitingAnswer>(
          `waiting?limit=${PAGE}&after=${found.next}`,
        );
        found = { ...found, waiting: [...found.waiting, ...waiting], next };
      }
      return found;
    },
    letCount: (contributor: string, reason: string) =>
      ask<Counted>(`contributors/${contributor}/count`, { reason }),
    clusters: () => ask<ClustersAnswer>("clusters"),
    without: (tunes: readonly string[]) => ask<WithoutAnswer>("without", { tunes }),
  };
}

export type StewardApi = ReturnType<typeof stewardApi>;
