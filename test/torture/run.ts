import { parseArgs } from "node:util";
import { throwAtEveryRoute } from "./described.ts";
import { fillDisk } from "./disk.ts";
import { floodAtlas } from "./flood.ts";
import { killUnderLoad } from "./killed.ts";
import { lockUnderLoad } from "./locked.ts";
import { readMany } from "./readers.ts";
import { throwWithinBounds } from "./within-bounds.ts";

/** Every attack and fault in full; each throws when the atlas did not hold. */
const TORTURES: Record<string, () => Promise<string>> = {
  "within-bounds": async () => {
    const seen = await throwWithinBounds(100_000, Date.now() % 1_000_000);
    const statuses = [...seen].toSorted().map(([status, count]) => `${count} × ${status}`);
    return `100,000 bodies within the schema's bounds: ${statuses.join(", ")}, nothing else`;
  },
  described: async () => {
    const seen = await throwAtEveryRoute(2000, Date.now() % 1_000_000);
    const sent = [...seen.values()].flatMap((statuses) => [...statuses.values()]);
    const count = sent.reduce((sum, n) => sum + n, 0);
    return `${count} requests to ${seen.size} routes, made from the description: nothing that it does not name`;
  },
  flood: async () => {
    const { taken, refused, honest, took_ms } = await floodAtlas(20_000, 40);
    if (refused.size !== 1 || honest.some((status) => status !== 201))
      throw new Error(`refused with ${[...refused]}; owners got ${honest}`);
    const [half, longest] = [took_ms.toSorted((a, b) => a - b)[20], Math.max(...took_ms)];
    return `20,000 tunes from as many networks: ${taken} got in, and all of 40 owners, half of them within ${Math.round(half ?? 0)} ms, all within ${Math.round(longest)}`;
  },
  disk: async () => {
    const filled = fillDisk();
    const { taken, refused, ready, others_bytes, withdrawn, again } = filled;
    const held =
      refused === 507 && ready === 503 && others_bytes > 0 && withdrawn.every((s) => s === 204);
    if (!held || again.ready !== 200 || again.taken !== 201)
      throw new Error(JSON.stringify(filled));
    return `a disk full to the last byte: ${taken} tunes taken before its reserve, all of ${withdrawn.length} withdrawals done, the ballast there again (${again.ballast_bytes} bytes), tunes taken once there was room`;
  },
  killed: async () => {
    const { acknowledged, lost, stored, meant } = await killUnderLoad(30);
    if (lost.length > 0 || stored > meant)
      throw new Error(`lost: ${lost}; stored ${stored} of ${meant}`);
    return `30 kills under load: ${acknowledged} tunes acknowledged, none lost, none doubled`;
  },
  locked: async () => {
    const { during, after, read, ready, recovered_ms } = await lockUnderLoad(60_000);
    const others = [...during.keys(), ...after.keys()].filter((s) => s !== 201 && s !== 503);
    if (others.length > 0 || read !== 200 || ready !== 503) {
      throw new Error(`statuses ${others}, read ${read}, ready ${ready}`);
    }
    return `held by another process for a minute: ${during.get(503)} writes told to come again, reads answered, the first write ${Math.round(recovered_ms)} ms after its release`;
  },
  readers: async () => {
    const { idle_ms, preparing_ms, reading_ms, read } = await readMany(100_000);
    const ms = (value: number) => `${value.toFixed(1)} ms`;
    const times = (value: number) => `${ms(value)} (${(value / idle_ms).toFixed(1)} × idle)`;
    return `exports and cells of 100,000 tunes with eight readers: 99 in 100 start tunes within ${ms(idle_ms)} idle, ${times(preparing_ms)} while they are prepared, ${times(reading_ms)} while they are read (${read} times); 5 × is the goal on two cores without other work`;
  },
};

const { only } = parseArgs({ options: { only: { type: "string" } } }).values;
const chosen = Object.entries(TORTURES).filter(([name]) => !only || name === only);
if (chosen.length === 0)
  throw new Error(`--only takes one of: ${Object.keys(TORTURES).join(", ")}.`);
for (const [name, torture] of chosen) {
  console.log(`${name} …`);
  console.log(`  ${await torture()}`);
}
