import { backUp } from "./backup.ts";
import { settingsFrom } from "./node.ts";
import { runOnFolder } from "./on-folder.ts";

await runOnFolder("backup", async (folder) => {
  const { database, secret } = settingsFrom(process.env, process.argv.includes("--demo"));
  const { tunes, fit } = await backUp(database, secret, folder);
  return `${folder} holds ${tunes} tunes (fit ${fit ?? "none yet"}) of ${database} and their secret. Keep it where nobody else reads it.`;
});
