import { goodTune, openTestAtlas, post, type TestAtlas } from "./atlas.ts";

export const TOKEN = "steward-token-for-tests-only";
export const READS = ["held", "tunes", "clusters", "waiting", "decisions", "alarms"].map(
  (of) => `/api/steward/${of}`,
);

export const bearer = (token: string) => ({ Authorization: `Bearer ${token}` });

/** An atlas with a steward, and how one speaks to it. */
export interface StewardsAtlas extends TestAtlas {
  get: (path: string, headers?: Record<string, string>) => Promise<Response>;
  // biome-ignore lint/suspicious/noExplicitAny: each test knows what it asked for
  json: (path: string) => Promise<any>;
  /** Decides on one tune, or sends a text as it is. */
  decideOn: (id: string, body: unknown, headers?: Record<string, string>) => Promise<Response>;
  send: (path: string, body: unknown, headers?: Record<string, string>) => Promise<Response>;
  submit: (tune: unknown) => Promise<{ id: string; receipt: string; verdict: string }>;
}

export async function openStewardsAtlas(
  options: Parameters<typeof openTestAtlas>[0] = {},
): Promise<StewardsAtlas> {
  const atlas = await openTestAtlas({ stewardToken: TOKEN, ...options });
  const get = async (path: string, headers: Record<string, string> = bearer(TOKEN)) =>
    atlas.app.request(path, { headers });
  const send: StewardsAtlas["send"] = async (path, body, headers = bearer(TOKEN)) =>
    atlas.app.request(path, {
      method: "POST",
      headers: { "Content-Type": "application/json", ...headers },
      body: typeof body === "string" ? body : JSON.stringify(body),
    });
  return {
    ...atlas,
    get,
    json: async (path) => (await get(path)).json(),
    send,
    decideOn: (id, body, headers) =>
      send(
        "/api/steward/decisions",
        typeof body === "string" ? body : { tunes: [id], ...(body as object) },
        headers,
      ),
    submit: async (tune) => (await post(atlas.app, tune)).json(),
  };
}

/** Held at the door: its elevation was written in feet. */
export const inFeet = (n = 0) => ({
  ...goodTune(n),
  site: { ...goodTune(n).site, elevation_m: 4265 },
});
