import { spawn } from "node:child_process";

/** The server, started again at every change, and Vite's development page in front of it. */
const children = [
  spawn(process.execPath, ["--watch", "server/node.ts"], { stdio: "inherit" }),
  spawn(process.execPath, ["node_modules/vite/bin/vite.js"], { stdio: "inherit" }),
];
for (const signal of ["SIGINT", "SIGTERM"] as const) {
  process.on(signal, () => children.forEach((child) => void child.kill(signal)));
}
