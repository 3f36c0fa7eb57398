import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { openPage } from "./open-page.ts";
import { emptyAtlas, plainBrowser } from "./shared.ts";

// Every test of a page relies on it.
test.each<[what: string, says: RegExp, make: (page: Page) => Promise<unknown>]>([
  ["an error", /error: broken/, (page) => page.evaluate(() => console.error("broken"))],
  ["a warning", /warning: odd/, (page) => page.evaluate(() => console.warn("odd"))],
  [
    "a drawing that cannot be",
    /error: .*negative value/,
    (page) =>
      page.evaluate(() => {
        const svg = document.body.appendChild(
          document.createElementNS("http://www.w3.org/2000/svg", "svg"),
        );
        svg.innerHTML = '<rect width="-1" height="1" />';
      }),
  ],
  [
    "an exception that nobody caught",
    /not caught: oh/,
    async (page) => {
      const thrown = page.waitForEvent("pageerror");
      await page.evaluate(() => {
        setTimeout(() => {
          throw new Error("oh");
        });
      });
      await thrown;
    },
  ],
  [
    "a file that is not there",
    /error: Failed to load resource: .*404/,
    (page) => page.evaluate(() => fetch("/api/nothing")),
  ],
  [
    "another origin",
    /asked another origin: http:\/\/127\.0\.0\.1/,
    (page) =>
      page.evaluate(() =>
        fetch(location.origin.replace("localhost", "127.0.0.1"), { mode: "no-cors" }),
      ),
  ],
])("a page that complains of %s fails its test, unless that is expected", async (_, says, make) => {
  const [browser, { url }] = await Promise.all([plainBrowser(), emptyAtlas()]);
  const { page, close } = await openPage(browser, url, { bypassCSP: true });
  await make(page);
  await expect(close()).rejects.toThrow(says);
  await close(says);
});
