import { gzipSync } from "node:zlib";
import { cellToChildren, cellToParent, latLngToCell } from "h3-js";
import { expect, test } from "vitest";
import { seeded } from "../../seed-demo/random.ts";
import { centre } from "../../server/cells.ts";
import { type Cell, cells as cellsSchema } from "../../server/contract.ts";
import { cellsAnswer, WORLD } from "../../server/open-documents.ts";

const { uniform } = seeded(20261130);
const wide = [
  [46.5, 8],
  [39, -106],
  [-16, -68],
].map(([lat = 0, lon = 0]) => latLngToCell(lat, lon, 1));

/** A map as full as it can be: every cell of three wide ones has tunes. */
const CELLS: Cell[] = wide
  .flatMap((cell) => cellToChildren(cell, 5))
  .map((cell) => ({
    cell,
    ...centre(cell),
    tunes: 1 + Math.floor(400 * uniform()),
    contributors: 1 + Math.floor(90 * uniform()),
    elevation_m: 100 * Math.floor(45 * uniform()),
    mixture_shift_pct: {
      low: Math.round(300 * uniform()) / 10,
      high: (Math.round(300 * uniform()) - 150) / 10,
    },
  }));
const ask = (parent: string, atOnce?: number) => {
  const text = cellsAnswer(CELLS, parent, false, atOnce);
  return { ...cellsSchema.parse(JSON.parse(text)), packed: gzipSync(text).length };
};
const total = (cells: readonly Cell[], of: "tunes" | "contributors") =>
  cells.reduce((sum, cell) => sum + cell[of], 0);

test("where there are many cells the world is told in wide ones, which say how many each stands for", () => {
  const { cells } = ask(WORLD);
  expect(cells.map(({ cell }) => cell)).toEqual(wide);
  for (const of of ["tunes", "contributors"] as const)
    expect(total(cells, of)).toBe(total(CELLS, of));
  for (const one of cells) {
    const within = ask(one.cell).cells;
    expect(within.length).toBe(one.cells_within);
    expect(within.every(({ cell }) => cellToParent(cell, 1) === one.cell)).toBe(true);
    expect(total(within, "tunes")).toBe(one.tunes);
    // By hand: the mean of its tunes' elevations, to 100 m.
    const mean = within.reduce((sum, c) => sum + c.tunes * c.elevation_m, 0) / one.tunes;
    expect(Math.abs(one.elevation_m - mean)).toBeLessThanOrEqual(50);
  }
});

test("a full wide cell takes at most 100 kB on the way, a world of such ones far less", () => {
  for (const cell of wide) expect(ask(cell).packed).toBeLessThan(100_000);
  expect(ask(WORLD).packed).toBeLessThan(1000);
});

test("few cells are told one by one", () => {
  expect(ask(WORLD, CELLS.length).cells).toEqual(CELLS);
});
