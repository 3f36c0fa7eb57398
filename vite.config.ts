import preact from "@preact/preset-vite";
import { defineConfig } from "vite";

const server = `http://localhost:${process.env.PORT ?? 8787}`;

export default defineConfig({
  root: "client",
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
