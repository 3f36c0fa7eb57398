import { distinctRemoteAddr, expandIPv6 } from "hono/utils/ipaddr";

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

/** Who counts as one client: an IPv4 address, or the IPv6 /64 that one line is given (RFC 6177). */
export const clientOf = (address: string) => prefix(address, 4, 4);

/** Whose addresses one provider or office hands out together: IPv4 /24, IPv6 /48. */
export const networkOf = (address: string) => prefix(address, 3, 3);

/** An address's first numbers, or the text as it is when it is no address. */
function prefix(address: string, ofIPv4: number, ofIPv6: number): string {
  // IPv4 as a socket for both kinds writes it (RFC 4291, 2.5.5.2).
  const plain = address.replace(/^::ffff:(?=[\d.]+$)/i, "").replace(/%.*$/, "");
  const kind = distinctRemoteAddr(plain);
  if (kind === "IPv4") return plain.split(".").slice(0, ofIPv4).join(".");
  // Eight parts, and one more where "::" stands at an end: more than that is no address.
  if (kind === "IPv6" && plain.split(":").length <= 9) {
    return expandIPv6(plain).toLowerCase().split(":").slice(0, ofIPv6).join(":");
  }
  return address;
}
