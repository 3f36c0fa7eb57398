import { spawn } from "node:child_process";
import { once } from "node:events";

/** Another process that holds a database as a backup tool, a shell or a stray script might. */
export interface HoldingProcess {
  /** Lets go of the database and ends. */
  release: () => Promise<void>;
}

const HOLD = `
const { DatabaseSync } = require("node:sqlite");
const database = new DatabaseSync(process.argv[1], { timeout: 60000 });
database.exec(process.argv[2]);
console.log("held");
process.stdin.once("data", () => { database.exec("ROLLBACK"); database.close(); process.exit(0); });
`;

/** @param how "BEGIN IMMEDIATE": nobody else writes; "BEGIN EXCLUSIVE" beside a file without WAL: nobody else reads either */
export async function holdDatabase(file: string, how = "BEGIN IMMEDIATE"): Promise<HoldingProcess> {
  const child = spawn(process.execPath, ["-e", HOLD, file, how], {
    stdio: ["pipe", "pipe", "inherit"],
  });
  const ended = once(child, "exit");
  await once(child.stdout, "data");
  return {
    release: async () => {
      child.stdin.end("release\n");
      await ended;
    },
  };
}
