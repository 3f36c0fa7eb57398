import type { ScalingAnswer } from "../../../server/contract.ts";
import { scalingWords } from "../../texts/scaling.ts";
import { averageByItsEdges } from "./scaling-chart.ts";

/** What the marks of a chart mean: each differs in form as well as in colour. */
export function ChartKey({ scaling }: { scaling: ScalingAnswer }) {
  const key = scalingWords.key;
  const byEdges = averageByItsEdges(scaling.curve);
  return (
    <ul class="chart-key">
      <li>
        <svg viewBox="0 0 24 16" aria-hidden="true">
          <path class="key-curve" d="M0 8H24" />
        </svg>
        {key.curve}
      </li>
      {(["mean", "inner", "outer"] as const).map((band) => (
        <li key={band}>
          <svg viewBox="0 0 24 16" aria-hidden="true">
            {band === "mean" && byEdges ? (
              <path class="edge-mean" d="M0 2H24M0 14H24" />
            ) : (
              <rect class={`key-${band}`} width="24" height="16" />
            )}
          </svg>
          {key[band]}
        </li>
      ))}
      <li>
        <svg viewBox="0 0 24 16" aria-hidden="true">
          <circle class="key-kept" cx="12" cy="8" r="3.5" />
        </svg>
        {key.kept}
      </li>
      <li>
        <svg viewBox="0 0 24 16" aria-hidden="true">
          <path class="key-rejected" d="M8 4l8 8M16 4l-8 8" />
        </svg>
        {key.rejected}
      </li>
      <li>
        <svg viewBox="0 0 24 16" aria-hidden="true">
          <rect class="key-held" x="8" y="4" width="8" height="8" />
        </svg>
        {key.held}
      </li>
      <li>
        <svg viewBox="0 0 24 16" aria-hidden="true">
          <path class="key-line" d="M0 12L24 4" />
        </svg>
        {key.line}
      </li>
    </ul>
  );
}
