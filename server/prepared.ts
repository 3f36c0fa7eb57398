import type { Database } from "../db/database.ts";
import { dataRevision } from "../db/decisions.ts";
import type { PublishedFit } from "../model/fit/group.ts";
import type { ScalingAnswer } from "./contract/scaling.ts";
import type { JsonText } from "./json-text.ts";
import { cellsAnswer, shownOf, summedCells } from "./open-documents.ts";
import { type Packed, plain } from "./packed.ts";
import { type Release, Releases, releaseInMemory } from "./release.ts";
import { type ScalingQuestion, scalingAnswer } from "./scaling-answer.ts";

/** Answers made of all tunes, made once for a state of the data and answered to everybody from then on. */
export interface Prepared {
  /** Whether the open data are prepared before anyone asks for one file of them; else that is sent while it is made. */
  hasFiles: boolean;
  /** The open data of now, and those before it that are kept: newest first. */
  releases: () => Promise<readonly [Release, ...Release[]]>;
  /** The cell each kept cell is shown as. */
  shown: () => Promise<ReadonlyMap<string, string>>;
  /** The same for whoever can do without: null while it is made, where that takes long. */
  shownSoon: () => Promise<ReadonlyMap<string, string> | null>;
  /** The answer on tunes summed per shown cell under a parent, or in the world, beside this fit, JSON; and what it was made from. */
  cells: (fit: PublishedFit, parent: string) => Promise<Packed & { made_from: string }>;
  /** How tunes scale with the air beside this fit; and what the answer was made from. */
  scaling: (
    fit: PublishedFit,
    question: ScalingQuestion,
  ) => Promise<{ text: JsonText<ScalingAnswer>; made_from: string }>;
  /** Begins to make what takes long and is always asked for; nobody waits for it. */
  ahead: (fit: PublishedFit) => void;
  /** Gives back the room that files of the open data take on the disk. */
  makeRoom: () => void;
  /** Drops all of it, older revisions too: a tune was withdrawn, revised or decided on. */
  forget: () => void;
}

/** Names a state of the fit and the data, of which an answer is made. */
export const stateOf = ({ version }: PublishedFit, revision: number): string =>
  `${version}.${revision}`;

/** So many answers are kept: a heater has one of a few sizes. */
export const ANSWERS_KEPT = 16;

/** Answers to the questions asked last, all of one state of the fit and the data. */
export class AnswersOfState {
  #state = "";
  readonly #answers = new Map<string, string>();

  async get<Text extends string>(
    state: string,
    question: string,
    make: () => Promise<Text>,
  ): Promise<Text> {
    if (state !== this.#state) this.forget();
    this.#state = state;
    const known = this.#answers.get(question);
    if (known !== undefined) return known as Text;
    const answer = await make();
    // What was withdrawn meanwhile is in no answer that is kept.
    if (state === this.#state) {
      if (this.#answers.size >= ANSWERS_KEPT)
        this.#answers.delete(this.#answers.keys().next().value as string);
      this.#answers.set(question, answer);
    }
    return answer;
  }

  forget(): void {
    this.#state = "";
    this.#answers.clear();
  }
}

/** Rests so many times as long as the last making took, so that making never takes over. */
const REST_SHARE = 5;

/**
 * Keeps the newest of what can be made again; asked for together, it is made once. Where making takes long, what was made before
 * may be answered while it is made anew; what is forgotten is answered to nobody any more.
 */
export class Latest<T> {
  #key: string | undefined;
  #value: Promise<T> | undefined;
  #before: Promise<T> | undefined;
  #rests_until = 0;

  get(key: string, make: () => Promise<T>, mayBeOld = false): Promise<T> {
    const isNewest = key === this.#key;
    if (!this.#value || !mayBeOld) {
      return isNewest && this.#value ? this.#value : this.#make(key, make);
    }
    const isBusy = this.#before !== undefined || performance.now() < this.#rests_until;
    if (!isNewest && !isBusy) {
      const before = this.#value;
      this.#make(key, make);
      this.#before = before;
    }
    return this.#before ?? this.#value;
  }

  #make(key: string, make: () => Promise<T>): Promise<T> {
    const began = performance.now();
    const value = make();
    this.#key = key;
    this.#value = value;
    this.#before = undefined;
    value.then(
      () => {
        if (this.#value !== value) return;
        this.#before = undefined;
        const now = performance.now();
        this.#rests_until = now + REST_SHARE * (now - began);
      },
      () => {
        if (this.#value === value) this.forget();
      },
    );
    return value;
  }

  forget(): void {
    this.#key = undefined;
    this.#value = undefined;
    this.#before = undefined;
    this.#rests_until = 0;
  }
}

/**
 * Makes it in this thread: at the edge, in memory, in most tests. Documents are sent page by page.
 * @param isShared whether others write to the database, of whose withdrawals nobody tells this one: then no older revision is kept
 */
export function preparedHere(db: Database, demo: boolean, isShared = false): Prepared {
  const releases = new Releases(isShared ? 1 : undefined);
  const newest = keptHere(() => releases.keep(releaseInMemory(db, demo)));
  const shown = keptHere(() => shownOf(db));
  const shownNow = async () => shown.get(String(await dataRevision(db)), undefined);
  const answers = new AnswersOfState();
  const cells = keptHere(async (fit: PublishedFit) => summedCells(db, fit, await shownOf(db)));
  return {
    hasFiles: false,
    releases: async () => {
      const now = await newest.get(String(await dataRevision(db)), undefined);
      return [now, ...releases.all.filter(({ revision }) => revision !== now.revision)];
    },
    shown: shownNow,
    shownSoon: shownNow,
    cells: async (fit, parent) => {
      const made_from = stateOf(fit, await dataRevision(db));
      const all = await cells.get(made_from, fit);
      return { ...plain(cellsAnswer(all, parent, demo)), made_from };
    },
    scaling: (fit, question) => scalingHere(db, fit, question, demo, answers),
    ahead: () => {},
    makeRoom: () => {},
    forget: () => {
      for (const kept of [releases, newest, shown, cells, answers]) kept.forget();
    },
  };
}

/** Makes it in this thread, once for a state of the fit and the data. */
export async function scalingHere(
  db: Database,
  fit: PublishedFit,
  question: ScalingQuestion,
  demo: boolean,
  answers: AnswersOfState,
): ReturnType<Prepared["scaling"]> {
  const made_from = stateOf(fit, await dataRevision(db));
  const make = () => scalingAnswer(db, fit, question, demo);
  return { text: await answers.get(made_from, JSON.stringify(question), make), made_from };
}

/** Keeps what was made, not what is being made: at the edge no request may wait for what another one reads. */
function keptHere<T, Of>(make: (of: Of) => Promise<T>) {
  let kept: { key: string; value: T } | undefined;
  return {
    get: async (key: string, of: Of): Promise<T> => {
      if (kept?.key === key) return kept.value;
      const value = await make(of);
      kept = { key, value };
      return value;
    },
    forget: () => {
      kept = undefined;
    },
  };
}
