import { fileURLToPath } from "node:url";
import preact from "@preact/preset-vite";
import { defineConfig, type Plugin } from "vite";
import { VitePWA } from "vite-plugin-pwa";

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
    },
  },
  plugins: [preact(), installable(), wordsAhead()],
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

/** Fetches the English words beside the scripts that wait for them; another language's follow once it is known. */
function wordsAhead(): Plugin {
  return {
    name: "words-ahead",
    transformIndexHtml: {
      order: "post",
      handler: (_, { bundle = {} }) =>
        Object.values(bundle)
          .filter(
            (chunk) => chunk.type === "chunk" && chunk.facadeModuleId?.endsWith("/texts/en/app.ts"),
          )
          .map(({ fileName }) => ({
            tag: "link",
            attrs: { rel: "modulepreload", crossorigin: true, href: `/${fileName}` },
            injectTo: "head",
          })),
    },
  };
}

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
    srcDir: "offline",
    filename: "service-worker.ts",
    injectRegister: false,
    manifest: {
      id: "/",
      name: "Hypsotune",
      short_name: "Hypsotune",
      description: "Start tunes for small diesel air heaters at any place, with confidence bands.",
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
