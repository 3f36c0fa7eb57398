import { restore } from "./backup.ts";
import { runOnFolder } from "./on-folder.ts";
import { settingsFrom } from "./settings.ts";

await runOnFolder("restore", async (folder) => {
  const { database, secret } = settingsFrom(process.env, process.argv.includes("--demo"));
  const { tunes, fit } = await restore(folder, database);
  const mind = secret ? " ATLAS_SECRET is set: it must be the secret it was backed up with." : "";
  return `${database} holds ${tunes} tunes (fit ${fit ?? "none yet"}) and has its secret beside it.${mind} Start the atlas.`;
});
