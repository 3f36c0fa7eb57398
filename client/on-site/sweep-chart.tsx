import type { SweepAnswer } from "../../model/sweep/answer.ts";
import { onsite as words } from "../texts/onsite.ts";
import { format } from "../units.ts";
import { layOut, MARGIN } from "./chart-layout.ts";
import { decimalsOf, hz } from "./figures.ts";
import type { Plan } from "./plan.ts";
import type { AtEnd } from "./stage.ts";

/** CO over pump rate as it was read, where CO rose, the next setting; all in words too. */
export function SweepChart(props: {
  stage: AtEnd & { answer: SweepAnswer };
  plan: Plan;
  next_Hz: number | undefined;
}) {
  const { stage, plan } = props;
  const { best } = stage.picture;
  const { lean, rich } = stage.answer.limits_Hz;
  const decimals = decimalsOf(plan.step_Hz);
  const lowest =
    best &&
    (best.beyond === "floor"
      ? words.chart.lowestBelow(format(best.ppm), hz(best.pump_Hz, decimals))
      : words.chart.lowest(format(best.ppm), hz(best.pump_Hz, decimals)));
  return (
    <section class="sheet" aria-labelledby="chart">
      <h3 id="chart">{words.chart.title}</h3>
      {lowest && <Drawing {...props} label={`${words.chart.label} ${lowest}`} />}
      <p>{lowest ?? words.chart.first}</p>
      <p class="note">{words.guards(hz(lean, decimals), hz(rich, decimals))}</p>
    </section>
  );
}

/** The readings and the line through them. */
function Drawing(props: Parameters<typeof SweepChart>[0] & { label: string }) {
  const { stage, next_Hz, label } = props;
  const { picture } = stage;
  const drawn = layOut(picture, next_Hz === undefined ? [] : [next_Hz]);
  const { width, height, x, y, between } = drawn;
  const floor = height - MARGIN.bottom;
  const isRisen = Object.keys(picture.risen_Hz).length > 0;
  return (
    <>
      <svg class="sweep-chart" role="img" aria-label={label} viewBox={`0 0 ${width} ${height}`}>
        {isRisen && (
          <rect
            class="between"
            x={between.from}
            width={between.to - between.from}
            y={MARGIN.top}
            height={floor - MARGIN.top}
          />
        )}
        <path class="line" d={drawn.line} />
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
              {format(tick, drawn.xDecimals)}
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
        <span class="key-item line">{words.chart.keyLine}</span>{" "}
        {isRisen && <span class="key-item between">{words.chart.keyBetween}</span>}{" "}
        {next_Hz !== undefined && <span class="key-item next">{words.chart.keyNext}</span>}
      </p>
    </>
  );
}
