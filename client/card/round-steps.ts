/** Steps that people count in, whole numbers of any unit. */
const ROUND = [1, 2, 5, 10, 20, 25, 50, 100, 200, 250, 500, 1000, 2000, 2500, 5000];
const PARTS = [10, 5, 4, 2];

export interface RoundSteps {
  step: number;
  values: number[];
}

/** Round values that reach from one to the other and outwards to whole steps, at most so many. */
export function roundSteps(from: number, to: number, most: number): RoundSteps {
  const fits = (step: number) => countOver(from, to, step) <= most;
  const step = ROUND.find(fits) ?? (ROUND.at(-1) as number);
  return { step, values: valuesOver(from, to, step) };
}

/** The same range in the finest round parts of its step that leave no more than so many ticks. */
export function finerSteps({ step, values }: RoundSteps, most: number): number[] {
  const [from, to] = [values[0] as number, values.at(-1) as number];
  const part = PARTS.map((parts) => step / parts).find(
    (fine) => ROUND.includes(fine) && countOver(from, to, fine) <= most,
  );
  return valuesOver(from, to, part ?? step);
}

function valuesOver(from: number, to: number, step: number): number[] {
  const first = Math.floor(from / step + DUST);
  return Array.from({ length: countOver(from, to, step) }, (_, i) => (first + i) * step);
}

function countOver(from: number, to: number, step: number): number {
  return Math.ceil(to / step - DUST) - Math.floor(from / step + DUST) + 1;
}

/** Converting units leaves some. */
const DUST = 1e-9;
