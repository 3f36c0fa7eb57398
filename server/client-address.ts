/**
 * Who asks: the address at the other end of the connection, or, behind so many proxies of one's own, what the outermost
 * of them saw, the entry of X-Forwarded-For (each proxy adds one at its end) so far from its end. What comes before
 * could be made up by anyone.
 */
export function clientAddress(
  connected: string | undefined,
  forwarded: string | undefined,
  proxies: number,
): string {
  if (proxies === 0) return connected ?? "unknown";
  return forwarded?.split(",").at(-proxies)?.trim() || connected || "unknown";
}
