import { spawnSync } from "node:child_process";
import { existsSync, globSync } from "node:fs";
import { homedir } from "node:os";
import { delimiter, join } from "node:path";
import { type Browser, type BrowserContext, chromium, type LaunchOptions } from "playwright-core";
import { TEST_ms } from "../limits.ts";

/** The one without windows first: it opens a page for less work than a whole browser. */
const NAMES = [
  "chromium-headless-shell",
  "chromium",
  "chromium-browser",
  "google-chrome",
  "google-chrome-stable",
  "chrome",
];
const USUAL_PLACES = [
  "/snap/bin/chromium",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
];

/** A Chromium on this machine: the one CHROMIUM names, on the path, in a usual place, or downloaded before. */
export function findChromium(): string | undefined {
  const named = process.env.CHROMIUM;
  if (named) return existsSync(named) ? named : undefined;
  const onPath = (process.env.PATH ?? "")
    .split(delimiter)
    .flatMap((dir) => NAMES.map((name) => join(dir, name)));
  const downloaded = globSync(
    join(
      homedir(),
      ".cache/ms-playwright/chromium*/*/{headless_shell,chrome-headless-shell,chrome}",
    ),
  );
  return [...onPath, ...USUAL_PLACES, ...downloaded].find(existsSync);
}

/**
 * Finds a Chromium, or gets one: by the test tool's own download, then by the system's package manager. Otherwise says why
 * there is none.
 */
function ensureChromium(): string | undefined {
  if (findChromium()) return undefined;
  if (process.env.CHROMIUM)
    return `CHROMIUM is set to ${process.env.CHROMIUM}, and no such file is there.`;
  const attempts: [command: string, args: string[]][] = [
    ["node_modules/.bin/playwright-core", ["install", "--only-shell", "chromium"]],
    ...(process.getuid?.() === 0
      ? ([
          ["apt-get", ["update", "-qq"]],
          ["apt-get", ["install", "-y", "-qq", "chromium-headless-shell"]],
          ["apt-get", ["install", "-y", "-qq", "chromium"]],
        ] as [string, string[]][])
      : []),
  ];
  let said = "";
  for (const [command, args] of attempts) {
    console.log(`No Chromium found; trying: ${command} ${args.join(" ")}`);
    const { stdout, stderr } = spawnSync(command, args, { encoding: "utf8", timeout: TEST_ms });
    if (findChromium()) return undefined;
    // Pages of it, and of no interest if another way leads there.
    said += `${stdout ?? ""}${stderr ?? ""}`;
  }
  return `${said}\nThe browser tests need a Chromium. Install one (Debian: apt-get install chromium-headless-shell), or set CHROMIUM to its path.`;
}

interface HowToLaunch {
  webgl?: boolean;
  /** WebGL draws the map and nothing else: half the work. Not for what is measured, or looked at by people. */
  mapOnly?: boolean;
  /** A port on which others may drive it too. */
  debuggedAt?: number;
}

/** A headless Chromium that draws WebGL in software, or not at all, and asks nothing of the network. */
export function launchChromium(how: HowToLaunch = {}): Promise<Browser> {
  return chromium.launch(launchOptions(how));
}

/** One that keeps what it sees in a folder, as people's do: the others' pages are those of a private window. */
export function launchKeeping(folder: string): Promise<BrowserContext> {
  return chromium.launchPersistentContext(folder, launchOptions({ webgl: false }));
}

const FEATURES_OFF = [
  // The whole browser's, which has windows without showing them: two pages of its own for the address bar of each, and a
  // process to spare. They are more than half the work of opening a page.
  "WebUIOmniboxPopup",
  "WebUIOmniboxAimPopup",
  "SpareRendererForSitePerProcess",
  // The last list is the one that counts, so it has those of the test tool's own that matter here: no haste to HTTPS, no
  // waiting before the first drawing, nothing asked of the network.
  "AvoidUnnecessaryBeforeUnloadCheckSync",
  "DestroyProfileOnBrowserClose",
  "HttpsFirstBalancedModeAutoEnable",
  "HttpsUpgrades",
  "MediaRouter",
  "NetworkTimeServiceQuerying",
  "OptimizationHints",
  "PaintHolding",
  "PreconnectToSearch",
  "ThirdPartyStoragePartitioning",
];

function launchOptions({ webgl = true, mapOnly = false, debuggedAt }: HowToLaunch): LaunchOptions {
  const executablePath = findChromium();
  if (!executablePath) throw new Error("No Chromium: run node test/browser/chromium.ts");
  return {
    executablePath,
    args: [
      "--no-sandbox",
      ...(webgl
        ? ["--use-angle=swiftshader", "--enable-unsafe-swiftshader"]
        : ["--disable-3d-apis"]),
      ...(mapOnly ? ["--disable-gpu-compositing"] : []),
      ...(debuggedAt ? [`--remote-debugging-port=${debuggedAt}`] : []),
      // Some systems' start scripts ask for it, and without a graphics card it is the slower way.
      "--disable-gpu-rasterization",
      `--disable-features=${FEATURES_OFF}`,
      "--disable-quic",
      "--no-first-run",
      "--disable-background-networking",
      "--disable-component-update",
      "--disable-sync",
    ],
  };
}

if (import.meta.main) {
  const why = ensureChromium();
  if (why) console.error(why);
  process.exitCode = why ? 1 : 0;
}
