import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { partsOf } from "../../markdown-page.ts";
import { bandsAt } from "../../model/fit/bands.ts";
import type { GroupFit } from "../../model/fit/group.ts";
import { priorGroup } from "../../model/fit/prior.ts";
import { NUMERICS, SETTINGS } from "../../model/fit/settings.ts";
import { ownHeaterAt, quantileOf } from "../../model/own-heater.ts";

const DOCUMENT = readFileSync("docs/method.md", "utf8");
const picture = (file: string) => readFileSync(`docs/${file}`, "utf8");
const parts = partsOf(DOCUMENT, { below: 1, picture });
const html = parts.map((part) => part.html).join("");

test("every heading begins a part with an id of its own, under the page's own heading", () => {
  const headings = [...DOCUMENT.matchAll(/^#{1,3} (.+)$/gm)];
  expect(parts).toHaveLength(headings.length);
  expect(new Set(parts.map(({ id }) => id)).size).toBe(parts.length);
  for (const { id, html } of parts) expect(html).toMatch(new RegExp(`^<h[234] id="${id}">`));
  expect(html).not.toContain("<h1");
});

test("tables and formulas scroll, can be focused and have names of their own", () => {
  const wide = html.match(/<table>|<pre>/g) ?? [];
  const names = [...html.matchAll(/<section class="scrolls" tabindex="0" aria-label="([^"]+)">/g)];
  expect(wide.length).toBeGreaterThan(10);
  expect(names).toHaveLength(wide.length);
  expect(new Set(names.map(([, name]) => name)).size).toBe(wide.length);
});

test("nothing that the page's policy forbids, no comments, no marks left over", () => {
  expect(html).not.toMatch(/ style=|<style|<script|<!--|\son\w+=|\| ---|\*\*/);
  expect(partsOf("# A\n\n<img src=x onerror=alert(1)> <b>b</b>", { below: 1, picture })).toEqual([
    { id: "method-a", html: expect.not.stringMatching(/<img|<b>/) },
  ]);
  const code = partsOf('# A\n\n```\na < b & "c"\n```', { below: 1, picture })[0]?.html;
  expect(code).toContain("<code>a &lt; b &amp; &quot;c&quot;</code>");
});

test("pictures stand in the page with their words", () => {
  const pictures = [...html.matchAll(/<svg role="img" aria-label="([^"]{40,})"/g)];
  expect(pictures).toHaveLength(2);
});

test("the page for owners comes first and has no symbols", () => {
  const owners = DOCUMENT.slice(
    DOCUMENT.indexOf("## For owners"),
    DOCUMENT.indexOf("## For statisticians"),
  );
  expect(owners.length).toBeGreaterThan(1500);
  expect(owners).not.toMatch(/[=√Σ∫α-ωΑ-Ω]|\bln\b|```/);
});

test("every setting of the estimator is listed with its origin, and no other", () => {
  const from = DOCUMENT.indexOf("| setting | what it is | origin |");
  const table = DOCUMENT.slice(from, DOCUMENT.indexOf("\n\n", from));
  const rows = table.split("\n").slice(2);
  const named = rows.flatMap((row) =>
    [...(row.split("|")[1] as string).matchAll(/`(\w+)`/g)].map(([, name]) => name),
  );
  expect(named.toSorted()).toEqual(Object.keys({ ...SETTINGS, ...NUMERICS }).toSorted());
  for (const row of rows) expect(row.split("|")[3]?.trim().length, row).toBeGreaterThan(5);
});

test("the worked example has the figures that the code makes", () => {
  const from = DOCUMENT.indexOf("### A worked example");
  const example = DOCUMENT.slice(from, DOCUMENT.indexOf("###", from + 3)).replaceAll(/\s+/g, " ");
  const prior = priorGroup(5, "low");
  const group: GroupFit = {
    ...prior,
    ...{ intercept: -0.39, slope: 0.9, between: 0.08, own_slope: 0.05, within: 0.05 },
    step_Hz: 0,
    ...{ line_df: 200, spread_df: 150, tail_df: 20 },
    covariance: [
      [0.0001, 0.0002],
      [0.0002, 0.0016],
    ],
    shares: { ...prior.shares, slips: 0.04 },
  };
  const x = -0.3;
  const { pump_Hz_per_krpm, mean_bands, new_heater_bands } = bandsAt(group, 1.225 * Math.exp(x), {
    mean_levels: [0.95],
    new_heater_levels: [0.95],
  });
  expect(example).toContain(`= ${pump_Hz_per_krpm.toFixed(3)} Hz per 1,000 rpm`);
  for (const band of [...mean_bands, ...new_heater_bands]) {
    expect(example).toContain(`${band.lower.toFixed(3)} to ${band.upper.toFixed(3)}`);
  }
  const { next, best, mistaken } = ownHeaterAt(group, [{ x: 0, y: -0.3, variance: 0 }], x);
  expect(example).toContain(`${(100 * (mistaken[0] as number)).toFixed(1)} %`);
  for (const mixture of [next, best]) {
    const [lower, upper] = [0.025, 0.975].map((p) => Math.exp(quantileOf(mixture, p)).toFixed(3));
    expect(example).toContain(`${lower} to ${upper}`);
  }
});
