import { secureHeaders } from "hono/secure-headers";

/**
 * Secure headers. Scripts and styles from our own origin only, none inline; the map needs workers and
 * images from blobs; connections to our own origin and the configured map sources.
 */
export function security(mapOrigins: readonly string[]) {
  return secureHeaders({
    contentSecurityPolicy: {
      defaultSrc: ["'self'"],
      scriptSrc: ["'self'"],
      styleSrc: ["'self'"],
      imgSrc: ["'self'", "data:", "blob:", ...mapOrigins],
      fontSrc: ["'self'", ...mapOrigins],
      connectSrc: ["'self'", ...mapOrigins],
      workerSrc: ["'self'", "blob:"],
      manifestSrc: ["'self'"],
      objectSrc: ["'none'"],
      baseUri: ["'self'"],
      formAction: ["'self'"],
      frameAncestors: ["'none'"],
    },
    // Anyone may read the API from anywhere, and HTTPS is the proxy's business.
    crossOriginResourcePolicy: "cross-origin",
    strictTransportSecurity: false,
    referrerPolicy: "no-referrer",
    permissionsPolicy: { geolocation: ["self"], camera: [], microphone: [], payment: [] },
  });
}
