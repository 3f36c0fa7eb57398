import type { Browser } from "playwright-core";
import { launchChromium } from "./chromium.ts";
import { inventedTunes, tuneFarOff, tuneInPulsesAMinute } from "./crowd.ts";
import { type RunningAtlas, runAtlas } from "./running-atlas.ts";

// What the test files of one worker use together: made when first asked for, ended with the worker.

/** A browser without WebGL, for all that needs no drawn map. */
export const plainBrowser = once(() => launchChromium({ webgl: false }));

/** A browser that draws the map. */
export const mapBrowser = once(() => launchChromium({ mapOnly: true }));

/** An atlas that nobody writes to: the invented crowd, a tune held at the door, two that the fit sets aside. */
export const demoAtlas = once(async () => {
  const atlas = await runAtlas(["--demo"]);
  await atlas.load([...inventedTunes(), tuneInPulsesAMinute(), tuneFarOff(2), tuneFarOff(5)]);
  return atlas;
});

/** An atlas that nobody has written to or will. */
export const emptyAtlas = once(() => runAtlas());

function once<T extends Browser | RunningAtlas>(make: () => Promise<T>): () => Promise<T> {
  let made: Promise<T> | undefined;
  return () => {
    made ??= make();
    return made;
  };
}
