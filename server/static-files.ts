import { serveStatic } from "@hono/node-server/serve-static";
import type { Hono } from "hono";
import { compress } from "hono/compress";
import { pageSecurity } from "./security.ts";

const A_DAY = "public, max-age=86400";
const FOR_EVER = "public, max-age=31536000, immutable";

export interface PageSettings {
  pageDir: string;
  geographyDir: string;
  /** Origins besides our own that the page may load map data from. */
  mapOrigins: readonly string[];
}

/**
 * The page and the geography beside the API. Built scripts carry a hash in their names and never change; a
 * missing one is a plain 404, never the page in its place.
 */
export function servePage(app: Hono, { pageDir, geographyDir, mapOrigins }: PageSettings): void {
  app.use("*", pageSecurity(mapOrigins), compress());
  app.use(
    "/geography/*",
    serveStatic({
      root: geographyDir,
      rewriteRequestPath: (path) => path.replace(/^\/geography/, ""),
      onFound: (_, c) => c.header("Cache-Control", A_DAY),
    }),
  );
  app.get("/geography/*", (c) => c.notFound());
  app.use(
    "/assets/*",
    serveStatic({ root: pageDir, onFound: (_, c) => c.header("Cache-Control", FOR_EVER) }),
  );
  app.use(
    "*",
    serveStatic({ root: pageDir, onFound: (_, c) => c.header("Cache-Control", "no-cache") }),
  );
  app.notFound((c) => c.text("Nothing is there. The atlas starts at /", 404));
}
