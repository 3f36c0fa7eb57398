import type { Tune } from "../../model/tune.ts";
import type { Advice, Submitted, Verdict } from "../../server/contract.ts";
import { dayHere } from "./clock.ts";
import { recall, remember } from "./remember.ts";

/** What this browser keeps of a tune it shared. */
export interface KeptReceipt {
  id: string;
  receipt: string;
  /** Its Idempotency-Key, by which the logbook knows it. */
  key?: string;
  shared_on: string;
  verdict: Verdict;
  place: string | null;
  heat_kW: number;
  elevation_m: number;
  low_pump_Hz: number;
  high_pump_Hz: number;
  /** What the atlas said of the heater; missing in receipts from before it did. */
  advice?: Advice[];
}

const KEPT_AS = "receipts";

export function keptReceipts(): KeptReceipt[] {
  return recall<KeptReceipt[]>(KEPT_AS) ?? [];
}

/** Keeps a receipt, in place of an older one of the same tune. @returns whether the browser kept it */
export function keepReceipt(kept: KeptReceipt): boolean {
  return remember(KEPT_AS, [kept, ...keptReceipts().filter(({ id }) => id !== kept.id)]);
}

export function dropReceipt(id: string): void {
  remember(
    KEPT_AS,
    keptReceipts().filter((kept) => kept.id !== id),
  );
}

/** What to keep of an answer and the tune it is for. */
export function receiptOf(
  { id, verdict, advice }: Submitted,
  receipt: string,
  tune: Tune,
  place: string | null,
): KeptReceipt {
  return {
    id,
    receipt,
    verdict,
    place,
    shared_on: dayHere(),
    heat_kW: tune.heater.heat_kW,
    elevation_m: tune.site.elevation_m,
    low_pump_Hz: tune.low.pump_Hz,
    high_pump_Hz: tune.high.pump_Hz,
    ...(advice.length > 0 && { advice }),
  };
}

/** The receipts as a file, for another browser or for safety. */
export function receiptsFile(): Blob {
  return new Blob([JSON.stringify(keptReceipts(), null, 2)], { type: "application/json" });
}
