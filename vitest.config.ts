import { resolve } from "node:path";
import { configDefaults, defineConfig } from "vitest/config";
import { TEST_ms, WAIT_ms } from "./test/limits.ts";

/** Tests of what is built: in a browser, on workerd, by the server's own command. */
const BUILT = ["test/browser/**/*.test.ts", "test/edge/**/*.test.ts", "test/built/**/*.test.ts"];
/** Tests that simulate crowds by the hundred, or attack the atlas by the thousand. */
const LONG = ["test/**/*.simulated.test.ts", "test/torture/**/*.test.ts"];

export default defineConfig({
  test: {
    // The suite is sized for two cores: with one worker each, a tenth of what they have would go by in waiting.
    maxWorkers: 3,
    // No file changes what another imports, and so many fresh workers take their time to start.
    isolate: false,
    // Servers and commands in processes of their own start a fifth sooner with what was compiled before.
    env: { NODE_COMPILE_CACHE: resolve("node_modules/.cache/node") },
    testTimeout: TEST_ms,
    hookTimeout: TEST_ms,
    expect: { poll: { timeout: WAIT_ms } },
    projects: [
      // First: its setup makes page and geography at once, and the next ones find the latter made.
      {
        extends: true,
        test: { name: "browser", include: BUILT, globalSetup: ["test/build-page.ts"] },
      },
      {
        extends: true,
        test: {
          name: "unit",
          include: ["test/**/*.test.ts", "test/**/*.test.tsx"],
          exclude: [...configDefaults.exclude, ...BUILT, ...LONG],
          globalSetup: ["test/build-geography.ts"],
        },
      },
      {
        extends: true,
        test: { name: "long", include: LONG, globalSetup: ["test/build-geography.ts"] },
      },
    ],
  },
});
