import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    // Two workers: the suite is sized for two cores, and the browser tests share them.
    maxWorkers: 2,
    // No file changes what another imports, and so many fresh workers take their time to start.
    isolate: false,
    include: ["test/**/*.test.ts", "test/**/*.test.tsx"],
    globalSetup: ["test/build-page.ts"],
    // A browser on a busy machine may need a while until it shows what is waited for.
    expect: { poll: { timeout: 15_000 } },
    // No verdict depends on speed: only a hang reaches these.
    testTimeout: 600_000,
    hookTimeout: 600_000,
  },
});
