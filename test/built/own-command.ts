import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { ensureGeography } from "../../server/geography/build.ts";

/** The server as its own command runs it, in a process of its own. */
export interface OwnServer {
  url: string;
  process: ChildProcess;
  /** How it ended: its code, or the signal that killed it. */
  ended: Promise<number | string>;
  /** What it wrote to standard error so far. */
  complaints: () => string;
}

/** Starts a server on a file, on a port that the system gives, and waits until it is open or has ended. */
export async function ownServer(
  file: string,
  env: Record<string, string> = {},
  ...options: string[]
): Promise<OwnServer> {
  await ensureGeography("data/geography", { log: () => {} });
  const server = spawn("node_modules/.bin/node", ["server/node.ts", ...options], {
    env: {
      ...process.env,
      PORT: "0",
      ATLAS_DB: file,
      WRITE_LIMIT: "0",
      READ_LIMIT: "0",
      FLOOD_LIMIT: "0",
      NEW_KEY_DAYS: "0",
      ...env,
    },
    stdio: ["ignore", "pipe", "pipe"],
  });
  const ended = once(server, "exit").then(([code, signal]) => code ?? signal);
  let [said, complained] = ["", ""];
  server.stderr.on("data", (text) => {
    complained += text;
  });
  const open = new Promise<string>((known) => {
    server.stdout.on("data", (text) => {
      said += text;
      const [, address] = /open at (http:\/\/\S+:\d+)\s/.exec(said) ?? [];
      if (address) known(address);
    });
  });
  const url = await Promise.race([open, ended.then(() => "")]);
  return { url, process: server, ended, complaints: () => complained };
}
