import type { Database } from "../db/database.ts";
import { dataRevision } from "../db/decisions.ts";
import { findRefusal } from "../db/refusal.ts";
import { fingerprint } from "../model/fit/fingerprint.ts";
import type { FitRow } from "../model/fit/row.ts";
import { fitInSteps, type Uncounted } from "../model/fit-in-steps.ts";
import type { ObjectState, ObjectStorage } from "./durable.ts";
import { type Bindings, databaseOf, newKeyDaysOf } from "./edge-settings.ts";
import { type FitMaker, fitsHere } from "./fitted.ts";
import { countDue } from "./new-keys.ts";
import { FitKeeper } from "./published-fit.ts";
import { CODE_VERSION } from "./version.ts";

/** The rows of the fit that is kept step by step, its steps, and the state of the data that was looked at last. */
const [STEPS_OF, STEP, LOOKED_AT] = ["rows of the steps", "step ", "looked at"] as const;

/** Believes no version that it has read: it alone publishes, but may have slept. */
const BELIEVE_ms = 0;

/**
 * A Durable Object that alone makes and publishes fits at the edge, one at a time. It is asked every five minutes and works in an
 * alarm, which the runtime calls again when it was cut off; what each heater size and end came to is kept until then.
 */
export class Fitter {
  readonly #storage: ObjectStorage;
  readonly #db: Database;
  readonly #newKeyDays: number;
  readonly #keeper: FitKeeper;

  constructor({ storage }: ObjectState, env: Bindings) {
    this.#storage = storage;
    this.#db = databaseOf(env);
    this.#newKeyDays = newKeyDaysOf(env);
    this.#keeper = new FitKeeper({
      ...{ db: this.#db, now: () => new Date(), demo: false },
      ...{ believe_ms: BELIEVE_ms, newKeyDays: this.#newKeyDays },
      fits: fitsKeptIn(storage, this.#db),
    });
  }

  /** Asks for a new version; nobody waits for it. */
  async fetch(): Promise<Response> {
    if ((await this.#storage.getAlarm()) === null) await this.#storage.setAlarm(Date.now());
    return new Response(null, { status: 202 });
  }

  /** Publishes what there is. */
  async alarm(): Promise<void> {
    await countDue(this.#db, new Date(), this.#newKeyDays);
    const state = `${await dataRevision(this.#db)} ${CODE_VERSION} ${fingerprint()}`;
    // Days alone may end a refusal.
    const refused = await findRefusal(this.#db);
    if (!refused && (await this.#storage.get(LOOKED_AT)) === state) return;
    await this.#keeper.refresh();
    await this.#storage.put(LOOKED_AT, state);
  }
}

/** Fits whose steps are kept for as long as the rows are the same. */
export function fitsKeptIn(storage: ObjectStorage, db: Database, limits = {}): FitMaker {
  const fitRows = async (rows: readonly FitRow[], rows_sha256: string) => {
    const of = `${rows_sha256} ${CODE_VERSION} ${fingerprint()}`;
    if ((await storage.get(STEPS_OF)) !== of) {
      await storage.delete([...(await storage.list({ prefix: STEP })).keys()]);
      await storage.put(STEPS_OF, of);
    }
    return fitInSteps(rows, {
      get: (name) => storage.get<Uncounted>(STEP + name),
      put: (name, found) => storage.put(STEP + name, found),
    });
  };
  return fitsHere(db, { ...limits, fitRows });
}
