import { ENDS } from "./end.ts";
import type { GroupFit } from "./fit/group.ts";
import { fitGroup } from "./fit/group-fit.ts";
import { type Prior, physicsPrior } from "./fit/prior.ts";
import type { FitRow } from "./fit/row.ts";
import { sampleOf } from "./fit/sample.ts";
import { pooledPrior } from "./fit/sizes.ts";
import { summaryOf } from "./fit/summary.ts";

/** What is fitted to a heater size and end, before anything is counted. */
export type Uncounted = Omit<GroupFit, "tunes" | "rejected" | "density_range">;

/** Where steps are kept that are done. */
export interface KeptSteps {
  get(name: string): Promise<Uncounted | undefined>;
  put(name: string, found: Uncounted): Promise<void>;
}

/**
 * The fit of `fitAtlas`, to the same bits, one heater size and end after another, each kept as soon as it is done: cut off, it goes
 * on where it was. A test holds it to `fitAtlas`.
 * @param kept steps of the very same rows
 */
export async function fitInSteps(rows: readonly FitRow[], kept: KeptSteps): Promise<Uncounted[]> {
  const bySize = new Map<string, FitRow[]>();
  for (const row of rows) {
    const name = `${row.heat_kW} ${row.end}`;
    const own = bySize.get(name);
    if (own) own.push(row);
    else bySize.set(name, [row]);
  }
  const parts = [...bySize.values()]
    .map((own) => ({ ...(own[0] as FitRow), sample: sampleOf(own) }))
    .sort((p, q) => p.heat_kW - q.heat_kW || ENDS.indexOf(p.end) - ENDS.indexOf(q.end));
  const step = async (
    { heat_kW, end, sample }: (typeof parts)[number],
    how: "alone" | "pooled",
    prior: Prior,
  ): Promise<Uncounted> => {
    const name = `${how} ${heat_kW} ${end}`;
    const before = await kept.get(name);
    if (before) return before;
    const found = { heat_kW, end, ...summaryOf(fitGroup(sample, prior), sample, prior) };
    await kept.put(name, found);
    return found;
  };
  const alone: Uncounted[] = [];
  for (const part of parts) alone.push(await step(part, "alone", physicsPrior(part.end)));
  if (new Set(parts.map(({ heat_kW }) => heat_kW)).size <= 1) return alone;
  const pooled: Uncounted[] = [];
  for (const part of parts) {
    const others = alone.filter(({ heat_kW }) => heat_kW !== part.heat_kW);
    pooled.push(await step(part, "pooled", pooledPrior(part.end, others)));
  }
  return pooled;
}
