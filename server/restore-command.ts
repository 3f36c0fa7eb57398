import { restore } from "./backup.ts";
import { runOnFolder } from "./on-folder.ts";
import { settingsFrom } from "./settings.ts";

await runOnFolder("restore", async (folder) => {
  const { database, secret } = settingsFrom(process.env, process.argv.includes("--demo"));
  const { tunes, fit } = await restore(folder, secret, database);
  return `${database} holds ${tunes} tunes (fit ${fit ?? "none yet"}) and has its secret beside it. Start the atlas.`;
});
