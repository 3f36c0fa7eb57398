import { closeSync, openSync, rmSync, statSync, writeSync } from "node:fs";
import { join } from "node:path";
import { setTimeout } from "node:timers/promises";
import { goodTune, openTestAtlas, post } from "../server/atlas.ts";

/** What an atlas answered on a disk that was filled under it. */
export interface DiskFilled {
  taken: number;
  /** The first tune that was refused, and readiness then. */
  refused: number;
  ready: number;
  /** Bytes that another program could still write. */
  others_bytes: number;
  /** Of every withdrawal on the full disk, and how large the ballast was after the last. */
  withdrawn: number[];
  ballast_bytes: number;
  /** Once the other program is gone. */
  again: { ready: number; taken: number; ballast_bytes: number };
}

const RESERVE_bytes = 3 * 1024 * 1024;
/** What the disk has left is asked for at most once in so long, ms. */
const ASKED_AGAIN_ms = 1100;

const folder = process.argv[2] as string;
// Refreshes that find no room are not what is looked at.
console.error = () => {};
const atlas = await openTestAtlas({
  file: join(folder, "atlas.db"),
  disk_reserve_bytes: RESERVE_bytes,
});
const { app } = atlas;
const status = async (path: string) => (await app.request(path)).status;
const ballast = () =>
  statSync(join(folder, "atlas.db.ballast"), { throwIfNoEntry: false })?.size ?? 0;
const taken: { id: string; receipt: string }[] = [];
let refused = await post(app, goodTune(0));
while (refused.status === 201) {
  taken.push(await refused.json());
  refused = await post(app, goodTune(taken.length));
}
const ready = await status("/api/ready");

const other = join(folder, "another program's");
const handle = openSync(other, "w");
let others_bytes = 0;
for (const piece of [1024 * 1024, 4096, 1]) {
  try {
    for (;;) others_bytes += writeSync(handle, Buffer.alloc(piece, 1));
  } catch {
    // As much as that is not left.
  }
}
const withdrawn: number[] = [];
for (const { id, receipt } of taken.slice(0, taken.length / 2)) {
  const headers = { Authorization: `Bearer ${receipt}` };
  const { status } = await app.request(`/api/tunes/${id}`, { method: "DELETE", headers });
  withdrawn.push(status);
}
const ballast_bytes = ballast();
closeSync(handle);
rmSync(other);
await setTimeout(ASKED_AGAIN_ms);
const again = {
  ready: await status("/api/ready"),
  taken: (await post(app, goodTune(0))).status,
  ballast_bytes: ballast(),
};
const filled: DiskFilled = {
  ...{ taken: taken.length, refused: refused.status, ready, others_bytes },
  ...{ withdrawn, ballast_bytes, again },
};
console.log(JSON.stringify(filled));
process.exit();
