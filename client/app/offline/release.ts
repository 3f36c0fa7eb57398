import { TAKE_OVER } from "../../base/answers/cache-names.ts";

/** A newer release than this tab's: it waits to be asked for, another tab took it, or it was found out by a missing part. */
export type Newer = "waiting" | "elsewhere" | "missing";

/** How often a page left open looks for a new release, ms. */
const LOOK_EVERY_ms = 30 * 60_000;
const CLAIMED_WITHIN_ms = 5000;

let waiting: ServiceWorker | null = null;
let asked = false;

/** How the page's service worker came out: in use, broken off on the way, or not to be had here. */
export type Installed = "ready" | "broken" | "unable";

/**
 * Watches for new releases. The old one, with all its parts, stays with this tab until its reader asks for the new one.
 */
export function watchReleases(tell: (newer: Newer) => void): void {
  // A part that is gone from the server: only a page that no service worker kept can come to this.
  addEventListener("vite:preloadError", () => tell("missing"));
  const { serviceWorker } = navigator;
  if (!serviceWorker) return;
  const hadOne = serviceWorker.controller !== null;
  serviceWorker.addEventListener("controllerchange", () => {
    if (asked) location.reload();
    else if (hadOne) tell("elsewhere");
  });
  onRegistered = (registration) => {
    const look = () => {
      if (!registration.waiting || !serviceWorker.controller) return;
      waiting = registration.waiting;
      tell("waiting");
    };
    look();
    registration.addEventListener("updatefound", () => {
      registration.installing?.addEventListener("statechange", look);
    });
    setInterval(() => void registration.update().catch(() => {}), LOOK_EVERY_ms);
  };
}

let onRegistered: ((registration: ServiceWorkerRegistration) => void) | undefined;

/** Has the service worker keep the page. It needs HTTPS, and a browser that allows it. */
export async function installed(): Promise<Installed> {
  const { serviceWorker } = navigator;
  if (!serviceWorker || !import.meta.env.PROD) return "unable";
  const known = await serviceWorker.getRegistration().catch(() => undefined);
  const registration = await serviceWorker.register("/service-worker.js").catch(() => known);
  // A first visit whose connection breaks off can try again; a browser that refuses will refuse again.
  if (!registration) return navigator.onLine ? "unable" : "broken";
  onRegistered?.(registration);
  onRegistered = undefined;
  const first = registration.active ? null : registration.installing;
  const gaveUp = new Promise<"broken">((broken) => {
    first?.addEventListener("statechange", () => first.state === "redundant" && broken("broken"));
  });
  const ready = serviceWorker.ready.then(() => controlled(serviceWorker));
  return Promise.race([ready, gaveUp]);
}

/** Takes the new release, or just loads the page again when it is in use already. */
export function takeRelease(): void {
  asked = true;
  if (waiting?.state === "installed") waiting.postMessage(TAKE_OVER);
  else location.reload();
}

/** What a page asks for before the service worker has claimed it is not kept. */
async function controlled(serviceWorker: ServiceWorkerContainer): Promise<"ready"> {
  if (serviceWorker.controller) return "ready";
  return new Promise((done) => {
    serviceWorker.addEventListener("controllerchange", () => done("ready"), { once: true });
    // A page loaded past its service worker, by a forced reload, is never claimed.
    setTimeout(() => done("ready"), CLAIMED_WITHIN_ms);
  });
}
