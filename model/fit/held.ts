import { newHeaterHalf } from "./bands.ts";
import type { FittedGroup } from "./fit-group.ts";
import { foldParts } from "./folds.ts";
import { BANDS, BINS } from "./grid.ts";
import { BAND_LEVELS, type GroupFit } from "./group.ts";
import { type Line, solve } from "./normal-equations.ts";
import { mostSpreads, robustSpread } from "./standing.ts";
import { LEVEL_FIELDS, type Tally } from "./tally.ts";

/**
 * Claimed against observed coverage: the share of votes that the new-heater bands held, each fold of contributors
 * judged by the line of all the others (its part taken out of the normal equations). Rows set aside are left out, as
 * they are of what the bands claim.
 */
export function heldShares(
  { levels, steps, joint }: FittedGroup,
  tally: Tally,
  group: GroupFit,
): GroupFit["held"] {
  const held = new Float64Array(BAND_LEVELS.length);
  let votes = 0;
  const most = mostSpreads(group);
  for (const { fold, ...part } of foldParts(tally, levels, steps, joint)) {
    const { normal, line } = joint;
    // The left-out fold's rows at their residuals: its share of the right-hand side is information·line + score.
    const others = solve({
      aa: normal.aa - part.aa,
      ac: normal.ac - part.ac,
      cc: normal.cc - part.cc,
      ra: normal.ra - (part.aa * line.a + part.ac * line.c + part.a),
      rc: normal.rc - (part.ac * line.a + part.cc * line.c + part.c),
    });
    eachCell(tally, fold, (x, r, w) => {
      if (Math.abs(above(line, x, r)) > most * robustSpread(group, x)) return;
      votes += w;
      const q = Math.abs(above(others, x, r));
      BAND_LEVELS.forEach((level, i) => {
        if (q <= newHeaterHalf(group, x, level)) held[i] = (held[i] as number) + w;
      });
    });
  }
  if (votes === 0) return [];
  return BAND_LEVELS.map((level, i) => ({ level, observed: (held[i] as number) / votes }));
}

function above({ a, c }: Line, x: number, r: number): number {
  return r - a - c * x;
}

function eachCell(tally: Tally, fold: number, see: (x: number, r: number, w: number) => void) {
  for (let band = 0; band < BANDS; band++) {
    const block = tally.foldLevels.peek(fold, band);
    for (let bin = 0; block && bin < BINS; bin++) {
      const w = block[bin * LEVEL_FIELDS + 1] as number;
      if (w > 0) {
        const [x, r] = [block[bin * LEVEL_FIELDS + 2], block[bin * LEVEL_FIELDS + 3]] as [
          number,
          number,
        ];
        see(x / w, r / w, w);
      }
    }
  }
}
