import type { ComponentChildren } from "preact";
import { FIT_SETTINGS as S } from "../../model/fit/settings.ts";
import { m } from "../texts/method.ts";
import { Displayed, Over, Root, Run } from "./mathematics.tsx";

/** The lines of each formula, by the name its words have. */
const LINES: Record<keyof typeof m.formulas, ComponentChildren[]> = {
  belief: [
    `b ~ N ( ${S.prior_slope} , ${S.prior_slope_sd}^2 ) ,`,
    `${S.least_slope} ≤ b ≤ ${S.most_slope}`,
  ],
  vote: [
    <>
      <Run of="w =" />
      <Over top="1" under={<Root of="k" />} />
      <Run of="·" />
      <Over top="1" under="n" />
      <Run of="·" />
      <Over top="0.1^2" under="0.1^2 + v" />
    </>,
    <>
      <Run of={`v = ( 0.9 · σ )^2 + ${S.co_doubles_at}^2 · (`} />
      <Over top="C" under={`${S.usual_co_ppm}`} />
      <Run of="− 1 )" />
    </>,
  ],
  kinds: [
    "p ( r ) = π_h · φ ( r )",
    "+ ω · π_f · φ ( r − b · δ )",
    "+ π_c · φ ( r + b · x ) + π_o / 2.4",
    <>
      <Run of="ω =" />
      <Over top="U_f + 1" under="U + 1" />
    </>,
    <>
      <Run of="h =" />
      <Over top="π_h · φ ( r )" under="p ( r )" />
    </>,
  ],
  voice: [
    <>
      <Run of="g =" />
      <Over top="ψ" under="s^2 / V + τ^2" />
    </>,
    <>
      <Run of="ψ = ( 1 −" />
      <Over top="1" under="16" />
      <Run of="·" />
      <Over top="e^2" under="s^2 / V + τ^2" />
      <Run of=")^2" />
    </>,
  ],
  step: [
    `Δ y = b · Δ x + ${m.formula.noise}`,
    <>
      <Run of="s_Δ =" />
      <Root of={`2 s_w^2 + ( ${S.own_slope_sd} · Δ x )^2`} />
    </>,
  ],
  dispute: [
    <>
      <Run of="z =" />
      <Over top="b_r − b_s" under={<Root of="1 / I_r + 1 / I_s" />} />
    </>,
    "I_r → I_r · min ( 1 , 2 / z^2 )^2",
  ],
  covariance: [
    <>
      <Run of="Σ = B^−1 ( P +" />
      <Over top={`${S.model_folds} M + F · G`} under={`${S.model_folds} + F`} />
      <Run of=") B^−1" />
    </>,
    "G = g_1 g_1^T + g_2 g_2^T + …",
  ],
  flattening: [
    <>
      <Run of={`f = b · ${S.unstated_density_sd}^2 ·`} />
      <Over top="W" under="I" />
    </>,
    <>
      <Run of="κ =" />
      <Over top="f^4" under={`f^4 + ( ${S.flattening_corrected_from} · e )^4`} />
    </>,
    "b → b + κ · f",
  ],
  bias: [
    `d_a = ${S.bias_against_steps} · max ( 0 , | z | − ${S.harmless_against_steps} )`,
    `d_b = ${S.bias_per_share} · max ( 0 , u − ${S.harmless_share} )^2`,
    <>
      <Run of={`d_u = ${S.level_bias} ·`} />
      <Over top="u" under={`u + ${S.level_bias_half_at}`} />
    </>,
    "q = ( 1 − κ ) · f · ( x − x_m )",
    "L^2 = Σ ( x ) + q^2 / 2 + d_u^2 + d_a^2 + d_b^2 · x^2",
  ],
  scatter: [
    "r / S ~ t_ν ,",
    <>
      <Run of="S^2 = s^2 + γ^2 · x^2 ·" />
      <Over top="N" under={`N + ${S.growth_votes}`} />
    </>,
  ],
  mean: [
    <>
      <Run of="± t_m ·" />
      <Root of="L^2 + b^2 · σ^2" />
      <Run of="," />
    </>,
    <>
      <Run of="m =" />
      <Over
        top={`( ${S.model_folds} + F )^2`}
        under={`${(S.model_folds ?? Number.NaN) ** 2} / d + ${S.folds_as_one} · F`}
      />
    </>,
  ],
  newHeater: [
    <>
      <Run of="± t_q ·" />
      <Root of="L^2 + S^2 + b^2 · σ^2" />
      <Run of="," />
    </>,
    "1 / q = 1 / d + 1 / ν",
  ],
  aside: [`| r | > t_ν ( ${S.kept_share} ) · S`],
};

/** The rest of the model in displayed formulas, what their letters mean below each. */
export function MethodFormulas() {
  return (
    <div class="named-formulas">
      {Object.entries(m.formulas).map(([name, { title, note }]) => (
        <section key={name} class="named-formula" aria-labelledby={`formula-${name}`}>
          <h3 id={`formula-${name}`}>{title}</h3>
          <Displayed lines={LINES[name as keyof typeof LINES]} />
          <p class="note">{note}</p>
        </section>
      ))}
    </div>
  );
}
