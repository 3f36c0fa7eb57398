import { Worker } from "node:worker_threads";
import { fileTrouble } from "../db/disk.ts";
import { OWNERS_MOST } from "../model/bounded-fit.ts";
import type { FromFitThread, ToFitThread } from "./fit-thread.ts";
import type { FitMaker, Made, Trial } from "./fitted.ts";
import { errorOf } from "./thread-failure.ts";
import { Turns } from "./turns.ts";

/**
 * What a sample of the owners of a size holds is bounded: 200 MB suffice for a million tunes of three sizes, 160 do not. Without a limit
 * what is passed over would pile up before it is cleared away.
 */
const HEAP_MB = 256;
/** What is young is cleared away so much at a time: more of it would take memory and gain nothing. */
const YOUNG_MB = 16;

/** A thread reads the file by itself and makes one fit after another, so that no request waits for one. It begins with the first. */
class FitThread {
  readonly #turns: Turns;
  #worker: Worker | undefined;
  #heap_MB = HEAP_MB;

  constructor(turns: Turns) {
    this.#turns = turns;
  }

  /** @param isOver whether the thread, and what it holds in memory, ends with what was made */
  make<T>(order: ToFitThread, isOver: (made: T) => boolean): Promise<T> {
    return this.#turns.take(() => this.#make<T>(order, isOver));
  }

  async #make<T>(order: ToFitThread, isOver: (made: T) => boolean): Promise<T> {
    this.#worker ??= new Worker(new URL("./fit-thread.ts", import.meta.url), {
      resourceLimits: {
        maxOldGenerationSizeMb: this.#heap_MB,
        maxYoungGenerationSizeMb: YOUNG_MB,
      },
    });
    const worker = this.#worker;
    // An idle thread does not keep the process alive.
    worker.ref();
    try {
      const answer = answerOf<T>(worker);
      worker.postMessage(order);
      const made = await answer;
      if (isOver(made)) await this.close();
      return made;
    } catch (error) {
      // So many sizes that their owners need more: the next try has it.
      if (isOutOfMemory(error)) this.#heap_MB *= 2;
      await this.close();
      throw error;
    } finally {
      worker.unref();
    }
  }

  async close(): Promise<void> {
    const worker = this.#worker;
    this.#worker = undefined;
    await worker?.terminate();
  }
}

const isOutOfMemory = (error: unknown) =>
  (error as NodeJS.ErrnoException).code === "ERR_WORKER_OUT_OF_MEMORY";

/**
 * Makes the fits of a database's file in threads, a steward's trials in one of their own; and how to end them.
 * @param turns taken with what else passes over all tunes; a steward waits for none of it
 */
export function fitsInThread(
  file: string,
  turns = new Turns(),
): FitMaker & { close: () => Promise<void> } {
  const [thread, trials] = [new FitThread(turns), new FitThread(new Turns())];
  return {
    // What passing over very many tunes took of memory is given back.
    fit: (fit) => thread.make<Made>({ file, fit }, ({ tunes }) => tunes > OWNERS_MOST),
    without: (without) => trials.make<Trial>({ file, without }, () => true),
    close: async () => {
      await Promise.all([thread.close(), trials.close()]);
    },
  };
}

function answerOf<T>(worker: Worker): Promise<T> {
  return new Promise((resolve, reject) => {
    const ended = (code: number) => reject(new Error(`The fit's thread ended with ${code}.`));
    const settled = () => {
      worker.off("error", failed).off("exit", ended).off("message", answered);
    };
    const failed = (error: unknown) => {
      settled();
      reject(fileTrouble(error) ?? error);
    };
    const answered = (answer: FromFitThread) => {
      settled();
      if ("failed" in answer) reject(errorOf(answer));
      else resolve(answer.made as T);
    };
    worker.once("error", failed).once("exit", ended).once("message", answered);
  });
}
