/** Random text for keys; unlike crypto.randomUUID it also works on a page that came without HTTPS. */
export function randomText(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(18));
  return btoa(String.fromCharCode(...bytes))
    .replaceAll("+", "-")
    .replaceAll("/", "_");
}
