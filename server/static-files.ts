import { serveStatic } from "@hono/node-server/serve-static";
import type { Hono } from "hono";

const A_DAY = "public, max-age=86400";
const FOR_EVER = "public, max-age=31536000, immutable";

/**
 * The page and the geography beside the API. Built scripts carry a hash in their names and never change; a
 * missing one is a plain 404, never the page in its place.
 */
export function servePage(app: Hono, pageDir: string, geographyDir: string): void {
  app.use(
    "/geography/*",
    serveStatic({
      root: geographyDir,
      rewriteRequestPath: (path) => path.replace(/^\/geography/, ""),
      precompressed: true,
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
