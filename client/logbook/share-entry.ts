import { finalCoOf, kindOfReading } from "../../model/co-reading.ts";
import { type Tune, tuneSchema } from "../../model/tune.ts";
import type { Submitted } from "../../server/contract.ts";
import { type Sent, send } from "../app/offline/deliver.ts";
import { dropWaiting, waitingTunes } from "../app/offline/waiting-tunes.ts";
import type { LogbookEntry, LogbookHeater, LoggedEnd, SharedTune } from "../app/records/entry.ts";
import { putEntry } from "../app/records/store.ts";
import { AtlasProblem, api } from "../base/answers/api.ts";
import {
  dropReceipt,
  type KeptReceipt,
  keepReceipt,
  keptReceipts,
  receiptOf,
} from "../base/receipts.ts";
import { coarseElevation, coarsePosition } from "../share/coarse-position.ts";
import { contributorKey } from "../share/contributor.ts";
import { forgetSendingKey, sendingKey } from "../share/sending-key.ts";

/** Why an entry is no tune to share, or the tune without its contributor. */
export type Shareable = { tune: Tune } | { why: "ceiling" | "incomplete" };

/** What of an entry leaves the browser: month for date, a cell's middle for a position, no words. */
export async function shareable(
  entry: LogbookEntry,
  { heat_kW, dose_uL, supply_V }: LogbookHeater,
  contributor: string,
): Promise<Shareable> {
  const { site, air, low, high, found, meter, at } = entry;
  if (!site || !low || !high) return { why: "incomplete" };
  if ([low, high].some((end) => kindOfReading(end) === "co_above_ppm")) return { why: "ceiling" };
  const { lat, lon } = site;
  const cell = lat === undefined || lon === undefined ? {} : await coarsePosition(lat, lon);
  const said = {
    heater: { heat_kW, dose_uL, supply_V },
    site: { ...coarseElevation(site), ...cell },
    air: air && Object.keys(air).length > 0 ? air : undefined,
    low: endOf(low),
    high: endOf(high),
    found,
    meter: meter && { kind: meter.kind, distance_m: meter.distance_m },
    tuned_on: monthOf(at),
    contributor,
  };
  const parsed = tuneSchema.safeParse(JSON.parse(JSON.stringify(said)));
  return parsed.success ? { tune: parsed.data } : { why: "incomplete" };
}

function endOf({ pump_Hz, fan_rpm, power, ...shown }: LoggedEnd) {
  return { pump_Hz, fan_rpm, ...finalCoOf(shown), power };
}

/** Year and month where the heater stands. */
function monthOf(at: string): string {
  const date = new Date(at);
  return `${date.getFullYear()}-${String(date.getMonth() + 1).padStart(2, "0")}`;
}

const changed = (entry: LogbookEntry, shared: SharedTune | undefined): LogbookEntry => {
  const { shared: _, ...rest } = entry;
  return { ...rest, changed_at: new Date().toISOString(), ...(shared && { shared }) };
};

/**
 * Sends an entry's tune; without the atlas it waits. The entry knows its key before the first try.
 * @throws the atlas's refusal, or that it cannot be reached and nothing could be kept
 */
export async function shareEntry(entry: LogbookEntry, tune: Tune): Promise<Sent> {
  const whole = { ...tune, contributor: contributorKey() };
  const key = sendingKey(whole);
  await putEntry(changed(entry, { key }));
  try {
    const kept_on = new Date().toISOString();
    const place = entry.site?.place ?? null;
    const sent = await send({ key, tune: whole, place, kept_on, problem: null });
    forgetSendingKey();
    if (sent !== "waits" && sent.answer.receipt) {
      const { id, receipt } = sent.answer;
      await putEntry(changed(entry, { id, receipt }));
    }
    return sent;
  } catch (error) {
    await putEntry(changed(entry, undefined));
    throw error;
  }
}

/** Gives entries the receipts of tunes that have arrived meanwhile. @returns keys that neither wait nor arrived */
export async function linkReceipts(entries: readonly LogbookEntry[]): Promise<Set<string>> {
  const waiting = new Set((await waitingTunes()).map(({ key }) => key));
  const byKey = new Map(keptReceipts().map((kept) => [kept.key, kept]));
  const gone = new Set<string>();
  for (const entry of entries) {
    if (!entry.shared || !("key" in entry.shared)) continue;
    const { key } = entry.shared;
    const kept = byKey.get(key);
    if (kept) await putEntry(changed(entry, { id: kept.id, receipt: kept.receipt }));
    else if (!waiting.has(key)) gone.add(key);
  }
  return gone;
}

/** Takes a waiting tune back before it has left. */
export async function doNotSend(entry: LogbookEntry): Promise<void> {
  if (entry.shared && "key" in entry.shared) await dropWaiting(entry.shared.key);
  await putEntry(changed(entry, undefined));
}

/** Sends the entry as it is now in place of what was shared. @throws the atlas's refusal */
export async function reviseShared(
  entry: LogbookEntry,
  { id, receipt }: Pick<KeptReceipt, "id" | "receipt">,
  tune: Tune,
): Promise<Submitted> {
  const whole = { ...tune, contributor: contributorKey() };
  const answer = await api.revise(id, receipt, whole);
  keepReceipt(receiptOf(answer, receipt, whole, entry.site?.place ?? null));
  return answer;
}

/** Withdraws a shared tune for good. @throws when the atlas cannot be reached */
export async function withdrawShared(
  entry: LogbookEntry,
  { id, receipt }: Pick<KeptReceipt, "id" | "receipt">,
): Promise<void> {
  try {
    await api.withdraw(id, receipt);
  } catch (error) {
    if (!isGone(error)) throw error;
  }
  await letGo(entry, id);
}

/** The atlas has no such tune, or this receipt does not open it. */
export function isGone(error: unknown): boolean {
  return error instanceof AtlasProblem && [401, 403, 404].includes(error.problem.status);
}

export async function letGo(entry: LogbookEntry, id: string): Promise<void> {
  dropReceipt(id);
  await putEntry(changed(entry, undefined));
}
