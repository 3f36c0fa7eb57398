import { clientOf, networkOf } from "./client-address.ts";
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

/** A network holds many clients; as much as this many of them may come from it. */
const CLIENTS_OF_A_NETWORK = 5;

/**
 * The minutes of clients, for counting what each does. Clients are told apart by a keyed hash of their address and
 * the day; neither is ever stored.
 * @param whose the part of an address that counts as one
 */
export function clientMinutes(
  keys: Keys,
  now: () => Date,
  whose = clientOf,
): (address: string) => Promise<Minute> {
  const minutes = new Map<string, Minute>();
  return async (address) => {
    const at = now().getTime();
    const day = now().toISOString().slice(0, 10);
    const client = await keys.hash("client", `${day}|${whose(address)}`);
    let minute = minutes.get(client);
    // Opened later than now: the clock was set back, and the minute would last for as long as it was.
    if (!minute || at - minute.opened >= WINDOW_ms || at < minute.opened) {
      minute = { opened: at, used: 0, left_s: 0 };
      minutes.delete(client);
      minutes.set(client, minute);
      if (minutes.size > CLIENTS_MOST) minutes.delete(minutes.keys().next().value as string);
    }
    minute.left_s = Math.max(1, Math.ceil((minute.opened + WINDOW_ms - at) / 1000));
    return minute;
  };
}

/** What is counted, as whoever is told to wait reads it. */
interface Counted {
  /** So many of what, "30 writes". */
  many: (most: number) => string;
  /** What to do, "send it again". */
  remedy: string;
  title?: string;
}

const WRITES: Counted = {
  many: (most) => `${most} writes`,
  remedy: "Nothing was stored; send it again",
};

/** Answers that take the processor for long, or hold all tunes. */
const DEAR_READS: Counted = {
  many: (most) => `${most} questions or downloads of this kind`,
  remedy: "Ask again",
  title: "Too many at once",
};

/**
 * A plain limit a minute per client, and a wider one per network.
 * @param limit so many a minute of one client; 0 for any number
 */
function limitOf({ many, remedy, title }: Counted, limit: number, keys: Keys, now: () => Date) {
  const limits = [
    { most: limit, minuteOf: clientMinutes(keys, now), of: "" },
    {
      most: limit * CLIENTS_OF_A_NETWORK,
      minuteOf: clientMinutes(keys, now, networkOf),
      of: " from one network",
    },
  ];
  return async (address: string): Promise<void> => {
    if (limit === 0) return;
    for (const { most, minuteOf, of } of limits) {
      const minute = await minuteOf(address);
      minute.used += 1;
      if (minute.used <= most) continue;
      throw new RequestProblem(
        429,
        `At most ${many(most)} a minute${of}. ${remedy} in ${minute.left_s} s.`,
        { ...(title && { title }), headers: { "Retry-After": String(minute.left_s) } },
      );
    }
  };
}

export const writeLimit = (limit: number, keys: Keys, now: () => Date) =>
  limitOf(WRITES, limit, keys, now);

export const readLimit = (limit: number, keys: Keys, now: () => Date) =>
  limitOf(DEAR_READS, limit, keys, now);
