import { Hono, type MiddlewareHandler } from "hono";
import { secureHeaders } from "hono/secure-headers";

/** Secure headers for the page: scripts and styles from our own origin, none inline; what the map needs. */
export function pageSecurity(mapOrigins: readonly string[]): MiddlewareHandler {
  return setBeforehand(
    headersOf({
      contentSecurityPolicy: {
        defaultSrc: ["'self'"],
        scriptSrc: ["'self'"],
        styleSrc: ["'self'"],
        imgSrc: ["'self'", "data:", "blob:", ...mapOrigins],
        fontSrc: ["'self'"],
        connectSrc: ["'self'", ...mapOrigins],
        workerSrc: ["'self'", "blob:"],
        manifestSrc: ["'self'"],
        objectSrc: ["'none'"],
        baseUri: ["'self'"],
        formAction: ["'self'"],
        frameAncestors: ["'none'"],
      },
      permissionsPolicy: { geolocation: ["self"], camera: [], microphone: [], payment: [] },
    }),
  );
}

/** Secure headers for the API: its answers are data and load nothing; anyone may read them from anywhere. */
export function apiSecurity(): MiddlewareHandler {
  const headers = headersOf({
    contentSecurityPolicy: { defaultSrc: ["'none'"], frameAncestors: ["'none'"] },
    // These speak to documents, which the API never answers with.
    crossOriginOpenerPolicy: false,
    originAgentCluster: false,
    xDnsPrefetchControl: false,
    xDownloadOptions: false,
    xPermittedCrossDomainPolicies: false,
    xXssProtection: false,
  });
  const open: [string, string][] = [
    ["access-control-allow-origin", "*"],
    ["access-control-expose-headers", "ETag, Location, Retry-After, Content-Range, Repr-Digest"],
  ];
  return setBeforehand(headers.then((all) => [...all, ...open]));
}

/** Set before the answer is made: changing an answer's headers afterwards costs as much as making it. */
function setBeforehand(headers: Promise<[string, string][]>): MiddlewareHandler {
  let ready: [string, string][] | undefined;
  return async (c, next) => {
    ready ??= await headers;
    for (const [name, value] of ready) c.header(name, value);
    await next();
  };
}

/** The headers the library would set, asked for once. */
async function headersOf(options: Options): Promise<[string, string][]> {
  const library = secureHeaders({
    crossOriginResourcePolicy: "cross-origin",
    // HTTPS is the proxy's business.
    strictTransportSecurity: false,
    referrerPolicy: "no-referrer",
    ...options,
  });
  const asked = new Hono().use(library).get("/", (c) => c.body(null));
  return [...(await asked.request("/")).headers];
}

type Options = NonNullable<Parameters<typeof secureHeaders>[0]>;
