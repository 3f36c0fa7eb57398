import { expect, test } from "vitest";
import type { MyHeater } from "../../client/app/heater/my-heater.ts";
import { ownView } from "../../client/app/heater/own-view.ts";
import {
  asideSentences,
  basisSentence,
  bestSentence,
  contradictionSentence,
  dayOf,
  leadSentence,
} from "../../client/app/heater/own-words.ts";
import { FIRST_QUESTION, type Question } from "../../client/base/question.ts";
import { heaterWords as words } from "../../client/texts/heater.ts";
import { nearQuery } from "../../client/ui/near-query.ts";
import { airAt, STANDARD_DENSITY_kg_m3 } from "../../model/air.ts";
import { ownStartTune } from "../../model/own-start.ts";
import { startTune } from "../../model/start.ts";
import type { OwnTune } from "../../model/tune.ts";
import { EMPTY_ATLAS, inventedFit, TRUE_PER_KRPM, TRUE_SLOPE } from "../model/invented-fit.ts";

const FIT = inventedFit();
const HERE: Question = {
  ...FIRST_QUESTION,
  site: { elevation_m: 2980, elevation_sd_m: 0, elevation_source: "given" },
  air: { temperature_C: -12 },
};

/** A tune of a heater so much richer than the average one, as the invented fit has it. */
function tuneAt(elevation_m: number, temperature_C: number, richer = 1): OwnTune {
  const air = airAt(elevation_m, { temperature_C }, 0);
  const ratio = (air.density_kg_m3 / STANDARD_DENSITY_kg_m3) ** TRUE_SLOPE;
  const end = (which: "low" | "high", fan_rpm: number) => ({
    pump_Hz: (richer * TRUE_PER_KRPM[which] * ratio * fan_rpm) / 1000,
    fan_rpm,
    co_ppm: 12,
  });
  return {
    site: { elevation_m },
    air: { temperature_C },
    low: end("low", 1650),
    high: end("high", 4400),
  };
}

function heaterWith(own_tunes: OwnTune[], more: Partial<MyHeater> = {}): MyHeater {
  const heater = { id: "van-heater", name: "Van", heat_kW: 5, changed_at: "" };
  const found_at = own_tunes.map((_, i) => `2026-10-${10 + i}T12:00:00.000Z`);
  return { heater, own_tunes, found_at, bracketed: 0, settings: undefined, ...more };
}

test("without tunes or settings the average answer stands", () => {
  const view = ownView(FIT, HERE, heaterWith([]));
  expect(view).toEqual({ tune: startTune(FIT, HERE), shifts_pct: null, own: null });
});

test("a tune of its own moves the answer and narrows it; the sentence says both widths", () => {
  const tune = tuneAt(600, 10, 1.08);
  const view = ownView(FIT, HERE, heaterWith([tune]));
  const average = startTune(FIT, HERE);
  expect(view?.tune.low.pump_Hz_exact).toBeGreaterThan(average.low.pump_Hz_exact * 1.03);
  const { half_pct, tunes, best_Hz } = view?.own ?? {};
  expect(tunes).toBe(1);
  expect(half_pct?.mine).toBeLessThan((half_pct?.others ?? 0) * 0.8);
  expect(best_Hz).toBeNull();
  const said = view?.own && basisSentence(view.own, view.tune.basis);
  expect(said).toMatch(
    /^From 80 tunes by 40 owners and 1 of your own: ±\d+ % instead of ±\d+ %\.$/,
  );
  // Nobody else has tuned one of this size.
  const alone = ownView(EMPTY_ATLAS, HERE, heaterWith([tune]));
  expect(alone?.own && basisSentence(alone.own, alone.tune.basis)).toMatch(
    /^From 1 tune of your own and an estimate from physics/,
  );
});

test("where the best setting lies is said from three own tunes, or from one that was bracketed", () => {
  const tunes = [tuneAt(600, 10), tuneAt(1500, 0), tuneAt(2200, -5)];
  const bestOf = (mine: MyHeater) => ownView(FIT, HERE, mine)?.own?.best_Hz;
  expect(bestOf(heaterWith(tunes.slice(0, 2)))).toBeNull();
  const best = ownStartTune(FIT, HERE, tunes).own_heater.low.best_bands_Hz[0];
  expect(best?.level).toBe(0.8);
  const shown = bestOf(heaterWith(tunes));
  expect(shown?.low).toEqual(best);
  expect(bestOf(heaterWith(tunes.slice(0, 1), { bracketed: 1 }))).not.toBeNull();
  expect(shown && bestSentence(shown)).toContain(
    `${best?.lower.toFixed(2)}–${best?.upper.toFixed(2)} Hz at lowest power`,
  );
});

test("what leaving it as it is would do: rich and lean by their consequences, alike ends in one figure", () => {
  const average = startTune(FIT, HERE);
  const at = "2026-09-01T00:00:00.000Z";
  const low = { pump_Hz: 1.38 * average.low.pump_Hz_exact, fan_rpm: average.low.fan_rpm };
  // The same mixture at twice the fan speed.
  const high = { pump_Hz: 2 * average.high.pump_Hz_exact, fan_rpm: 2 * average.high.fan_rpm };
  const view = ownView(FIT, HERE, heaterWith([], { settings: { at, low, high } }));
  expect(view?.shifts_pct).toEqual({ low: 38, high: 0 });
  expect(leadSentence({ low: 38, high: 36 })).toBe(
    "Left as it is, your heater would run 38 % rich here: soot, more carbon monoxide, more fuel.",
  );
  expect(leadSentence({ low: 3, high: -4 })).toBe(words.lead.right);
  expect(leadSentence({ low: 38, high: 0 })).toBe(
    "Left as it is, your heater would run 38 % rich at lowest power and about right at highest here: soot, more carbon monoxide, more fuel.",
  );
  const both = leadSentence({ low: 20, high: -15 });
  expect(both).toContain(words.lead.bothMean);
});

test("mistaken and contradicting own tunes are said by their date, in words of the page", () => {
  const slipped = {
    ...tuneAt(600, 10),
    low: { pump_Hz: 63, fan_rpm: 1650, co_ppm: 12 },
    high: { pump_Hz: 270, fan_rpm: 4400, co_ppm: 9 },
  };
  const mine = heaterWith([tuneAt(1500, 0), slipped]);
  const own = ownView(FIT, HERE, mine)?.own;
  expect(own?.tunes).toBe(1);
  const date = dayOf(mine.found_at[1] ?? "");
  // One sentence for both figures.
  expect(own?.set_aside.length).toBe(2);
  expect(asideSentences(own?.set_aside ?? [], mine.found_at)).toEqual([
    `Your tune of ${date} does not count. It looks mistyped: pump rate (lowest power), pump rate (highest power). Correct it in the logbook.`,
  ]);
  const first = dayOf(mine.found_at[0] ?? "");
  const low = { tune: 1, end: "low", code: "far_richer", sentence: "" } as const;
  const high = { ...low, end: "high" } as const;
  const said = (...asides: Parameters<typeof asideSentences>[0]) =>
    asideSentences(asides, mine.found_at);
  expect(said(low)).toEqual([`${words.aside.ofEnd(first, "lowest power")} ${words.aside.richer}`]);
  expect(said(low, high)).toEqual([`${words.aside.of(first)} ${words.aside.richer}`]);
  expect(said(low, { ...high, code: "far_leaner" })).toEqual([
    `${words.aside.of(first)} ${words.aside.apart}`,
  ]);
  const contradiction = { tunes: [1, 2], end: "high", sentence: "" } as const;
  expect(contradictionSentence({ ...contradiction, tunes: [1, 2] }, mine.found_at)).toContain(
    `of ${dayOf(mine.found_at[0] ?? "")} and ${date} contradict each other at highest power`,
  );
});

test("figures that cannot stand together give no answer", () => {
  expect(ownView(FIT, { ...HERE, low_fan_rpm: -1 }, heaterWith([]))).toBeNull();
});

test("tunes like this one: a named place is asked about, a device's position never, its elevation to 10 m", () => {
  const site = { ...HERE.site, elevation_m: 1234.6 };
  const there = { ...HERE, site, lat: 46.5, lon: 8.25, place: "Hut" };
  const near = { heat_kW: 5, elevation_m: 1230, temperature_C: -12 };
  expect(nearQuery(there)).toEqual({ ...near, lat: 46.5, lon: 8.25 });
  expect(nearQuery({ ...there, place: null })).toEqual(near);
  expect(nearQuery({ ...there, air: { qnh_hPa: undefined } as never })).toEqual({
    heat_kW: 5,
    elevation_m: 1230,
    lat: 46.5,
    lon: 8.25,
  });
});
