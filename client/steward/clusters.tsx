import { useId } from "preact/hooks";
import type { StewardsCluster } from "../../server/contract.ts";
import { monthName } from "../base/month-name.ts";
import { stewardWords as words } from "../texts/steward.ts";
import { format } from "../units.ts";
import { besideAverage, sizeOf } from "./shift-words.ts";
import type { StewardApi } from "./steward-api.ts";
import { useAsked } from "./use-asked.ts";

/** Tunes under new keys that agree more than heaters do; each cluster can be looked at, selected as a whole. */
export function Clusters(props: {
  api: StewardApi;
  changes: number;
  onLook: (ids: readonly string[]) => void;
}) {
  const seen = useAsked(props.api.clusters, props.changes);
  const id = useId();
  if (!seen) return null;
  return (
    <section class="sheet steward-clusters" aria-labelledby={id}>
      <h3 id={id}>{words.clusters}</h3>
      <p class="hint">{words.clustersHint(format(seen.looked_at))}</p>
      {seen.clusters.length === 0 && <p>{words.noClusters}</p>}
      <ul>
        {seen.clusters.map((cluster) => (
          <li key={cluster.tunes[0]}>
            <p>{sentenceOf(cluster)}</p>
            <p>
              <button type="button" onClick={() => props.onLook(cluster.tunes)}>
                {words.look}
              </button>
            </p>
          </li>
        ))}
      </ul>
    </section>
  );
}

function sentenceOf(cluster: StewardsCluster): string {
  const { contributors, new_contributors, month, heat_kW, shift_pct, chance } = cluster;
  // Beyond a million it tells nothing more.
  const in_so_many = Math.min(1e6, Math.floor(1 / chance));
  return [
    `${words.cluster(contributors, new_contributors, monthName(month), sizeOf(heat_kW))}:`,
    `${words.clusterShift(besideAverage(shift_pct.low), besideAverage(shift_pct.high))}.`,
    words.chance(format(in_so_many)),
    ...(cluster.as_suggested > 0 ? [words.suggested(cluster.as_suggested)] : []),
  ].join(" ");
}
