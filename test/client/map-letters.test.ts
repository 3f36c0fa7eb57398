import { expect, test } from "vitest";
import { cellDiscs } from "../../client/map/cell-layers.ts";
import { contourLabels } from "../../client/map/contour-layers.ts";
import { nameLayers } from "../../client/map/names.ts";
import { PALETTES } from "../../client/map/palette.ts";

test("names, rates and numbers on the map are 13 px at least, in the page's letters", () => {
  const { light } = PALETTES;
  const layers = [...nameLayers(light), contourLabels(light), ...cellDiscs(light)];
  const written = layers.filter(({ type }) => type === "symbol");
  expect(written.map(({ id }) => id).sort()).toEqual([
    "cell-counts",
    "contour-labels",
    "labels",
    "near-labels",
  ]);
  for (const { id, layout } of written) {
    const { "text-size": size, "text-font": font } = layout as Record<string, unknown>;
    expect(size, id).toBeGreaterThanOrEqual(13);
    expect(font, id).toEqual(["Noto Sans"]);
  }
});
