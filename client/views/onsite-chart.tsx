import type { SweepAnswer } from "../../model/sweep/answer.ts";
import { layOut, MARGIN } from "../onsite/chart-layout.ts";
import { decimalsOf, hz } from "../onsite/figures.ts";
import type { Plan } from "../onsite/plan.ts";
import type { AtEnd } from "../onsite/stage.ts";
import { onsite as words } from "../texts/onsite.ts";
import { format } from "../units.ts";

/** CO over pump rate: readings, what is believed of the curve, the minimum's interval, the next setting; all in words too. */
export function SweepChart(props: {
  stage: AtEnd & { answer: SweepAnswer };
  plan: Plan;
  next_Hz: number | undefined;
}) {
  const { stage, plan } = props;
  const { picture, answer } = stage;
  const decimals = decimalsOf(plan.step_Hz) + 1;
  const wide = answer.intervals_Hz.at(-1);
  const figures = [answer.minimum_Hz, wide?.lower ?? 0, wide?.upper ?? 0].map((rate) =>
    hz(rate, decimals),
  ) as [string, string, string];
  const { guards_Hz } = answer;
  const known = picture.levels.length > 0;
  return (
    <section class="sheet" aria-labelledby="chart">
      <h3 id="chart">{words.chart.title}</h3>
      {known && <Drawing {...props} label={words.chart.label(...figures)} />}
      <p>{known ? words.chart.estimate(...figures) : words.chart.first}</p>
      <p class="note">
        {words.guards(hz(guards_Hz.lean, decimals), hz(guards_Hz.rich, decimals))}{" "}
        {known && words.chart.lag(format(answer.lag_s))}
      </p>
    </section>
  );
}

/** The curve as it is believed, once anything was read. */
function Drawing(props: Parameters<typeof SweepChart>[0] & { label: string }) {
  const { stage, plan, next_Hz, label } = props;
  const { picture, answer } = stage;
  const drawn = layOut(picture, answer, next_Hz === undefined ? [] : [next_Hz]);
  const { width, height, x, y } = drawn;
  const floor = height - MARGIN.bottom;
  return (
    <>
      <svg class="sweep-chart" role="img" aria-label={label} viewBox={`0 0 ${width} ${height}`}>
        <rect
          class="minimum"
          x={drawn.minimum.from}
          width={Math.max(1, drawn.minimum.to - drawn.minimum.from)}
          y={MARGIN.top}
          height={floor - MARGIN.top}
        />
        <path class="band" d={drawn.band} />
        <path class="believed" d={drawn.curve} />
        <line class="frame" x1={MARGIN.start} x2={width - MARGIN.end} y1={floor} y2={floor} />
        {drawn.yTicks.map((tick) => (
          <g key={tick}>
            <line class="frame" x1={MARGIN.start - 4} x2={MARGIN.start} y1={y(tick)} y2={y(tick)} />
            <text x={MARGIN.start - 7} y={y(tick) + 4} text-anchor="end">
              {format(tick)}
            </text>
          </g>
        ))}
        {drawn.xTicks.map((tick) => (
          <g key={tick}>
            <line class="frame" x1={x(tick)} x2={x(tick)} y1={floor} y2={floor + 4} />
            <text x={x(tick)} y={floor + 17} text-anchor="middle">
              {format(tick, decimalsOf(plan.step_Hz))}
            </text>
          </g>
        ))}
        <text x={width - MARGIN.end} y={height - 4} text-anchor="end">
          {words.chart.x}
        </text>
        <text x={2} y={13}>
          {words.chart.y}
        </text>
        {picture.levels.map(({ pump_Hz, ppm, beyond }, i) => (
          <circle
            key={i}
            class={beyond ? "read beyond" : "read"}
            cx={x(pump_Hz)}
            cy={y(ppm)}
            r="5"
          />
        ))}
        {next_Hz !== undefined && (
          <line class="next" x1={x(next_Hz)} x2={x(next_Hz)} y1={MARGIN.top} y2={floor} />
        )}
      </svg>
      <p class="note key">
        <span class="key-item believed">{words.chart.keyCurve}</span>{" "}
        <span class="key-item band">{words.chart.keyBand}</span>{" "}
        <span class="key-item minimum">{words.chart.keyMinimum}</span>{" "}
        {next_Hz !== undefined && <span class="key-item next">{words.chart.keyNext}</span>}
      </p>
    </>
  );
}
