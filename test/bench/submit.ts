import { median } from "simple-statistics";
import { tunes } from "../../db/schema.ts";
import { acceptedTunes } from "../../db/shown-tunes.ts";
import type { TuneRow } from "../../db/tunes.ts";
import { goodTune, openTestAtlas, post } from "../server/atlas.ts";
import type { Result } from "./result.ts";

const SUBMISSIONS = 1500;
const AT_ONCE = 32;
const ROUNDS = 3;

/**
 * Accepted submissions, many at once as they come, against single-row inserts of the same tunes one after the
 * other, each into a file of its own at the same durability.
 */
export async function bench(): Promise<Result[]> {
  const atlas = await openTestAtlas();
  const plain = await openTestAtlas();
  await post(plain.app, goodTune());
  const { value } = await acceptedTunes(plain.db).next();
  const [row] = value as [TuneRow];
  const submissions = async (round: number) => {
    let next = 0;
    const t0 = performance.now();
    const send = async () => {
      for (let n = next++; n < SUBMISSIONS; n = next++) {
        const { status } = await post(atlas.app, goodTune(round * SUBMISSIONS + n));
        if (status !== 201) throw new Error(`status ${status}`);
      }
    };
    await Promise.all(Array.from({ length: AT_ONCE }, send));
    return SUBMISSIONS / ((performance.now() - t0) / 1000);
  };
  const inserts = async (round: number) => {
    const t0 = performance.now();
    for (let n = 0; n < SUBMISSIONS; n++) {
      await plain.db.insert(tunes).values({ ...row, id: `${round}-${n}` });
    }
    return SUBMISSIONS / ((performance.now() - t0) / 1000);
  };
  await submissions(0);
  await inserts(0);
  const rounds: [number, number][] = [];
  for (let round = 1; round <= ROUNDS; round++)
    rounds.push([await submissions(round), await inserts(round)]);
  await atlas.close();
  await plain.close();
  return [
    {
      name: "accepted submissions ÷ single-row inserts at the same durability, a second",
      ratio: median(rounds.map(([a, b]) => a / b)),
      limit: 0.5,
      better: "higher",
      detail: `${median(rounds.map(([a]) => a)).toFixed(0)} against ${median(rounds.map(([, b]) => b)).toFixed(0)}, medians of ${ROUNDS} rounds of ${SUBMISSIONS}, ${AT_ONCE} at once, the fit refreshed meanwhile`,
    },
  ];
}
