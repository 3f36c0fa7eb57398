/** What page and service worker call the same things by. */
export const ANSWERS_CACHE = "hypsotune-answers";
/** One cache for each build of the geography; its name begins so. */
export const GEOGRAPHY_CACHES = "hypsotune-geography-";
/** Countries somebody saved. */
export const SAVED_CACHE = `${GEOGRAPHY_CACHES}saved`;
/** Header of an answer that comes out of a cache, in lower case: when it came from the atlas. */
export const KEPT_HEADER = "hypsotune-kept";
/** Message to a waiting service worker: the reader wants the new release. */
export const TAKE_OVER = "take over";
/** Event on the window: a tune began to wait, arrived or was discarded. */
export const WAITING_CHANGED = "hypsotune-waiting";

/** The browser has cleared what this page had kept, with the page open. */
export const STORAGE_WIPED = "hypsotune-storage-wiped";
