import { Hono } from "hono";
import { goodTune, openTestAtlas, post } from "../server/atlas.ts";
import type { Result } from "./run.ts";

const REQUESTS = 3000;
const ROUNDS = 5;

/** GET /api/start over many different questions against a bare Hono JSON route, both without a socket. */
export async function bench(): Promise<Result[]> {
  const atlas = await openTestAtlas();
  for (let n = 0; n < 30; n++) await post(atlas.app, goodTune(n));
  await atlas.fit.refresh();
  const bare = new Hono().get("/api/start", (c) =>
    c.json({ elevation_m: c.req.query("elevation_m") }),
  );
  const ask = async (app: Hono) => {
    const t0 = performance.now();
    for (let i = 0; i < REQUESTS; i++) {
      const response = await app.request(
        `/api/start?heat_kW=5&elevation_m=${i}&temperature_C=${-(i % 20)}`,
      );
      if (response.status !== 200) throw new Error(`status ${response.status}`);
      await response.text();
    }
    return REQUESTS / ((performance.now() - t0) / 1000);
  };
  await ask(atlas.app);
  await ask(bare);
  const ratios: number[] = [];
  for (let round = 0; round < ROUNDS; round++)
    ratios.push((await ask(atlas.app)) / (await ask(bare)));
  await atlas.close();
  const ratio = ratios.toSorted((a, b) => a - b)[Math.floor(ROUNDS / 2)] as number;
  return [
    {
      name: "GET /api/start ÷ a bare JSON route, requests a second",
      ratio,
      limit: 0.5,
      better: "higher",
      detail: `median of ${ROUNDS} rounds of ${REQUESTS}, in process, without a socket`,
    },
  ];
}
