import { spawn } from "node:child_process";
import { load } from "./load.ts";
import { scenario } from "./scenario.ts";

/** How long the first start may take: places, elevations and the page are built then. */
const PATIENCE_ms = 300_000;

interface Health {
  demo: boolean;
  tunes: number;
  fit: string;
  fit_pending: boolean;
}

const port = process.env.PORT || "8787";
const origin = `http://localhost:${port}`;
const server = spawn(process.execPath, ["server/node.ts", "--demo"], { stdio: "inherit" });
server.on("exit", (code) => process.exit(code ?? 1));
for (const signal of ["SIGINT", "SIGTERM"] as const) process.on(signal, () => server.kill(signal));

async function until(good: (health: Health) => boolean): Promise<Health> {
  const end = Date.now() + PATIENCE_ms;
  while (Date.now() < end) {
    const health = await fetch(`${origin}/api/health`).then(
      (r) => r.json() as Promise<Health>,
      () => undefined,
    );
    if (health && good(health)) return health;
    await new Promise((done) => setTimeout(done, 200));
  }
  throw new Error("The atlas did not come up in time.");
}

async function tunesInFit(): Promise<number> {
  const response = await fetch(`${origin}/api/fit`);
  const { groups } = (await response.json()) as {
    groups: { end: string; tunes: number; rejected: number }[];
  };
  return groups
    .filter(({ end }) => end === "low")
    .reduce((sum, { tunes, rejected }) => sum + tunes + rejected, 0);
}

const { tunes, demo } = await until(() => true);
if (!demo) {
  server.kill();
  console.error(
    `Another atlas, not a demo, answers at ${origin}: nothing was sent to it. Set PORT to another one.`,
  );
  process.exit(1);
}
let accepted = 0;
const planted = scenario();
if (tunes < planted.length) {
  console.log(`Sending ${planted.length} invented tunes of the Long Night Society …`);
  accepted = await load(origin, planted);
}
while ((await tunesInFit()) < accepted) await new Promise((done) => setTimeout(done, 200));
const { fit } = await until((h) => h.fit !== "prior" && !h.fit_pending);
console.log(`Demo ready (fit ${fit}): open ${origin} and look for a mountain town, say Leadville.`);
