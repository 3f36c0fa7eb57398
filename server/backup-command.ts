import { backUp } from "./backup.ts";
import { runOnFolder } from "./on-folder.ts";
import { settingsFrom } from "./settings.ts";

await runOnFolder("backup", async (folder) => {
  const { database, secret } = settingsFrom(process.env, process.argv.includes("--demo"));
  const { tunes, fit } = await backUp(database, secret, folder);
  return `${folder} holds ${tunes} tunes (fit ${fit ?? "none yet"}) of ${database} and their secret. Keep it where nobody else reads it.`;
});
