import { Worker } from "node:worker_threads";
import type { Chunk } from "./chunk-worker.ts";
import type { RunFigures } from "./one-run.ts";

/**
 * Runs the chunks on so many threads, in order of the list, and hands over each one's figures as it is done.
 * @throws whatever a thread throws, naming the chunk
 */
export async function overCores(
  chunks: readonly Chunk[],
  threads: number,
  done: (chunk: Chunk, figures: RunFigures[][]) => void,
): Promise<void> {
  let next = 0;
  const thread = async () => {
    const worker = new Worker(new URL("./chunk-worker.ts", import.meta.url));
    try {
      while (next < chunks.length) {
        const chunk = chunks[next++] as Chunk;
        done(chunk, await ask(worker, chunk));
      }
    } finally {
      await worker.terminate();
    }
  };
  await Promise.all(Array.from({ length: Math.min(threads, chunks.length) }, thread));
}

function ask(worker: Worker, chunk: Chunk): Promise<RunFigures[][]> {
  return new Promise((resolve, reject) => {
    const failed = (cause: unknown) =>
      reject(new Error(`Run ${chunk.first} and after of ${chunk.id} failed.`, { cause }));
    worker.once("error", failed);
    worker.once("message", (figures: RunFigures[][]) => {
      worker.off("error", failed);
      resolve(figures);
    });
    worker.postMessage(chunk);
  });
}
