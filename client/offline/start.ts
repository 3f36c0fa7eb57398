import { sendWaiting } from "./deliver.ts";
import { keepGeography } from "./keep-geography.ts";
import { STORAGE_WIPED, WAITING_CHANGED } from "./names.ts";
import { installed, watchReleases } from "./release.ts";
import { setStanding, standing } from "./standing.ts";
import { tellWaiting, waitingTunes } from "./waiting-tunes.ts";

/** While tunes wait they are tried again so often, ms: the browser's word that it is online is not always true. */
const TRY_EVERY_ms = 30_000;

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
  if (wanted) await keepAnswers(wanted.version, wanted.heat_kW);
  await keepGeography((keeping) => setStanding({ keeping }));
}

let wanted: { version: string; heat_kW: number } | undefined;
let answersKept = "";

/** Has the service worker keep what the atlas answers about the present fit, with the points of one class. */
export async function keepAnswers(version: string, heat_kW: number): Promise<void> {
  wanted = { version, heat_kW };
  const key = `${version} ${heat_kW}`;
  if (!navigator.serviceWorker?.controller || answersKept === key) return;
  answersKept = key;
  const points = ["low", "high"].map((end) => `scaling?heat_kW=${heat_kW}&end=${end}`);
  const asked = ["fit", "map", "cells/world", ...points];
  await Promise.allSettled(asked.map((path) => fetch(`/api/${path}`, { cache: "no-cache" })));
}

export function savesData(): boolean {
  return (navigator as { connection?: { saveData?: boolean } }).connection?.saveData === true;
}
