import type { ComponentChildren } from "preact";

const OPERATOR = /^[=+−·/~≤><→±()[\],|…]$/;
const NUMBER = /^−?[\d.]+$/;
const LETTER = /^(\p{L}|ln|min|max)$/u;

/**
 * A run of mathematics, its tokens parted by spaces: numbers, operators, letters and words are told apart by what they
 * look like; x_j carries an index, x^2 a power.
 */
export function Run({ of }: { of: string }) {
  return <>{of.split(" ").map(token)}</>;
}

function token(text: string) {
  const [base = "", power] = text.split("^");
  const [letter = "", index] = base.split("_");
  const parts = [letter, index, power].flatMap((part) => (part === undefined ? [] : [atom(part)]));
  if (index !== undefined && power !== undefined) return <msubsup>{parts}</msubsup>;
  if (index !== undefined) return <msub>{parts}</msub>;
  return power === undefined ? parts : <msup>{parts}</msup>;
}

function atom(text: string) {
  if (OPERATOR.test(text)) return <mo>{text}</mo>;
  if (NUMBER.test(text)) return <mn>{text}</mn>;
  return LETTER.test(text) ? <mi>{text}</mi> : <mtext>{text}</mtext>;
}

const run = (of: ComponentChildren) => (typeof of === "string" ? <Run of={of} /> : of);

/** One above the other. */
export function Over({ top, under }: { top: ComponentChildren; under: ComponentChildren }) {
  return (
    <mfrac>
      <mrow>{run(top)}</mrow>
      <mrow>{run(under)}</mrow>
    </mfrac>
  );
}

export function Root({ of }: { of: string }) {
  return <msqrt>{run(of)}</msqrt>;
}

/** A displayed formula, a row for each of its lines: a phone has no room for long ones. */
export function Displayed({ lines }: { lines: ComponentChildren[] }) {
  return (
    <div class="formula">
      <math display="block">
        <mtable displaystyle>
          {lines.map((line, i) => (
            <mtr key={i}>
              {/* The empty row makes a first plus one between terms. */}
              <mtd class={i > 0 ? "further" : undefined}>
                {i > 0 && <mrow />}
                {run(line)}
              </mtd>
            </mtr>
          ))}
        </mtable>
      </math>
    </div>
  );
}
