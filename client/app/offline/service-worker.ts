import {
  cleanupOutdatedCaches,
  createHandlerBoundToURL,
  precacheAndRoute,
} from "workbox-precaching";
import { NavigationRoute, registerRoute } from "workbox-routing";
import { NetworkFirst } from "workbox-strategies";
import {
  ANSWERS_CACHE,
  GEOGRAPHY_CACHES,
  KEPT_HEADER,
  TAKE_OVER,
} from "../../base/answers/cache-names.ts";

/** What this file needs of a service worker: the page's own types leave no room for the library of workers. */
interface WorkerScope {
  __WB_MANIFEST: { url: string; revision: string | null }[];
  skipWaiting(): Promise<void>;
  clients: { claim(): Promise<void> };
  addEventListener(
    type: string,
    listener: (event: MessageEvent & { waitUntil(work: Promise<unknown>): void }) => void,
  ): void;
}
declare const self: WorkerScope;

// The page with all its views. A new release waits until its reader asks for it: see TAKE_OVER.
precacheAndRoute(self.__WB_MANIFEST);
cleanupOutdatedCaches();
registerRoute(
  new NavigationRoute(createHandlerBoundToURL("/index.html"), {
    denylist: [/^\/(api|geography|assets)\//],
  }),
);
self.addEventListener("message", ({ data }) => void (data === TAKE_OVER && self.skipWaiting()));
// The first visit is kept too, not only the second.
self.addEventListener("activate", (event) => event.waitUntil(self.clients.claim()));

/** Keeps with an answer when it came: out of the cache it says so, and the page tells how old it is. */
const datedWhenKept = {
  cacheWillUpdate: async ({ response }: { response: Response }) => {
    if (!response.ok) return null;
    const headers = new Headers(response.headers);
    headers.set(KEPT_HEADER, new Date().toISOString());
    return new Response(response.body, { status: response.status, headers });
  },
};

// What the atlas answers to everyone alike. Reading alone: nothing that is written ever passes through here.
const ANSWERS = ["/api/fit", "/api/scaling", "/api/cells/world", "/api/map"];
registerRoute(
  ({ url, sameOrigin }) => sameOrigin && ANSWERS.includes(url.pathname),
  new NetworkFirst({ cacheName: ANSWERS_CACHE, plugins: [datedWhenKept] }),
);

// Map and places: what the page has put there, else the network. It is the page that fills these caches, and asks
// past them when it does.
registerRoute(
  ({ url, sameOrigin }) => sameOrigin && url.pathname.startsWith("/geography/"),
  async ({ request }) => {
    if (request.cache === "no-cache") return fetch(request);
    const names = (await caches.keys()).filter((name) => name.startsWith(GEOGRAPHY_CACHES));
    for (const name of names) {
      const kept = await (await caches.open(name)).match(request);
      if (kept) return kept;
    }
    return fetch(request);
  },
);
