import { serveStatic } from "@hono/node-server/serve-static";
import type { Hono, MiddlewareHandler } from "hono";
import { compress } from "hono/compress";
import { pageCaching } from "./page-caching.ts";
import { pageSecurity } from "./security.ts";

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
  app.use("*", keptAsLongAsRight, pageSecurity(mapOrigins), compress());
  app.use(
    "/geography/*",
    serveStatic({
      root: geographyDir,
      rewriteRequestPath: (path) => path.replace(/^\/geography/, ""),
    }),
  );
  app.get("/geography/*", (c) => c.notFound());
  app.use("/assets/*", serveStatic({ root: pageDir }));
  app.use("*", serveStatic({ root: pageDir }));
  app.notFound((c) => c.text("Nothing is there. The atlas starts at /", 404));
}

const keptAsLongAsRight: MiddlewareHandler = async (c, next) => {
  await next();
  if (c.res.ok) c.header("Cache-Control", pageCaching(c.req.path));
};
