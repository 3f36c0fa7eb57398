import { ENDS, type End } from "../../../model/end.ts";
import type { PublishedFit } from "../../../model/fit/group.ts";
import type { ScalingAnswer } from "../../../server/contract.ts";
import { ANSWERS_CACHE, STORAGE_WIPED, WAITING_CHANGED } from "../../base/answers/cache-names.ts";
import { sendWaiting } from "./deliver.ts";
import { keepGeography } from "./keep-geography.ts";
import { installed, watchReleases } from "./release.ts";
import { setStanding, standing } from "./standing.ts";
import { tellWaiting, waitingTunes } from "./waiting-tunes.ts";

/** While tunes wait they are tried again so often, ms: the browser's word that it is online is not always true. */
const TRY_EVERY_ms = 30_000;
/** A class of more tunes is fetched only when asked for (our own working value): so many are 110 kB, 17 kB packed. */
const SMALL_CLASS_tunes = 500;

/** Sets everything up that works without a network; called once, after the first answer is on the screen. */
export async function startOffline(onArrived: () => void): Promise<void> {
  const deliver = async () => {
    const { arrived } = await sendWaiting();
    if (arrived.length === 0) return;
    setStanding({ arrived: standing().arrived + arrived.length });
    onArrived();
  };
  const count = async () => {
    const all = await waitingTunes();
    setStanding({ waiting: all.filter(({ problem }) => problem === null).length });
  };
  addEventListener(WAITING_CHANGED, () => void count());
  addEventListener(STORAGE_WIPED, () => {
    setStanding({ wiped: true });
    tellWaiting();
  });
  addEventListener("online", () => void deliver());
  setInterval(() => void (standing().waiting > 0 && deliver()), TRY_EVERY_ms);
  await count();
  void deliver();
  watchReleases((newer) => setStanding({ newer }));
  addEventListener("online", () => void (standing().keeping.is === "interrupted" && keep()));
  if (savesData()) await installed();
  else await keep();
}

/** Keeps page, map and places, and says how far it is; again when it broke off. */
export async function keep(): Promise<void> {
  const page = await installed();
  if (page === "unable") return setStanding({ keeping: { is: "unable" } });
  if (page === "broken") return setStanding({ keeping: { is: "interrupted" } });
  if (wanted) await keepAnswers(wanted.fit, wanted.heat_kW);
  await keepGeography((keeping) => setStanding({ keeping }));
}

let wanted: { fit: PublishedFit; heat_kW: number } | undefined;
let answersKept = "";

/**
 * Has the service worker keep what the atlas answers about the present fit, with the tunes of the class asked about,
 * and then of all others that are small.
 */
export async function keepAnswers(fit: PublishedFit, heat_kW: number): Promise<void> {
  wanted = { fit, heat_kW };
  const key = `${fit.version} ${heat_kW}`;
  if (!navigator.serviceWorker?.controller || answersKept === key) return;
  answersKept = key;
  const asked = ["fit", "map", "cells/world", ...ENDS.map((end) => tunesAt(heat_kW, end))];
  await Promise.allSettled(asked.map(ask));
  if (savesData()) return;
  const others = fit.groups.filter(
    (group) => group.heat_kW !== heat_kW && group.tunes > 0 && group.tunes <= SMALL_CLASS_tunes,
  );
  for (const group of others) await keepTunes(tunesAt(group.heat_kW, group.end), fit.version);
}

/** One after another, and none that is kept already: nobody has asked for them yet. */
async function keepTunes(path: string, version: string): Promise<void> {
  try {
    const kept = await (await caches.open(ANSWERS_CACHE)).match(`/api/${path}`);
    const seen: ScalingAnswer | undefined = await kept?.json();
    if (seen?.fit !== version) await ask(path);
  } catch {
    // What cannot be kept is asked for when somebody wants it.
  }
}

const ask = (path: string) => fetch(`/api/${path}`, { cache: "no-cache" });
const tunesAt = (heat_kW: number, end: End) => `scaling?heat_kW=${heat_kW}&end=${end}`;

export function savesData(): boolean {
  return (navigator as { connection?: { saveData?: boolean } }).connection?.saveData === true;
}
