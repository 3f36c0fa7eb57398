import { m } from "../texts/method.ts";

/** The model in one line of mathematics, and what its letters mean. Two rows: a phone has no room for one. */
export function MethodFormula() {
  const { pump, fan, heater, noise, letters, where } = m.formula;
  return (
    <>
      <div class="formula">
        <math display="block">
          <mtable displaystyle>
            <mtr>
              <mtd>
                <mi>ln</mi>
                <mo>(</mo>
                <mfrac>
                  <mtext>{pump}</mtext>
                  <mtext>{fan}</mtext>
                </mfrac>
                <mo>)</mo>
                <mo>=</mo>
                <mi>a</mi>
                <mo>+</mo>
                <mi>b</mi>
                <mo>·</mo>
                <mi>ln</mi>
                <mo>(</mo>
                <mfrac>
                  <mi>ρ</mi>
                  <mn>1.225</mn>
                </mfrac>
                <mo>)</mo>
              </mtd>
            </mtr>
            <mtr>
              {/* The empty row makes the first plus one between terms. */}
              <mtd class="continued">
                <mrow />
                <mo>+</mo>
                <mtext>{heater}</mtext>
                <mo>+</mo>
                <mtext>{noise}</mtext>
              </mtd>
            </mtr>
          </mtable>
        </math>
      </div>
      <p class="note">{where}</p>
      <dl class="letters">
        {letters.map(([letter, meaning]) => (
          <div key={letter}>
            <dt>{letter}</dt>
            <dd>{meaning}</dd>
          </div>
        ))}
      </dl>
    </>
  );
}
