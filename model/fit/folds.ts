import type { Cells } from "./cells.ts";
import { BINS, STEP_BINS } from "./grid.ts";
import { type Joint, rowWorth, stepSd, stepWorth } from "./joint.ts";
import { inverse, type Line, type Normal, type Symmetric } from "./normal-equations.ts";
import { FOLDS, LEVEL_FIELDS, STEP_FIELDS, type Tally } from "./tally.ts";

/** One fold's part in the normal equations: its information, and its score at the fitted line. */
export interface FoldPart extends Symmetric {
  fold: number;
  /** Σ of worth × residual, and of worth × x × residual. */
  a: number;
  c: number;
}

/** Each fold's part; folds that hold nothing are left out. */
export function foldParts(tally: Tally, levels: Cells, steps: Cells, joint: Joint): FoldPart[] {
  // Once for all folds: in a large atlas each of them has rows in nearly every cell.
  const ofRows = levels.w.map((_, k) => rowWorth(joint, k, levels.band[k] as number));
  const ofSteps = steps.w.map((_, k) => stepWorth(joint, k, steps.x[k] as number));
  const parts = Array.from({ length: FOLDS }, (_, fold): FoldPart => {
    const part = rowsPart(tally, fold, levels, ofRows, joint.line);
    return withSteps(part, tally, steps, ofSteps, joint.line);
  });
  return parts.filter(({ aa }) => aa > 0);
}

function rowsPart(
  tally: Tally,
  fold: number,
  { cell, band }: Cells,
  worths: Float64Array,
  line: Line,
): FoldPart {
  let aa = 0;
  let ac = 0;
  let cc = 0;
  let a = 0;
  let c = 0;
  let j = -1;
  let block: Float64Array | undefined;
  for (let k = 0; k < cell.length; k++) {
    if (band[k] !== j) {
      j = band[k] as number;
      block = tally.levels.peek(fold, j);
    }
    if (!block) continue;
    const i = ((cell[k] as number) - j * BINS) * LEVEL_FIELDS;
    const w = block[i + 1] as number;
    if (!(w > 0)) continue;
    const worth = worths[k] as number;
    const x = block[i + 2] as number;
    const r = block[i + 3] as number;
    const xx = block[i + 4] as number;
    const xr = block[i + 5] as number;
    aa += worth * w;
    ac += worth * x;
    cc += worth * xx;
    a += worth * (r - line.a * w - line.c * x);
    c += worth * (xr - line.a * x - line.c * xx);
  }
  return { fold, aa, ac, cc, a, c };
}

function withSteps(
  part: FoldPart,
  tally: Tally,
  { cell, band }: Cells,
  worths: Float64Array,
  line: Line,
): FoldPart {
  let { cc, c } = part;
  let j = -1;
  let block: Float64Array | undefined;
  for (let k = 0; k < cell.length; k++) {
    if (band[k] !== j) {
      j = band[k] as number;
      block = tally.steps.peek(part.fold, j);
    }
    if (!block) continue;
    const i = ((cell[k] as number) - j * STEP_BINS) * STEP_FIELDS;
    if (!((block[i] as number) > 0)) continue;
    const worth = worths[k] as number;
    const xx = block[i + 1] as number;
    const xr = block[i + 2] as number;
    cc += worth * xx;
    c += worth * (xr - line.c * xx);
  }
  return { ...part, cc, c };
}

/**
 * How the folds' scores scatter: the inside of the bias-reduced clustered sandwich, CR2 (Bell & McCaffrey 2002),
 * Σ g̃g̃ᵀ with g̃ = (I − I_f·B⁻¹)^(−½)·g_f, where I_f is a fold's information and B the bread.
 */
export function foldScatter(parts: readonly FoldPart[], bread: Symmetric): Symmetric {
  const inside: Symmetric = { aa: 0, ac: 0, cc: 0 };
  const outside = inverse(bread);
  for (const part of parts) {
    const [a, c] = inverseRoot(lessLeverage(part, outside), [part.a, part.c]);
    inside.aa += a * a;
    inside.ac += a * c;
    inside.cc += c * c;
  }
  return inside;
}

/**
 * How the scores would scatter were each vote a heater by itself, as the model has it. What bands differ by is left to
 * the folds, which see whether they do. The more contributors, the better their tunes' noise within averages out.
 */
export function expectedScatter(
  levels: Cells,
  steps: Cells,
  joint: Joint,
  folds: number,
): Symmetric {
  const inside: Symmetric = { aa: 0, ac: 0, cc: 0 };
  const noise = Math.max(0, 1 - 2 / folds) * joint.within ** 2;
  // A crowd may agree more closely than any one heater does with itself.
  const variance = Math.max(joint.s ** 2 / 2, joint.s ** 2 - noise);
  for (let k = 0; k < levels.w.length; k++) {
    const x = levels.x[k] as number;
    const worth = rowWorth(joint, k, levels.band[k] as number);
    const v = (levels.w[k] as number) * worth ** 2 * variance;
    inside.aa += v;
    inside.ac += v * x;
    inside.cc += v * x * x;
  }
  for (let k = 0; k < steps.w.length; k++) {
    const dx = steps.x[k] as number;
    const honest = joint.honestStep[k] as number;
    inside.cc += (steps.w[k] as number) * stepWorth(joint, k, dx) * honest * dx * dx;
  }
  return inside;
}

type Matrix = [number, number, number, number];

/** I − I_f·B⁻¹. */
function lessLeverage(f: Symmetric, b: Symmetric): Matrix {
  return [
    1 - (f.aa * b.aa + f.ac * b.ac),
    -(f.aa * b.ac + f.ac * b.cc),
    -(f.ac * b.aa + f.cc * b.ac),
    1 - (f.ac * b.ac + f.cc * b.cc),
  ];
}

/** Leverage beyond this is taken as this: a fold that alone decides says nothing of how sure it is. */
const LEAST_LEFT = 0.02;

/** M^(−½)·v of a 2 × 2 matrix with positive eigenvalues: M^½ = (M + √det·I)/√(tr + 2√det). */
function inverseRoot([p, q, r, s]: Matrix, [a, c]: [number, number]): [number, number] {
  const root = Math.sqrt(Math.max(LEAST_LEFT ** 2, p * s - q * r));
  const scale = Math.sqrt(Math.max(LEAST_LEFT, p + s + 2 * root));
  const P = (p + root) / scale;
  const Q = q / scale;
  const R = r / scale;
  const S = (s + root) / scale;
  const determinant = Math.max(LEAST_LEFT, P * S - Q * R);
  return [(S * a - Q * c) / determinant, (P * c - R * a) / determinant];
}

/** B⁻¹·inside·B⁻¹, from the outside B⁻¹. */
export function sandwich(o: Symmetric, i: Symmetric): Symmetric {
  const m00 = o.aa * i.aa + o.ac * i.ac;
  const m01 = o.aa * i.ac + o.ac * i.cc;
  const m10 = o.ac * i.aa + o.cc * i.ac;
  const m11 = o.ac * i.ac + o.cc * i.cc;
  return {
    aa: m00 * o.aa + m01 * o.ac,
    ac: m00 * o.ac + m01 * o.cc,
    cc: m10 * o.ac + m11 * o.cc,
  };
}

/**
 * The bread: how the score changes with the line, weights changing with it. For weights that are probabilities p of a
 * normal against something flat that is worth·(1 − (1 − p)·q²/s²), of rows and of steps alike. Kept from being less than
 * half the information.
 */
export function breadOf(levels: Cells, steps: Cells, joint: Joint): Symmetric {
  const { line, s, normal } = joint;
  let { aa, ac, cc } = normal;
  for (let k = 0; k < levels.w.length; k++) {
    const x = levels.x[k] as number;
    const q = (levels.r[k] as number) - line.a - line.c * x;
    const p = joint.honest[k] as number;
    const worth = rowWorth(joint, k, levels.band[k] as number) * (levels.w[k] as number);
    const less = worth * (1 - p) * (q / s) ** 2;
    aa -= less;
    ac -= less * x;
    cc -= less * x * x;
  }
  for (let k = 0; k < steps.w.length; k++) {
    const dx = steps.x[k] as number;
    const q = (steps.r[k] as number) - line.c * dx;
    const p = joint.honestStep[k] as number;
    const worth = stepWorth(joint, k, dx) * (steps.w[k] as number) * dx * dx;
    cc -= worth * (1 - p) * (q / stepSd(joint.within, dx)) ** 2;
  }
  return positive({ aa, ac, cc }, normal);
}

function positive(bread: Symmetric, normal: Normal): Symmetric {
  const half = { aa: normal.aa / 2, ac: normal.ac / 2, cc: normal.cc / 2 };
  const da = bread.aa - half.aa;
  const dc = bread.cc - half.cc;
  const enough = da > 0 && dc > 0 && da * dc > (bread.ac - half.ac) ** 2;
  return enough ? bread : half;
}
