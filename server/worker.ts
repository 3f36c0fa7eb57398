import { INSIDE, theOne } from "./durable.ts";
import { openAtEdge } from "./edge-app.ts";
import type { Bindings } from "./edge-settings.ts";
import { prune } from "./prune.ts";

export { Fitter } from "./fitter.ts";
export { WriteLimits } from "./shared-limits.ts";

let opened: ReturnType<typeof openAtEdge> | undefined;

function openOnce(env: Bindings): ReturnType<typeof openAtEdge> {
  opened ??= openAtEdge(env).catch((error) => {
    opened = undefined;
    throw error;
  });
  return opened;
}

export default {
  async fetch(request: Request, env: Bindings, context: unknown): Promise<Response> {
    const { app } = await openOnce(env);
    return app.fetch(request, env, context as never);
  },
  /** Every five minutes: what was written meanwhile, and whose days are over. */
  async scheduled(_: unknown, env: Bindings): Promise<void> {
    await theOne(env.FITTER).fetch(INSIDE, { method: "POST" });
    const { db } = await openOnce(env);
    await prune(db, new Date());
  },
};
