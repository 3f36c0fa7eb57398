import { readFile } from "node:fs/promises";
import type { Browser, Page } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import { ALONE, OWN, offClaim } from "../../client/atlas/bands/off-claim.ts";
import report from "../../client/atlas/bands/report.json" with { type: "json" };
import type { StudyReport, StudyScenario } from "../../client/atlas/bands/report.ts";
import { t } from "../../client/texts/app.ts";
import { b } from "../../client/texts/bands.ts";
import { dataWords } from "../../client/texts/data.ts";
import { estimatorName, shortEstimatorName } from "../../client/texts/estimators.ts";
import { format } from "../../client/units.ts";
import type { GroupFit, PublishedFit } from "../../model/fit/group.ts";
import { faultsAt } from "./faults.ts";
import { openPage, shownText, shownTexts, spaced } from "./open-page.ts";
import type { RunningAtlas } from "./running-atlas.ts";
import { demoAtlas, plainBrowser } from "./shared.ts";
import { LAPTOP, PHONE } from "./views.ts";

const STUDY = report as StudyReport;

let browser: Browser;
let atlas: RunningAtlas;

beforeAll(async () => {
  [browser, atlas] = await Promise.all([plainBrowser(), demoAtlas()]);
});

const openBands = () => openPage(browser, `${atlas.url}/#/data/bands`);
const select = (page: Page) => page.getByLabel(b.scenario, { exact: true });
const choose = (page: Page, { id }: StudyScenario) => select(page).selectOption(id);
async function tableRows(page: Page, label: string): Promise<string[][]> {
  const rows = page.getByRole("region", { name: b.tableOf(label) }).locator("tbody tr");
  const cells = await rows.evaluateAll((all) =>
    all.map((row) => [...row.children].map((cell) => cell.textContent?.trim() ?? "")),
  );
  return cells.map((row) => row.map(spaced));
}

/** The first scenario of each family, with rivals beside the atlas's own estimator. */
const ONE_OF_EACH = [...new Set(STUDY.scenarios.map(({ family }) => family))].map(
  (family) =>
    STUDY.scenarios.find((s) => s.family === family && s.results.length > 1) as StudyScenario,
);

/** Heights at which a line's points stand, by the number of the line. */
const heightsOf = (page: Page, chart: string, line: number) =>
  page
    .getByRole("img", { name: chart, exact: true })
    .locator(`.study-dot-${line} circle`)
    .evaluateAll((dots) => dots.map((dot) => Number(dot.getAttribute("cy"))));

test("the study comes only when its page is opened, and every family is there to choose", async () => {
  const { page, close } = await openPage(browser, `${atlas.url}/#/data`);
  const asked: string[] = [];
  page.on("request", (request) => asked.push(request.url()));
  await page.getByText(dataWords.privacy, { exact: true }).waitFor();
  expect(asked.filter((url) => url.includes("report"))).toEqual([]);
  await page.getByRole("link", { name: dataWords.pages.bands }).click();
  await select(page).waitFor();
  expect(asked.filter((url) => /\/report-[^/]*\.js$/.test(url))).toHaveLength(1);
  const groups = await select(page)
    .locator("optgroup")
    .evaluateAll((all) => all.map((group) => (group as HTMLOptGroupElement).label));
  expect(groups.sort()).toEqual(ONE_OF_EACH.map(({ family }) => b.families[family]).sort());
  await expect.poll(() => select(page).locator("option").count()).toBe(STUDY.scenarios.length);
  await close();
});

test("charts and tables of every family show the report's own figures", async () => {
  const { page, close } = await openBands();
  for (const scenario of ONE_OF_EACH) {
    await choose(page, scenario);
    const own = scenario.results.find(({ estimator }) => estimator === "Hypsotune");
    for (const [band, coverage] of [
      ["new_heater", own?.new_coverage_pct],
      ["mean", own?.mean_coverage_pct],
    ] as const) {
      const chart = b.coverageChart(b.bands[band], scenario.title);
      await page.getByRole("img", { name: chart, exact: true }).waitFor();
      for (const [air] of STUDY.airs.entries()) {
        // On the screen a greater figure stands higher: its height from the top is less.
        const off = STUDY.levels.map((level, l) => (coverage?.[l]?.[air] ?? 0) - 100 * level);
        const heights = await heightsOf(page, chart, air);
        expect(ranksOf(heights), `${scenario.id}, ${band}`).toEqual(ranksOf(off.map((v) => -v)));
      }
      const rows = (await tableRows(page, b.coverageTable)).filter(([n]) => n === b.bands[band]);
      expect(rows).toHaveLength(STUDY.airs.length);
      for (const [air, row] of rows.entries()) {
        expect(row.slice(2).map((cell) => cell.split(" ")[0])).toEqual(
          STUDY.levels.map((_, l) => format(coverage?.[l]?.[air] ?? 0, 1)),
        );
      }
    }
    const alone = scenario.results.find(({ estimator }) => estimator === ALONE);
    await expect
      .poll(() => tableRows(page, b.widthTable))
      .toEqual(
        [own, ...(alone ? [alone] : [])].flatMap((result) =>
          [
            [b.bands.new_heater, result?.new_width_pct] as const,
            [b.bands.mean, result?.mean_width_pct] as const,
          ].flatMap(([name, width]) =>
            STUDY.airs.map(({ label }, air) => [
              result === alone ? `${name} (${shortEstimatorName(ALONE)})` : name,
              label,
              ...STUDY.levels.map((_, l) => `± ${format(width?.[l]?.[air] ?? 0, 1)}`),
            ]),
          ),
        ),
      );
    const aside = (pct: number | null) => (pct === null ? "–" : format(pct, 1));
    expect((await tableRows(page, b.asideTable))[0]).toEqual([
      OWN,
      aside(own?.false_rejection_pct ?? null),
      aside(own?.caught_pct ?? null),
    ]);
    await expect
      .poll(() => tableRows(page, b.errorTable))
      .toEqual(
        scenario.results.map(({ estimator, rmse_pct }) => [
          estimatorName(estimator),
          ...rmse_pct.map((rmse) => format(rmse, 1)),
        ]),
      );
    for (const [line, { rmse_pct }] of scenario.results.entries()) {
      const heights = await heightsOf(page, b.errorChart(scenario.title), line);
      expect(ranksOf(heights)).toEqual(ranksOf(rmse_pct.map((v) => -v)));
    }
  }
  await close();
});

/** Which is lowest, next and so on; figures a hair apart count as one. */
function ranksOf(values: readonly number[]): number[] {
  const rounded = values.map((v) => Number(v.toFixed(2)));
  const order = [...new Set(rounded)].sort((a, z) => a - z);
  return rounded.map((v) => order.indexOf(v));
}

test("lines differ by dash pattern and carry their label; the corridor is marked", async () => {
  const { page, close } = await openBands();
  const scenario = ONE_OF_EACH[1] as StudyScenario;
  await choose(page, scenario);
  const chart = page.getByRole("img", { name: b.errorChart(scenario.title), exact: true });
  await chart.waitFor();
  const dashes = await chart
    .locator("g[class^=study-line-]")
    .evaluateAll((lines) => lines.map((line) => getComputedStyle(line).strokeDasharray));
  expect(new Set(dashes).size).toBe(scenario.results.length);
  const words = await shownTexts(chart.locator("text"));
  for (const { estimator } of scenario.results) {
    expect(words).toContain(shortEstimatorName(estimator));
  }
  const coverage = page.getByRole("img", {
    name: b.coverageChart(b.bands.mean, scenario.title),
    exact: true,
  });
  await expect.poll(() => coverage.locator(".corridor rect").count()).toBe(1);
  await close();
});

test("the CSV of a table has its figures", async () => {
  const { page, close } = await openBands();
  const scenario = ONE_OF_EACH.at(-1) as StudyScenario;
  await choose(page, scenario);
  const save = async (label: string) => {
    const download = page.waitForEvent("download");
    await page.getByRole("button", { name: b.csv(label) }).click();
    return (await readFile(await (await download).path(), "utf8")).trimEnd().split("\r\n");
  };
  const coverage = await save(b.coverageTable);
  expect(coverage[0]).toBe(
    "scenario,runs,band,air,density_kg_m3,claimed_pct,observed_pct,half_width_pct",
  );
  expect(coverage).toHaveLength(1 + 2 * STUDY.airs.length * STUDY.levels.length);
  const [own] = scenario.results;
  expect(coverage[1]).toBe(
    `${scenario.id},${scenario.runs},new_heater,"0 m, −20 °C",1.3953,50,${own?.new_coverage_pct[0]?.[0]},${own?.new_width_pct[0]?.[0]}`,
  );
  const errors = await save(b.errorTable);
  expect(errors).toHaveLength(1 + scenario.results.length * STUDY.airs.length);
  expect(errors.at(-1)).toContain(`,${scenario.results.at(-1)?.rmse_pct.at(-1)},`);
  await close();
});

test("of each kind of mistake it says up to which share each estimator holds", async () => {
  const { page, close } = await openBands();
  const kinds = STUDY.breakdown ?? [];
  const rows = page.locator("table.breakdown tbody tr");
  await rows.first().waitFor();
  await expect.poll(() => rows.count()).toBe(kinds.length);
  for (const [i, { shares_pct, holds_to_pct }] of kinds.entries()) {
    const shown = holds_to_pct.map(({ share_pct }) => {
      if (share_pct === 0) return `< ${shares_pct[0]}`;
      return share_pct === shares_pct.at(-1) ? `≥ ${share_pct}` : String(share_pct);
    });
    await expect.poll(() => shownTexts(rows.nth(i).locator("td"))).toEqual(shown);
    await expect.poll(() => shownText(rows.nth(i).locator("th"))).toContain("… %");
  }
  await close();
});

test("scenarios in which a band leaves its corridor are listed, worst first, and lead to their charts", async () => {
  const { page, close } = await openBands();
  const { narrow, wide } = offClaim(STUDY);
  await select(page).waitFor();
  const listed = await page
    .locator("tr[data-scenario]")
    .evaluateAll((rows) => rows.map((row) => (row as HTMLElement).dataset.scenario));
  expect(listed).toEqual([...narrow, ...wide].map(({ scenario }) => scenario.id));
  const last = [...narrow, ...wide].at(-1)?.scenario as StudyScenario;
  await page.getByRole("button", { name: b.show(last.title), exact: true }).press("Enter");
  await expect.poll(() => select(page).inputValue()).toBe(last.id);
  await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe("bands-scenario");
  await page.reload();
  await select(page).waitFor();
  await expect.poll(() => select(page).inputValue()).toBe(last.id);
  await close();
});

test("seed, size, runs, code version and the command are told", async () => {
  const { page, close } = await openBands();
  const facts = page.locator("section[aria-labelledby=simulated]");
  const told = await shownText(facts);
  const runs = STUDY.scenarios.reduce((sum, s) => sum + s.runs, 0);
  for (const fact of [STUDY.code, String(STUDY.seed), STUDY.size, format(runs), "npm run study"]) {
    expect(told).toContain(fact);
  }
  await close();
});

test("what the published fit found of its crowd stands by heater size and power", async () => {
  const { page, close } = await openBands();
  const fit = await atlas.get<PublishedFit>("/fit");
  const pct = (share: number, decimals = 0) => `${format(100 * share, decimals)} %`;
  const rows = () => tableRows(page, b.published.title);
  await expect.poll(async () => (await rows()).length).toBe(fit.groups.length);
  expect(fit.groups.length).toBeGreaterThanOrEqual(2);
  const shown = await rows();
  for (const [i, { contributors, tunes, between, within, shares }] of fit.groups.entries()) {
    expect(shown[i]?.slice(1, -1)).toEqual([
      format(contributors),
      format(tunes),
      `±${pct(Math.exp(between) - 1, 1)}`,
      `±${pct(Math.exp(within) - 1, 1)}`,
      ...[shares.never_retuned, shares.anything, shares.feet, shares.slips].map((v) => pct(v)),
    ]);
  }
  // A second crowd, richer at one end and none at the other.
  const [first, second] = fit.groups as [GroupFit, GroupFit];
  const groups = [
    {
      ...first,
      shares: { ...first.shares, second_crowd: 0.24 },
      second_crowd: { probability: 0.97, shift: Math.log(1.3), tilt: 0, sd: 0.08 },
    },
    { ...second, second_crowd: null },
  ];
  await page.route("**/api/fit", (route) => route.fulfill({ json: { ...fit, groups } }));
  await page.reload();
  await expect
    .poll(async () => (await rows()).map((row) => row.at(-1)))
    .toEqual([
      b.published.crowdIs("97 %", "24 %", b.published.richer("30 %")),
      b.published.noCrowd,
    ]);
  await close();
});

test("the method page is the project's document: its headings, tables, formulas and pictures", async () => {
  const { page, close } = await openPage(browser, `${atlas.url}/#/data/method`);
  const document = await readFile("docs/method.md", "utf8");
  await page.locator(".method table").first().waitFor();
  const written = [...document.matchAll(/^#+ (.+)$/gm)].map(([, heading]) => heading);
  expect(written.length).toBeGreaterThan(15);
  await expect.poll(() => shownTexts(page.locator(".method :is(h2, h3, h4)"))).toEqual(written);
  const tables = document.match(/^\| ?---/gm)?.length;
  await expect.poll(() => page.locator(".method table").count()).toBe(tables);
  await expect
    .poll(() => page.locator(".method pre").count())
    .toBe((document.match(/^```/gm)?.length ?? 0) / 2);
  await expect.poll(() => page.locator(".method svg").count()).toBe(2);
  await expect.poll(() => page.locator(".method [style]").count()).toBe(0);
  // A row that the study wrote into the document.
  const clean = STUDY.scenarios.find(({ id }) => id === "clean-200");
  await expect
    .poll(() => page.getByRole("cell", { name: `clean-200: ${clean?.title}` }).count())
    .toBe(1);
  await expect
    .poll(() => page.title())
    .toBe(`${dataWords.pages.method} · ${t.places.atlas} · ${t.name}`);
  await close();
});

test("links and the way back lead through the Atlas's pages, by keyboard alone", async () => {
  const { page, close } = await openPage(browser, `${atlas.url}/#/data`);
  const pages = page.getByRole("navigation", { name: dataWords.pagesLabel });
  const current = () => shownText(pages.locator("[aria-current=page]"));
  for (const name of ["bands", "method"] as const) {
    await pages.getByRole("link", { name: dataWords.pages[name] }).press("Enter");
    await page.waitForFunction((title) => document.title.startsWith(title), dataWords.pages[name]);
    await expect.poll(() => current()).toBe(dataWords.pages[name]);
    await expect
      .poll(() => page.getByRole("link", { name: t.places.atlas, exact: true }).count())
      .toBe(1);
  }
  await page.goBack();
  await select(page).waitFor();
  await expect.poll(() => current()).toBe(dataWords.pages.bands);
  await close();
});

for (const name of ["bands", "method"] as const) {
  test(`${name}: accessible in both themes at both sizes, never scrolls sideways, large targets`, async () => {
    const { page, close } = await openPage(browser, `${atlas.url}/#/data/${name}`);
    await (name === "bands"
      ? page.locator(".study-chart").last()
      : page.locator(".method table").last()
    ).waitFor();
    expect(await faultsAt(page, [LAPTOP, PHONE])).toEqual([]);
    const small = await page
      .locator("button:not(.skip), select, a")
      .evaluateAll((all) =>
        all.filter((one) => one.getBoundingClientRect().height < 43.5).map((one) => one.outerHTML),
      );
    expect(small).toEqual([]);
    await close();
  });
}
