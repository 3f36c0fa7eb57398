import { expect, test } from "vitest";
import type { Tune } from "../../model/tune.ts";
import { FitKeeper } from "../../server/published-fit.ts";
import { goodTune, openTestAtlas, post, type TestAtlas } from "./atlas.ts";

/** A tune from a cell of its own, so that every contributor has a whole vote; `times` its mixture. */
function tuneAt(n: number, times = 1): Tune {
  const good = goodTune(n);
  return {
    ...good,
    site: { elevation_m: good.site.elevation_m },
    low: { ...good.low, pump_Hz: Math.round(1100 * times * (1 + 0.05 * Math.sin(n))) / 1000 },
  };
}

async function byReceipt(atlas: TestAtlas, { id, receipt }: { id: string; receipt: string }) {
  const headers = { Authorization: `Bearer ${receipt}` };
  return (await atlas.app.request(`/api/tunes/${id}`, { headers })).json();
}

const ofFit = (tune: {
  decisions: { by: string; verdict: string; reasons: { sentence: string }[] }[];
}) => tune.decisions.filter((d) => d.by === "fit");

test("a tune is set aside with figures, comes back when later tunes support it, and its receipt tells", async () => {
  const atlas = await openTestAtlas();
  for (let n = 0; n < 30; n++) await post(atlas.app, tuneAt(n));
  const odd = await (await post(atlas.app, tuneAt(900, 1.55))).json();
  expect(odd.verdict).toBe("accepted");
  await atlas.fit.refresh();
  const aside = await byReceipt(atlas, odd);
  expect(aside.fit.low).toBe("rejected");
  expect(aside.fit.high).toBe("kept");
  expect(ofFit(aside)).toHaveLength(1);
  expect(ofFit(aside)[0]?.reasons[0]?.sentence).toMatch(
    /^Far richer than 30 similar tunes at the (lowest|highest) power: \d+ % of/,
  );

  // Another keeper over the same database, as after a restart, has nothing to add.
  const again = new FitKeeper({
    db: atlas.db,
    now: () => new Date("2026-11-26T00:00:00Z"),
    demo: false,
    believe_ms: Number.POSITIVE_INFINITY,
    newKeyDays: 0,
  });
  await again.refresh();
  expect(ofFit(await byReceipt(atlas, odd))).toHaveLength(1);

  for (let n = 0; n < 120; n++) await post(atlas.app, tuneAt(1000 + n, 1.5));
  await atlas.fit.refresh();
  const back = await byReceipt(atlas, odd);
  expect(back.fit.low).toBe("kept");
  expect(ofFit(back).map((d) => d.verdict)).toEqual(["rejected", "accepted"]);
  expect(ofFit(back)[1]?.reasons[0]?.sentence).toBe(
    "Later tunes support the lowest power: it counts again.",
  );
  await atlas.close();
});
