import type { DecisionRow } from "../../../db/decisions.ts";
import { decisionsOnEach, type SeenRow, stewardsName } from "../../../db/steward.ts";
import { possibleAir } from "../../../model/screen/possible-air.ts";
import type { Services } from "../../context.ts";
import type { RecordedDecision, StewardsTune } from "../../contract/steward-answers.ts";
import { inForce, reasonsOf } from "../../in-force.ts";
import { beside } from "../../submission.ts";

/** Tunes as a steward sees them, with all that was decided on them. */
export async function seenTunes(
  { db, fit: keeper }: Pick<Services, "db" | "fit">,
  found: readonly SeenRow[],
): Promise<StewardsTune[]> {
  const fit = await keeper.current();
  const history = await decisionsOnEach(
    db,
    found.map(({ row }) => row.id),
  );
  return found.map(({ row, waits }) => {
    const decisions = history.get(row.id) ?? [];
    const tune: StewardsTune["tune"] = JSON.parse(row.sent);
    const at = possibleAir(row.elevation_m, tune.air ?? {}, row.elevation_sd_m ?? 0);
    const { air, compared } = beside(fit, tune, at);
    const stands = inForce(decisions).at(-1);
    return {
      id: row.id,
      contributor: stewardsName(row.contributor),
      waits,
      submitted_on: row.submitted_on,
      tune,
      ...{ cell: row.cell, verdict: row.verdict, air, compared },
      reasons: stands ? reasonsOf(stands) : [],
      decisions: decisions.map(recorded),
    };
  });
}

/** A decision as the audit trail records it. */
export function recorded(d: DecisionRow): RecordedDecision {
  return {
    number: d.id,
    tune: d.tune || null,
    decided_on: d.decided_on,
    by: d.by,
    verdict: d.verdict,
    reasons: reasonsOf(d),
  };
}
