import type { Keys } from "./keys.ts";
import { RequestProblem } from "./problem.ts";

const WINDOW_ms = 60_000;
/** Clients remembered at most; more than that in a minute, and the oldest are forgotten early. */
const CLIENTS_MOST = 50_000;

interface Window {
  opened: number;
  writes: number;
}

/**
 * A plain limit of writes a minute per client. Clients are told apart by a keyed hash of their address and the
 * day; neither is ever stored.
 * @param limit writes a minute; 0 for none
 */
export function writeLimit(limit: number, keys: Keys, now: () => Date) {
  const windows = new Map<string, Window>();
  return async (address: string): Promise<void> => {
    if (limit === 0) return;
    const at = now().getTime();
    const client = await keys.hash("client", `${now().toISOString().slice(0, 10)}|${address}`);
    let window = windows.get(client);
    if (!window || at - window.opened >= WINDOW_ms) {
      window = { opened: at, writes: 0 };
      windows.delete(client);
      windows.set(client, window);
      if (windows.size > CLIENTS_MOST) windows.delete(windows.keys().next().value as string);
    }
    window.writes += 1;
    if (window.writes <= limit) return;
    const wait_s = Math.max(1, Math.ceil((window.opened + WINDOW_ms - at) / 1000));
    throw new RequestProblem(
      429,
      `At most ${limit} writes a minute. Nothing was stored; send it again in ${wait_s} s.`,
      { headers: { "Retry-After": String(wait_s) } },
    );
  };
}
