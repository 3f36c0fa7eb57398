import { ok } from "@oazapfts/runtime";
import * as atlas from "./client.ts";

// What somebody writes who has nothing of the atlas but its description: compiled against the client that is generated from
// it, so that a type that is missing or wrong stops the compiler.

/** What the one who tries the client brings along. */
export interface Visitor {
  fetch: typeof fetch;
  /** A plausible tune and one that is held at the door. */
  good: Parameters<typeof atlas.postTunes>[0];
  slip: Parameters<typeof atlas.postTunes>[0];
  steward_token: string;
  /** Waits until the fit knows what was sent. */
  settled: () => Promise<void>;
  /** Has an alarm hold a version back. */
  holdBack: () => Promise<void>;
}

type Operation = Exclude<keyof typeof atlas, "defaults" | "servers">;

/** Asks every route once and more, and answers what the client made of the last answer of each. */
export async function useEveryRoute(visitor: Visitor): Promise<Record<Operation, unknown>> {
  atlas.defaults.fetch = visitor.fetch;
  atlas.defaults.baseUrl = "http://atlas.example";

  const posted = await ok(atlas.postTunes(visitor.good, { idempotencyKey: "tried-once" }));
  const held = await ok(atlas.postTunes(visitor.slip));
  const other = await ok(atlas.postTunes({ ...visitor.good, contributor: "another-contributor" }));
  const suggestions: (number | undefined)[] = held.reasons.map(({ suggestion }) => suggestion);
  if (held.verdict !== "held" || suggestions.length === 0) throw new Error("It was not held.");
  const own = { headers: { Authorization: `Bearer ${posted.receipt}` } };
  const stewards = { headers: { Authorization: `Bearer ${visitor.steward_token}` } };

  const getStewardWaiting = await ok(atlas.getStewardWaiting({ limit: 20 }, stewards));
  const reason = "Tried by a program.";
  const count = (contributor: string) =>
    ok(atlas.postStewardContributorsPseudonymCount(contributor, { reason }, stewards));
  const counts: { contributor: string; tunes: number }[] = [];
  for (const { contributor } of getStewardWaiting.waiting) counts.push(await count(contributor));
  await visitor.settled();

  const getTunesId = await ok(atlas.getTunesId(posted.id, own));
  const putTunesId = await ok(atlas.putTunesId(posted.id, visitor.good, own));
  const getFit = await ok(atlas.getFit());
  const intercepts: number[] = getFit.groups.map(({ intercept }) => intercept);
  if (intercepts.length === 0) throw new Error("The fit is of no heater.");

  const getStart = await ok(atlas.getStart(5, { elevationM: 2240, temperatureC: -5 }));
  const pump_Hz: number = getStart.low.pump_Hz;
  const fuel_L_h: number | undefined = getStart.high.fuel_L_h;
  if (!(pump_Hz > 0) || (fuel_L_h !== undefined && !(fuel_L_h > 0))) throw new Error("No rate.");
  const postStart = await ok(
    atlas.postStart({
      heat_kW: 5,
      elevation_m: 2240,
      own_tunes: [{ site: visitor.good.site, low: visitor.good.low, high: visitor.good.high }],
    }),
  );
  const counted: number = postStart.own_heater.tunes;
  if (counted !== 1) throw new Error("The own tune does not count.");

  const world = await ok(atlas.getCellsParent("world"));
  const place = world.cells[0];
  if (!place) throw new Error("No cell has a tune.");
  const problem = await atlas.getScaling(
    5,
    // @ts-expect-error The description says "low" or "high".
    "middle",
  );
  if (problem.status !== 422) throw new Error("An end that is none was taken.");
  const fields: string[] | undefined = problem.data.errors?.map(({ field }) => field);
  if (fields?.join() !== "end") throw new Error("The field is not named.");
  // @ts-expect-error Fields of an answer are those of the description.
  if (getStart.low.pump_rate !== undefined) throw new Error("A field that nobody described.");

  const trail = await ok(atlas.getStewardDecisions({ by: "screening", limit: 5 }, stewards));
  const newest: string | null | undefined = trail.decisions[0]?.tune;
  if (!newest) throw new Error("No decision is on record.");
  const postStewardDecisions = await ok(
    atlas.postStewardDecisions({ tunes: [held.id], verdict: "accepted", reason }, stewards),
  );
  const decisions = postStewardDecisions.decisions.map(({ number }) => number);

  const data = await ok(atlas.getData());
  const file = data.files.find(({ media_type }) => media_type.startsWith("text/csv"));
  if (!file || file.size_bytes < 100) throw new Error("No file.");

  await visitor.holdBack();
  const postStewardKeepBack = await ok(atlas.postStewardKeepBack({ reason }, stewards));
  await visitor.holdBack();
  const postStewardPublish = await ok(atlas.postStewardPublish({ reason }, stewards));

  return {
    postTunes: other,
    getTunesId,
    putTunesId,
    getStart,
    postStart,
    getTunesNear: await ok(atlas.getTunesNear(5, { lat: 41.2, lon: 74.9 })),
    getFit,
    getFitVersion: await ok(atlas.getFitVersion(getFit.version)),
    getScaling: await ok(atlas.getScaling(5, "low")),
    getCellsParent: world,
    getCellsCellTunes: await ok(atlas.getCellsCellTunes(place.cell)),
    getPlaces: await ok(atlas.getPlaces("flat")),
    getElevation: await ok(atlas.getElevation(41.2, 74.9)),
    getFits: await ok(atlas.getFits()),
    getData: data,
    getDataRevisionFile: await ok(atlas.getDataRevisionFile(data.revision, file.name)),
    getTunesCsv: await ok(atlas.getTunesCsv()),
    getTunesCsvMetadataJson: await ok(atlas.getTunesCsvMetadataJson()),
    getTunesGeojson: await ok(atlas.getTunesGeojson()),
    getTunesParquet: await ok(atlas.getTunesParquet()),
    getDictionaryJson: await ok(atlas.getDictionaryJson()),
    getMap: await ok(atlas.getMap()),
    getHealth: await ok(atlas.getHealth()),
    getReady: await ok(atlas.getReady()),
    getOpenapiJson: await ok(atlas.getOpenapiJson()),
    getStewardHeld: await ok(atlas.getStewardHeld({ undecided: "true" }, stewards)),
    getStewardTunes: await ok(atlas.getStewardTunes({ ids: held.id }, stewards)),
    getStewardClusters: await ok(atlas.getStewardClusters(stewards)),
    postStewardWithout: await ok(atlas.postStewardWithout({ tunes: [other.id] }, stewards)),
    getStewardDecisions: trail,
    postStewardDecisions,
    postStewardUndo: await ok(atlas.postStewardUndo({ decisions }, stewards)),
    getStewardWaiting,
    postStewardContributorsPseudonymCount: counts.at(-1),
    getStewardAlarms: await ok(atlas.getStewardAlarms(stewards)),
    postStewardKeepBack,
    postStewardPublish,
    deleteTunesId: await ok(atlas.deleteTunesId(posted.id, own)),
  };
}
