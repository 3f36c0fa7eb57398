import { Worker } from "node:worker_threads";
import type { Database } from "../db/database.ts";
import { dataRevision } from "../db/tunes.ts";
import type { Packed } from "./packed.ts";
import type { FromPrepareThread, Order, ToPrepareThread } from "./prepare-thread.ts";
import { AnswersOfState, Latest, type Prepared, stateOf } from "./prepared.ts";
import { type Release, Releases } from "./release.ts";

/** Parent cells whose answers are kept: there are 122 coarsest ones, and people look at few. */
const PARENTS_KEPT = 500;

/**
 * Where so much was ever decided there are tens of thousands of tunes: passing over them takes seconds, and answers may be
 * a little older than the newest tune. What somebody took out of sight is in none of them.
 */
const LARGE = 50_000;

/** A thread that makes what takes long, over a connection of its own to the database's file. It begins with the first order. */
class PrepareThread {
  readonly #file: string;
  readonly #waiting = new Map<
    number,
    { done: (made: never) => void; failed: (e: Error) => void }
  >();
  #worker: Worker | undefined;
  #number = 0;

  constructor(file: string) {
    this.#file = file;
  }

  make<T>(order: Order): Promise<T> {
    this.#worker ??= this.#start();
    const number = this.#number++;
    const message: ToPrepareThread = { number, file: this.#file, order };
    this.#worker.postMessage(message);
    return new Promise<T>((done, failed) => {
      this.#waiting.set(number, { done, failed });
    });
  }

  async close(): Promise<void> {
    await this.#worker?.terminate();
  }

  #start(): Worker {
    const worker = new Worker(new URL("./prepare-thread.ts", import.meta.url));
    worker.unref();
    worker.on("message", (answer: FromPrepareThread) => {
      const waiting = this.#waiting.get(answer.number);
      this.#waiting.delete(answer.number);
      if ("error" in answer) waiting?.failed(new Error(answer.error));
      else waiting?.done(answer.made as never);
    });
    const ended = (why: unknown) => {
      this.#worker = undefined;
      for (const { failed } of this.#waiting.values()) failed(new Error(`It ended: ${why}`));
      this.#waiting.clear();
    };
    worker.on("error", ended).on("exit", ended);
    return worker;
  }
}

/** Makes it in threads, so that no request waits for what another one asked for; and how to end them. */
export function preparedInThread(
  db: Database,
  file: string,
  demo: boolean,
): Prepared & { close: () => Promise<void> } {
  // Cells are made in a moment beside an export of everything, and do not stand in line behind one.
  const threads = { documents: new PrepareThread(file), cells: new PrepareThread(file) };
  const releases = new Releases();
  const newest = new Latest<Release>();
  const shown = new Latest<ReadonlyMap<string, string>>();
  /** Answers by parent. */
  const cells = new Map<string, Latest<Packed & { made_from: string }>>();
  const answers = new AnswersOfState();
  const kept = async <T>(latest: Latest<T>, make: () => Promise<T>): Promise<T> => {
    const revision = await dataRevision(db);
    return latest.get(String(revision), make, revision > LARGE);
  };
  return {
    hasFiles: true,
    releases: async () => {
      const now = await kept(newest, () =>
        releases.keep(threads.documents.make<Release>({ make: "release", demo })),
      );
      return [now, ...releases.all.filter((before) => before.revision !== now.revision)];
    },
    shown: () => kept(shown, () => threads.cells.make({ make: "shown" })),
    cells: async (fit, parent) => {
      const revision = await dataRevision(db);
      const made_from = stateOf(fit, revision);
      const answer = cells.get(parent) ?? new Latest();
      if (cells.size >= PARENTS_KEPT) cells.delete(cells.keys().next().value as string);
      cells.set(parent, answer);
      const order: Order = { make: "cells", fit, parent, demo, state: made_from };
      const make = async () => ({ ...(await threads.cells.make<Packed>(order)), made_from });
      return answer.get(made_from, make, revision > LARGE);
    },
    answers,
    forget: () => {
      for (const one of [releases, newest, shown, answers]) one.forget();
      cells.clear();
    },
    close: async () => {
      await Promise.all(Object.values(threads).map((thread) => thread.close()));
    },
  };
}
