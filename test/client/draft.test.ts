import { expect, test } from "vitest";
import {
  draftOf,
  emptyDraft,
  nextDraft,
  tuneOf,
  withValue,
  withValues,
} from "../../client/share/draft.ts";
import { judge } from "../../client/share/judge.ts";
import { shareWords } from "../../client/texts/share.ts";
import { FOUND } from "../../model/fit/row.ts";
import { tuneSchema } from "../../model/tune.ts";
import { inventedTunes } from "../browser/crowd.ts";
import { EMPTY_ATLAS } from "../model/invented-fit.ts";

const context = { fit: EMPTY_ATLAS, terrain: null, month: "2026-11" };

const asSent = (tune: unknown) => JSON.parse(JSON.stringify(tune));

test("a tune put into the form and taken out again is the same tune", () => {
  for (const tune of inventedTunes(10)) {
    const { contributor, ...rest } = tune;
    expect(tuneOf(draftOf(rest, null), contributor)).toEqual(asSent(tune));
  }
  const below = { ...inventedTunes(1)[0], low: { pump_Hz: 1, fan_rpm: 1600, co_below_ppm: 30 } };
  const { contributor, ...rest } = tuneSchema.parse(below);
  expect(tuneOf(draftOf(rest, null), contributor)).toEqual(below);
});

test("how a tune was found goes with it, is not taken for known, and is asked again of the next one", () => {
  const [{ contributor, ...tune } = {} as never] = inventedTunes(1);
  const sent = (draft: ReturnType<typeof emptyDraft>) => tuneOf(draft, contributor);
  for (const found of FOUND) {
    expect(sent({ ...draftOf(tune, null), found })).toMatchObject({ found });
  }
  expect(sent({ ...draftOf(tune, null), found: undefined })).not.toHaveProperty("found");
  expect(nextDraft(draftOf(tune, null)).found).toBeUndefined();
});

test("an estimated elevation goes with its uncertainty, both to 10 m; one that is typed in its place goes as typed", () => {
  const [{ contributor, ...tune } = {} as never] = inventedTunes(1);
  const site = { elevation_m: 2243, elevation_sd_m: 31, lat: 41.2, lon: 74.9 };
  const draft = { ...draftOf(tune, null), site };
  const sent = (of: typeof draft) => (tuneOf(of, contributor) as { site: object }).site;
  expect(sent(draft)).toEqual({ elevation_m: 2240, elevation_sd_m: 40, lat: 41.2, lon: 74.9 });
  // In the form and out again, as when a tune is revised or waits: the same.
  const kept = tuneSchema.parse(tuneOf(draft, contributor));
  expect(sent(draftOf(kept, null) as typeof draft)).toEqual(kept.site);
  const typed = withValue(draft, "site.elevation_m", 2251) as typeof draft;
  expect(sent(typed)).toEqual({ elevation_m: 2251, lat: 41.2, lon: 74.9 });
  expect(judge(draft, context).tune?.site.elevation_sd_m).toBe(40);
});

test("the month goes as the schema has it, however its year and month are parted", () => {
  const [tune] = inventedTunes(1);
  if (!tune) throw new Error("no tune");
  const sent = (tuned_on: string) =>
    (tuneOf({ ...draftOf(tune, null), tuned_on }, "k") as { tuned_on: string }).tuned_on;
  for (const typed of [
    "2026-10",
    "2026–10",
    "2026−10",
    "2026.10",
    "2026/10",
    "2026 10",
    "202610",
  ]) {
    expect([typed, sent(typed)]).toEqual([typed, "2026-10"]);
  }
  for (const typed of ["2026", "10.2026", "October"]) expect(sent(typed)).toBe(typed);
});

test("the name of a place never leaves with a tune", () => {
  const [tune] = inventedTunes(1);
  if (!tune) throw new Error("no tune");
  expect(JSON.stringify(tuneOf(draftOf(tune, "Secret Meadow"), "k"))).not.toContain("Secret");
});

test("an empty form lacks what the schema needs, said in words of the form", () => {
  const { tune, errors } = judge(emptyDraft(), context);
  expect(tune).toBe(null);
  expect(errors).toEqual({
    "site.elevation_m": shareWords.missing,
    "low.pump_Hz": shareWords.missing,
    "low.fan_rpm": shareWords.missing,
    "low.co_ppm": shareWords.missingCo,
    "high.pump_Hz": shareWords.missing,
    "high.fan_rpm": shareWords.missing,
    "high.co_ppm": shareWords.missingCo,
  });
});

test("suggestions of the screening, all taken, leave nothing to question", () => {
  const [good] = inventedTunes(1);
  if (!good) throw new Error("no tune");
  let draft = draftOf(good, null);
  draft = withValue(draft, "low.pump_Hz", good.low.pump_Hz * 60);
  draft = withValue(draft, "high.pump_Hz", good.high.pump_Hz * 60);
  const { slips } = judge(draft, context);
  expect(slips.map(({ field }) => field)).toEqual(["low.pump_Hz", "high.pump_Hz"]);
  const mended = withValues(
    draft,
    slips.map(({ field, suggestion }) => ({ field, value: suggestion as number })),
  );
  expect(judge(mended, context).slips).toEqual([]);
});
