import { fileURLToPath } from "node:url";
import preact from "@preact/preset-vite";
import { defineConfig, type Plugin } from "vite";
import { VitePWA } from "vite-plugin-pwa";
import { unbroken } from "./client/base/unbroken.ts";
import { markdownPages } from "./markdown-page.ts";

const server = `http://localhost:${process.env.PORT ?? 8787}`;

const inNumerics = (file: string) =>
  fileURLToPath(new URL(`client/numerics/${file}`, import.meta.url));

export default defineConfig({
  root: "client",
  resolve: {
    // What the quantile of Student's t brings along and the page never uses: 8 KB gzipped before the first answer.
    alias: {
      "@stdlib/assert-has-generator-support": inNumerics("generators.cjs"),
      debug: inNumerics("no-logger.cjs"),
      "@stdlib/string-format": inNumerics("plain-format.cjs"),
      // The function alone, without its factory.
      "@stdlib/stats-base-dists-t-quantile": fileURLToPath(
        new URL("node_modules/@stdlib/stats-base-dists-t-quantile/lib/main.js", import.meta.url),
      ),
      ...Object.fromEntries(
        ["uint8", "uint16", "uint32", "float64"].map((kind) => [
          `@stdlib/array-${kind}`,
          inNumerics(`array-${kind}.cjs`),
        ]),
      ),
      "@stdlib/utils-define-property": inNumerics("define-property.cjs"),
    },
  },
  plugins: [figuresUnbroken(), preact(), markdownPages(), installable(), fetchedAhead()],
  build: {
    outDir: "../dist",
    emptyOutDir: true,
    manifest: true,
    target: "es2022",
    // The map is one large library, loaded after the answer.
    chunkSizeWarningLimit: 1200,
    // What the first answer needs comes as one file: a slow connection pays for every request.
    rolldownOptions: {
      output: {
        codeSplitting: {
          groups: [{ name: "first", tags: ["$initial"], test: /^(?!.*main\.tsx$|.*index\.html)/ }],
        },
      },
    },
  },
  server: { port: 5173, proxy: { "/api": server, "/geography": server } },
});

/** Keeps figures and units on one line in all that the page says; no place in a file moves, so no source map is needed. */
function figuresUnbroken(): Plugin {
  return {
    name: "figures-unbroken",
    enforce: "pre",
    transform: {
      filter: { id: /\/client\/(?!base\/unbroken).*\.tsx?$/ },
      handler: (code) => ({ code: unbroken(code), map: null }),
    },
  };
}

/**
 * Fetches beside the scripts what waits for them: the published fit, the English words (another language's follow once it
 * is known), and the letters, so that no line of text breaks anew when they come.
 */
function fetchedAhead(): Plugin {
  return {
    name: "fetched-ahead",
    transformIndexHtml: {
      order: "post",
      handler: (_, { bundle = {} }) => [
        ahead({ rel: "preload", as: "fetch", href: "/api/fit" }),
        ...Object.values(bundle).flatMap((file) => {
          const href = `/${file.fileName}`;
          const words = file.type === "chunk" && file.facadeModuleId?.endsWith("/texts/en/app.ts");
          if (words) return [ahead({ rel: "modulepreload", href })];
          const letters = /noto-sans-latin-\d+-normal-.*\.woff2$/.test(href);
          return letters ? [ahead({ rel: "preload", as: "font", type: "font/woff2", href })] : [];
        }),
      ],
    },
  };
}

const ahead = (attrs: Record<string, string>) => ({
  tag: "link",
  attrs: { crossorigin: true, ...attrs },
  injectTo: "head" as const,
});

/** Manifest and service worker; the page registers it itself, since its Content-Security-Policy allows no inline script. */
function installable() {
  const icon = (name: string, size: number, purpose: "any" | "maskable" = "any") => ({
    src: `/${name}`,
    sizes: `${size}x${size}`,
    type: "image/png",
    purpose,
  });
  return VitePWA({
    strategies: "injectManifest",
    srcDir: "app/offline",
    filename: "service-worker.ts",
    injectRegister: false,
    manifest: {
      id: "/",
      name: "Hypsotune",
      short_name: "Hypsotune",
      description:
        "Starting settings for small diesel air heaters at any place, with confidence bands.",
      start_url: "/",
      display: "standalone",
      background_color: "#f4f0e4",
      theme_color: "#3c6350",
      icons: [
        { src: "/icon.svg", sizes: "any", type: "image/svg+xml" },
        icon("icon-192.png", 192),
        icon("icon-512.png", 512),
        icon("icon-maskable-512.png", 512, "maskable"),
      ],
    },
    injectManifest: {
      // Every view is kept, also those not opened yet. The one font format that browsers with service workers read.
      globPatterns: ["index.html", "assets/**/*.{js,mjs,css,woff2}", "*.{svg,png}"],
      maximumFileSizeToCacheInBytes: 4_000_000,
    },
  });
}
