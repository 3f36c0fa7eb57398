import type { ObjectState, ObjectStorage } from "../../server/durable.ts";
import { INSIDE, theOne } from "../../server/durable.ts";
import { openAtEdge } from "../../server/edge-app.ts";
import type { Bindings } from "../../server/edge-settings.ts";
import { Fitter as AtlasFitter } from "../../server/fitter.ts";
import worker from "../../server/worker.ts";

export { WriteLimits } from "../../server/shared-limits.ts";

// The atlas's worker with two things more: its fitter is cut off once, and several apps run side by side as in several isolates.

/** The step at which the fitter is cut off, the first time that it comes so far. */
const CUT_AT = 3;
const STEPS_KEPT = "test: steps kept";

/** Storage that counts steps that are kept, in itself, and fails once. */
function cutting(storage: ObjectStorage): ObjectStorage {
  return {
    get: (key) => storage.get(key),
    list: (options) => storage.list(options),
    delete: (keys) => storage.delete(keys),
    getAlarm: () => storage.getAlarm(),
    setAlarm: (at) => storage.setAlarm(at),
    put: async (key, value) => {
      if (key.startsWith("step ")) {
        const steps = 1 + ((await storage.get<number>(STEPS_KEPT)) ?? 0);
        await storage.put(STEPS_KEPT, steps);
        if (steps === CUT_AT) throw new Error("Cut off, for the test.");
      }
      await storage.put(key, value);
    },
  };
}

export class Fitter extends AtlasFitter {
  readonly #own: ObjectStorage;

  constructor(state: ObjectState, env: Bindings) {
    super({ storage: cutting(state.storage) }, env);
    this.#own = state.storage;
  }

  override async fetch(request?: Request): Promise<Response> {
    if (request?.method === "POST") return super.fetch();
    return Response.json((await this.#own.get(STEPS_KEPT)) ?? 0);
  }
}

const apps = new Map<string, ReturnType<typeof openAtEdge>>();

export default {
  async fetch(request: Request, env: Bindings, context: unknown): Promise<Response> {
    if (new URL(request.url).pathname === "/steps") return theOne(env.FITTER).fetch(INSIDE);
    const isolate = request.headers.get("X-Isolate") ?? "1";
    const own = apps.get(isolate) ?? openAtEdge(env);
    apps.set(isolate, own);
    return (await own).app.fetch(request, env, context as never);
  },
  scheduled: worker.scheduled,
};
