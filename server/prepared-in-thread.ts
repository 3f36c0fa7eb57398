import { Worker } from "node:worker_threads";
import type { Database } from "../db/database.ts";
import { dataRevision } from "../db/tunes.ts";
import type { Cell } from "./contract.ts";
import { DOCUMENTS, type DocumentName } from "./open-documents.ts";
import type { FromPrepareThread, Order, ToPrepareThread } from "./prepare-thread.ts";
import { Latest, type Prepared } from "./prepared.ts";

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
  const documents = Object.fromEntries(
    DOCUMENTS.map((name) => [name, new Latest<Uint8Array<ArrayBuffer>>()]),
  ) as Record<DocumentName, Latest<Uint8Array<ArrayBuffer>>>;
  const shown = new Latest<ReadonlyMap<string, string>>();
  const cells = new Latest<readonly Cell[]>();
  const revision = async () => String(await dataRevision(db));
  return {
    document: async (name) =>
      documents[name].get(await revision(), () =>
        threads.documents.make({ make: "document", name, demo }),
      ),
    shown: async () => shown.get(await revision(), () => threads.cells.make({ make: "shown" })),
    cells: async (fit) =>
      cells.get(`${fit.version}.${await revision()}`, () =>
        threads.cells.make({ make: "cells", fit }),
      ),
    forget: () => {
      for (const kept of [...Object.values(documents), shown, cells]) kept.forget();
    },
    close: async () => {
      await Promise.all(Object.values(threads).map((thread) => thread.close()));
    },
  };
}
