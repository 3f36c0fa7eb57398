import { Worker } from "node:worker_threads";
import type { Database } from "../db/database.ts";
import { dataRevision } from "../db/decisions.ts";
import { fileTrouble } from "../db/disk.ts";
import { ownPath } from "../db/file-state.ts";
import { DOCUMENTS, type DocumentName, WORLD } from "./open-documents.ts";
import type { Packed } from "./packed.ts";
import type {
  FromPrepareThread,
  InFile,
  InMemory,
  Order,
  ToPrepareThread,
} from "./prepare-thread.ts";
import {
  ANSWERS_KEPT,
  AnswersOfState,
  Latest,
  type Prepared,
  scalingHere,
  stateOf,
} from "./prepared.ts";
import { type Made, type Release, Releases } from "./release.ts";
import { inMemory } from "./stored.ts";
import { errorOf } from "./thread-failure.ts";
import { Turns } from "./turns.ts";
import { UnnamedFile } from "./unnamed-file.ts";

/** Parent cells whose answers are kept: there are 122 coarsest ones, and people look at few. */
const PARENTS_KEPT = 500;

/**
 * Where so much was ever decided there are tens of thousands of tunes: passing over them takes seconds, and answers may be
 * a little older than the newest tune. What somebody took out of sight is in none of them.
 */
const LARGE = 50_000;

/**
 * Little is held of all that is passed over; without limits it would pile up before it is cleared away. What a page of tunes
 * leaves behind is cleared away as young.
 */
const HEAP = { maxOldGenerationSizeMb: 128, maxYoungGenerationSizeMb: 16 };

type Scaling = Awaited<ReturnType<Prepared["scaling"]>>;

/** What is kept of each of many names, and of the newest ones alone. */
function latestOf<T>(kept: Map<string, Latest<T>>, name: string, most: number): Latest<T> {
  const one = kept.get(name) ?? new Latest<T>();
  if (!kept.has(name) && kept.size >= most) kept.delete(kept.keys().next().value as string);
  kept.set(name, one);
  return one;
}

/** A thread that makes what takes long, over a connection of its own to the database's file. It begins with the first order. */
class PrepareThread {
  readonly #file: string;
  readonly #waiting = new Map<
    number,
    { done: (made: never) => void; failed: (error: unknown) => void }
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

  /** The next order begins it anew. */
  async end(): Promise<void> {
    await this.#worker?.terminate();
  }

  #start(): Worker {
    const worker = new Worker(new URL("./prepare-thread.ts", import.meta.url), {
      resourceLimits: HEAP,
    });
    worker.unref();
    worker.on("message", (answer: FromPrepareThread) => {
      const waiting = this.#waiting.get(answer.number);
      this.#waiting.delete(answer.number);
      if ("failed" in answer) waiting?.failed(errorOf(answer));
      else waiting?.done(answer.made as never);
    });
    const ended = (why: unknown) => {
      this.#worker = undefined;
      const error = fileTrouble(why) ?? new Error(`It ended: ${why}`);
      for (const { failed } of this.#waiting.values()) failed(error);
      this.#waiting.clear();
    };
    worker.on("error", ended).on("exit", ended);
    return worker;
  }
}

/**
 * Makes it in threads, so that no request waits for what another one asked for; and how to end them. Open data are files beside the
 * database.
 * @param reserve_bytes what the disk must have left for tunes to be taken: files leave it twice that
 * @param turns taken with the fits, by exports and by what else is made of very many tunes
 */
export function preparedInThread(
  db: Database,
  file: string,
  demo: boolean,
  reserve_bytes = 0,
  turns = new Turns(),
): Prepared & { close: () => Promise<void> } {
  // Cells are made in a moment beside an export of everything, and do not stand in line behind one.
  const threads = { documents: new PrepareThread(file), cells: new PrepareThread(file) };
  const releases = new Releases();
  const newest = new Latest<Release>();
  const shown = new Latest<ReadonlyMap<string, string>>();
  /** Answers by parent. */
  const cells = new Map<string, Latest<Packed & { made_from: string }>>();
  const answers = new AnswersOfState();
  /** Answers on scaling by question, where there are so many tunes that they are made in a thread. */
  const scalings = new Map<string, Latest<Scaling>>();
  const kept = async <T>(latest: Latest<T>, make: () => Promise<T>): Promise<T> => {
    const revision = await dataRevision(db);
    return latest.get(String(revision), make, revision > LARGE);
  };
  const makeRelease = async (): Promise<Release> => {
    const files = new Map<DocumentName, UnnamedFile>();
    const drop = () => {
      for (const one of files.values()) one.drop();
    };
    try {
      for (const name of DOCUMENTS) files.set(name, new UnnamedFile(ownPath(file)));
      const into = [...files.values()].map(({ descriptor }) => descriptor);
      const order: Order = {
        ...{ make: "release", demo, into },
        // As much again: tunes that come later find room before the files must go.
        reserve_bytes: 2 * reserve_bytes,
      };
      const made = await turns.take(async () => {
        const release = await threads.documents.make<Made<InFile>>(order);
        // What passing over very many tunes took of memory is given back.
        if (release.data_revision > LARGE) await threads.documents.end();
        return release;
      });
      const stored = made.files.map(({ length, ...of }) => ({
        ...of,
        stored: Object.assign(files.get(of.name) as UnnamedFile, { length }),
      }));
      return { ...made, files: stored, drop };
    } catch (error) {
      drop();
      throw fileTrouble(error) ?? error;
    }
  };
  /** Of very many tunes: beside a fit they would take more memory than either may. */
  const inTurn = <T>(revision: number, order: Order): Promise<T> => {
    const make = () => threads.cells.make<T>(order);
    return revision > LARGE ? turns.take(make) : make();
  };
  const makeShown = async () =>
    inTurn<ReadonlyMap<string, string>>(await dataRevision(db), { make: "shown" });
  const shownNow = () => kept(shown, makeShown);
  const cellsOf: Prepared["cells"] = async (fit, parent) => {
    const revision = await dataRevision(db);
    const made_from = stateOf(fit, revision);
    const order: Order = { make: "cells", fit, parent, demo, state: made_from };
    const make = async () => {
      const { bytes, pieces } = await inTurn<InMemory>(revision, order);
      return { stored: inMemory(bytes), pieces, made_from };
    };
    return latestOf(cells, parent, PARENTS_KEPT).get(made_from, make, revision > LARGE);
  };
  const scalingOf: Prepared["scaling"] = async (fit, question) => {
    const revision = await dataRevision(db);
    if (revision <= LARGE) return scalingHere(db, fit, question, demo, answers);
    const made_from = stateOf(fit, revision);
    const order: Order = { make: "scaling", fit, question, demo };
    const make = async () => ({
      text: await threads.cells.make<Scaling["text"]>(order),
      made_from,
    });
    const latest = latestOf(scalings, JSON.stringify(question), ANSWERS_KEPT);
    return latest.get(made_from, make, true);
  };
  return {
    hasFiles: true,
    releases: async () => {
      const now = await kept(newest, () => releases.keep(makeRelease()));
      return [now, ...releases.all.filter((before) => before.revision !== now.revision)];
    },
    shown: shownNow,
    shownSoon: async () => {
      const revision = await dataRevision(db);
      if (revision <= LARGE) return shownNow();
      // What is there already comes first.
      return Promise.race([shown.get(String(revision), makeShown, true), null]);
    },
    cells: cellsOf,
    scaling: scalingOf,
    ahead: (fit) => {
      const all = async () => {
        if ((await dataRevision(db)) <= LARGE) return;
        const questions = fit.groups.map(({ heat_kW, end }) => ({ heat_kW, end }));
        await Promise.all([
          ...questions.map((question) => scalingOf(fit, question)),
          shownNow(),
          cellsOf(fit, WORLD),
        ]);
      };
      // What failed is tried again when somebody asks for it.
      all().catch(() => {});
    },
    makeRoom: () => {
      for (const one of [releases, newest]) one.forget();
    },
    forget: () => {
      for (const one of [releases, newest, shown, answers]) one.forget();
      cells.clear();
      scalings.clear();
    },
    close: async () => {
      releases.forget();
      await Promise.all(Object.values(threads).map((thread) => thread.end()));
    },
  };
}
