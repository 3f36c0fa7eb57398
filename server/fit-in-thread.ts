import { setImmediate } from "node:timers/promises";
import { Worker } from "node:worker_threads";
import type { FitRow } from "../model/fit/row.ts";
import type { ToFitThread } from "./fit-thread.ts";
import type { Fitted, MakeFit } from "./fitted.ts";

/** Handing over so many rows takes a few milliseconds; requests are answered between the parts. */
const ROWS_AT_ONCE = 2000;

/** Makes fits in a thread of its own, one after another, so that no request waits for one. It begins with the first fit. */
export class FitThread {
  #worker: Worker | undefined;
  #last: Promise<unknown> = Promise.resolve();

  readonly fit: MakeFit = (rows, before) => this.#next(() => this.#fit(rows, before));

  /** The same for a fit that is made now and then: the thread, and what it holds in memory, ends with it. */
  readonly fitOnce: MakeFit = (rows, before) =>
    this.#next(() => this.#fit(rows, before).finally(() => this.close()));

  #next<T>(make: () => Promise<T>): Promise<T> {
    const made = this.#last.then(make);
    this.#last = made.catch(() => {});
    return made;
  }

  readonly #fit = async (...[rows, before]: Parameters<MakeFit>): Promise<Fitted> => {
    this.#worker ??= new Worker(new URL("./fit-thread.ts", import.meta.url));
    const worker = this.#worker;
    // An idle thread does not keep the process alive.
    worker.ref();
    const done = answerOf(worker);
    try {
      await handOver(worker, rows);
      worker.postMessage({ before: [...before] } satisfies ToFitThread);
      return await done;
    } catch (error) {
      // What it still holds would be fitted again with the next rows.
      await this.close();
      throw error;
    } finally {
      worker.unref();
    }
  };

  async close(): Promise<void> {
    const worker = this.#worker;
    this.#worker = undefined;
    await worker?.terminate();
  }
}

async function handOver(worker: Worker, rows: readonly FitRow[]): Promise<void> {
  for (let from = 0; from < rows.length; from += ROWS_AT_ONCE) {
    worker.postMessage({ rows: rows.slice(from, from + ROWS_AT_ONCE) } satisfies ToFitThread);
    await setImmediate();
  }
}

function answerOf(worker: Worker): Promise<Fitted> {
  return new Promise((resolve, reject) => {
    const ended = (code: number) => reject(new Error(`The fit's thread ended with ${code}.`));
    const settled = () => {
      worker.off("error", failed).off("exit", ended).off("message", answered);
    };
    const failed = (error: unknown) => {
      settled();
      reject(error);
    };
    const answered = (answer: Fitted) => {
      settled();
      resolve(answer);
    };
    worker.once("error", failed).once("exit", ended).once("message", answered);
  });
}
