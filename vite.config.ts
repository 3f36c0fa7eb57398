import { fileURLToPath } from "node:url";
import preact from "@preact/preset-vite";
import { defineConfig } from "vite";

const server = `http://localhost:${process.env.PORT ?? 8787}`;

const inNumerics = (file: string) =>
  fileURLToPath(new URL(`client/numerics/${file}`, import.meta.url));

export default defineConfig({
  root: "client",
  resolve: {
    // What the quantile of Student's t brings along and the page never uses: 8 KB gzipped before the first answer.
    alias: {
      debug: inNumerics("no-logger.cjs"),
      "@stdlib/string-format": inNumerics("plain-format.cjs"),
    },
  },
  plugins: [preact()],
  build: {
    outDir: "../dist",
    emptyOutDir: true,
    manifest: true,
    target: "es2022",
    // The map is one large library, loaded after the answer.
    chunkSizeWarningLimit: 1200,
  },
  server: { port: 5173, proxy: { "/api": server, "/geography": server } },
});
