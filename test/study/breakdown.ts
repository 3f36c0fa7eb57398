import type { StudyBreakdown, StudyScenario } from "../../client/atlas/bands/report.ts";
import { AIRS } from "./airs.ts";

/** An estimator holds while its error stays below half a robust spread between heaters. */
const LIMIT_pct = 5;
const AIR = AIRS.findIndex(({ label }) => label === "3,000 m");

/**
 * Of every kind of mistake simulated at several shares: up to which share each estimator's error stays below the
 * limit at 3,000 m, at that and every smaller share; 0 when it does not even at the smallest.
 */
export function breakdownOf(scenarios: readonly StudyScenario[]): StudyBreakdown[] {
  const kinds = Map.groupBy(scenarios, ({ id }) => /^(.*)-\d+pct$/.exec(id)?.[1]);
  return [...kinds].flatMap(([kind, members]) => {
    if (kind === undefined || members.length < 2) return [];
    const shares = members
      .map((scenario) => ({ scenario, pct: Number(/(\d+)pct$/.exec(scenario.id)?.[1]) }))
      .sort((a, b) => a.pct - b.pct);
    return [
      {
        kind,
        shares_pct: shares.map(({ pct }) => pct),
        limit_pct: LIMIT_pct,
        air: AIRS[AIR]?.label ?? "",
        holds_to_pct: (members[0]?.results ?? []).map(({ estimator }) => ({
          estimator,
          share_pct: holdsTo(shares, estimator),
        })),
      },
    ];
  });
}

function holdsTo(shares: { scenario: StudyScenario; pct: number }[], estimator: string): number {
  let holds = 0;
  for (const { scenario, pct } of shares) {
    const result = scenario.results.find((r) => r.estimator === estimator);
    if (!((result?.rmse_pct[AIR] ?? Number.POSITIVE_INFINITY) < LIMIT_pct)) break;
    holds = pct;
  }
  return holds;
}
