const A_DAY = "public, max-age=86400";
const FOR_EVER = "public, max-age=31536000, immutable";
const ASK_EACH_TIME = "no-cache";

/** How long a file of the page may be kept: built scripts carry a hash in their names and never change. */
export function pageCaching(path: string): string {
  if (path.startsWith("/assets/")) return FOR_EVER;
  return path.startsWith("/geography/") ? A_DAY : ASK_EACH_TIME;
}
