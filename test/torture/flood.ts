import { proofOf } from "../../client/app/offline/proof-of-work.ts";
import { FLOOD_LIMIT } from "../../server/flood.ts";
import { goodTune, openTestAtlas, post, type TestAtlas } from "../server/atlas.ts";

interface Flooded {
  /** How many of the flood's tunes got in. */
  taken: number;
  /** Statuses of the others. */
  refused: Set<number>;
  /** Of the owners who send a tune each in the middle of it, as the page does. */
  honest: number[];
  /** How long each of them took, proof included, ms. */
  took_ms: number[];
}

/** A flood's tune: from a network, an address and under a key of its own. */
export const flood = ({ app }: TestAtlas, n: number) =>
  post(app, goodTune(10_000 + n), { "X-Test-Client": `10.${n >> 8}.${n & 255}.1` });

/**
 * Floods an atlas from as many networks as there are tunes, within a minute of its clock, while owners with a tune each send theirs.
 * @param tunes of the flood
 * @param owners among them, evenly
 */
export async function floodAtlas(tunes: number, owners: number): Promise<Flooded> {
  const atlas = await openTestAtlas({
    writeLimit: 30,
    floodLimit: FLOOD_LIMIT,
    opened: "2026-11-25T12:00:00Z",
  });
  const seen: Flooded = { taken: 0, refused: new Set(), honest: [], took_ms: [] };
  for (let n = 0; n < tunes; n++) {
    const { status } = await flood(atlas, n);
    if (status === 201) seen.taken += 1;
    else seen.refused.add(status);
    if ((n + 1) % Math.floor(tunes / owners) > 0) continue;
    const began = performance.now();
    seen.honest.push(await sendAsThePage(atlas, seen.honest.length));
    seen.took_ms.push(performance.now() - began);
  }
  await atlas.close();
  return seen;
}

/** @returns the last status */
async function sendAsThePage({ app }: TestAtlas, n: number): Promise<number> {
  const from = { "X-Test-Client": `192.0.2.${n}`, "Idempotency-Key": `owner-number-${n}` };
  const first = await post(app, goodTune(n), from);
  if (first.status !== 429) return first.status;
  const { challenge } = await first.json();
  return (await post(app, goodTune(n), { ...from, ...(await proofOf(challenge)) })).status;
}
