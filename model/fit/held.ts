import { newHeaterHalf } from "./bands.ts";
import type { FittedGroup } from "./fit-group.ts";
import { BANDS, BINS, xAtBand } from "./grid.ts";
import { BAND_LEVELS, type GroupFit } from "./group.ts";
import { solve } from "./normal-equations.ts";
import { mostSpreads, robustSpread } from "./standing.ts";
import { LEVEL_FIELDS, type Tally } from "./tally.ts";

/**
 * Claimed against observed coverage: the share of votes that the new-heater bands held, each fold of contributors
 * judged by the line of all the others (its part taken out of the normal equations). Rows set aside are left out, as
 * they are of what the bands claim.
 */
export function heldShares(
  { parts, levels, joint }: FittedGroup,
  tally: Tally,
  group: GroupFit,
): GroupFit["held"] {
  const held = new Float64Array(BAND_LEVELS.length);
  let votes = 0;
  const bands = Array.from({ length: BANDS }, (_, band) => xAtBand(band + 0.5));
  const kept = Float64Array.from(bands, (x) => mostSpreads(group) * robustSpread(group, x));
  const halves = Float64Array.from(
    bands.flatMap((x) => BAND_LEVELS.map((level) => newHeaterHalf(group, x, level))),
  );
  const { cell, band } = levels;
  for (const { fold, ...part } of parts) {
    const { normal, line } = joint;
    // The left-out fold's rows at their residuals: its share of the right-hand side is information·line + score.
    const others = solve({
      aa: normal.aa - part.aa,
      ac: normal.ac - part.ac,
      cc: normal.cc - part.cc,
      ra: normal.ra - (part.aa * line.a + part.ac * line.c + part.a),
      rc: normal.rc - (part.ac * line.a + part.cc * line.c + part.c),
    });
    for (let k = 0; k < cell.length; k++) {
      const j = band[k] as number;
      const block = tally.levels.peek(fold, j);
      if (!block) continue;
      const at = ((cell[k] as number) - j * BINS) * LEVEL_FIELDS;
      const w = block[at + 1] as number;
      if (!(w > 0)) continue;
      // All times the votes: their mean x and r would cost two divisions each.
      const x = block[at + 2] as number;
      const r = block[at + 3] as number;
      if (Math.abs(r - line.a * w - line.c * x) > (kept[j] as number) * w) continue;
      votes += w;
      const q = Math.abs(r - others.a * w - others.c * x);
      for (let i = 0; i < BAND_LEVELS.length; i++) {
        if (q <= (halves[j * BAND_LEVELS.length + i] as number) * w) {
          held[i] = (held[i] as number) + w;
        }
      }
    }
  }
  if (votes === 0) return [];
  return BAND_LEVELS.map((level, i) => ({ level, observed: (held[i] as number) / votes }));
}
