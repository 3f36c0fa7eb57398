import type { Keys } from "./keys.ts";
import { RequestProblem } from "./problem.ts";

const WINDOW_ms = 60_000;
/** Clients remembered at most; more than that in a minute, and the oldest are forgotten early. */
const CLIENTS_MOST = 50_000;

/** One minute of one client. */
interface Minute {
  opened: number;
  used: number;
  /** Until it is over, s. */
  left_s: number;
}

/**
 * The minutes of clients, for counting what each does. Clients are told apart by a keyed hash of their address and
 * the day; neither is ever stored.
 */
export function clientMinutes(keys: Keys, now: () => Date): (address: string) => Promise<Minute> {
  const minutes = new Map<string, Minute>();
  return async (address) => {
    const at = now().getTime();
    const client = await keys.hash("client", `${now().toISOString().slice(0, 10)}|${address}`);
    let minute = minutes.get(client);
    if (!minute || at - minute.opened >= WINDOW_ms) {
      minute = { opened: at, used: 0, left_s: 0 };
      minutes.delete(client);
      minutes.set(client, minute);
      if (minutes.size > CLIENTS_MOST) minutes.delete(minutes.keys().next().value as string);
    }
    minute.left_s = Math.max(1, Math.ceil((minute.opened + WINDOW_ms - at) / 1000));
    return minute;
  };
}

/**
 * A plain limit of writes a minute per client.
 * @param limit writes a minute; 0 for none
 */
export function writeLimit(limit: number, keys: Keys, now: () => Date) {
  const minuteOf = clientMinutes(keys, now);
  return async (address: string): Promise<void> => {
    if (limit === 0) return;
    const minute = await minuteOf(address);
    minute.used += 1;
    if (minute.used <= limit) return;
    throw new RequestProblem(
      429,
      `At most ${limit} writes a minute. Nothing was stored; send it again in ${minute.left_s} s.`,
      { headers: { "Retry-After": String(minute.left_s) } },
    );
  };
}
