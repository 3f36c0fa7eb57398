import { decisionsOn } from "../db/decisions.ts";
import { fitRows } from "../db/fit-rows.ts";
import type { TuneRow } from "../db/tunes.ts";
import type { FitRow } from "../model/fit/row.ts";
import { asideOf } from "../model/fit/standing.ts";
import { possibleAir } from "../model/screen/possible-air.ts";
import type { Services } from "./context.ts";
import type { KeptTune } from "./contract/tunes.ts";
import { inForce, reasonsOf } from "./in-force.ts";
import type { NewKeys } from "./new-keys.ts";
import { beside } from "./submission.ts";

/** A tune as its owner sees it: what was sent, what became of it, and how it stands beside today's fit. */
export async function keptTuneOf(
  { db, fit: keeper }: Pick<Services, "db" | "fit">,
  newKeys: NewKeys,
  row: TuneRow,
): Promise<KeptTune> {
  const fit = await keeper.current();
  const tune: KeptTune["tune"] = JSON.parse(row.sent);
  const history = await decisionsOn(db, row.id);
  const stands = inForce(history).at(-1);
  const { counts_from, owners_needed } = await newKeys.waitsFor(row);
  const standing = (end: FitRow) => {
    const group = fit.groups.find((g) => g.heat_kW === row.heat_kW && g.end === end.end);
    if (row.verdict !== "accepted" || counts_from || owners_needed || !group) return "not in it";
    return asideOf(group, end) === null ? "kept" : "rejected";
  };
  const [low, high] = fitRows(row).map(standing) as [
    KeptTune["fit"]["low"],
    KeptTune["fit"]["low"],
  ];
  return {
    id: row.id,
    tune,
    cell: row.cell,
    verdict: row.verdict,
    reasons: stands ? reasonsOf(stands) : [],
    counts_from,
    owners_needed,
    fit: { version: fit.version, low, high },
    ...beside(fit, tune, possibleAir(row.elevation_m, tune.air ?? {}, row.elevation_sd_m ?? 0)),
    decisions: history.map((d) => ({
      decided_on: d.decided_on,
      by: d.by,
      verdict: d.verdict,
      reasons: reasonsOf(d),
    })),
  };
}
