import { parseArgs } from "node:util";
import { type Moved, moveFromEdge, moveToEdge, secretFromEdge, secretToEdge } from "./move.ts";
import { settingsFrom } from "./settings.ts";

const USAGE =
  "npm run move -- data/atlas.db d1, or npm run move -- d1 data/new.db [--local] [--config FILE.toml]";
/** The database that wrangler.toml names. */
const EDGE = "d1";

const table = (moved: Moved) =>
  Object.entries(moved).map(([name, { rows, sha256 }]) => `${sha256}  ${name}, ${rows} rows`);

try {
  const { positionals, values } = parseArgs({
    allowPositionals: true,
    options: { local: { type: "boolean", default: false }, config: { type: "string" } },
  });
  const [from = "", to = "", ...more] = positionals;
  if (!from || !to || more.length > 0 || (from === EDGE) === (to === EDGE)) {
    throw new Error(`Name where from and where to, one of them ${EDGE}. Usage: ${USAGE}`);
  }
  const { secret } = settingsFrom(process.env, false);
  const moved =
    to === EDGE ? await moveToEdge(from, secret, values) : await moveFromEdge(values, to);
  console.log(table(moved).join("\n"));
  console.log(to === EDGE ? secretToEdge(from) : secretFromEdge(to));
} catch (error) {
  console.error((error as Error).message);
  process.exitCode = 1;
}
