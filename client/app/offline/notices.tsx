import type { PublishedFit } from "../../../model/fit/group.ts";
import { offline } from "../../texts/offline.ts";
import { age } from "../../ui/basis.tsx";
import { takeRelease } from "./release.ts";
import { useStanding } from "./standing.ts";
import { keep } from "./start.ts";

/** What must be said at once, and nothing else: a new release, an old fit, no room, tunes on their way. */
export function Notices({ fit, stale }: { fit: PublishedFit | undefined; stale: boolean }) {
  const { newer, keeping, arrived, waiting, wiped } = useStanding();
  const release = {
    waiting: offline.newRelease,
    elsewhere: offline.newReleaseElsewhere,
    missing: offline.oldPage,
  };
  return (
    <div class="notices" role="status">
      {newer && (
        <p class="warning">
          {release[newer]}{" "}
          <button type="button" onClick={takeRelease}>
            {offline.reload}
          </button>
        </p>
      )}
      {stale && fit?.published_at && (
        <p class="note">{offline.restsOn(fit.version, age(fit.published_at))}</p>
      )}
      {keeping.is === "full" && (
        <p class="warning">
          {offline.full}{" "}
          <button type="button" onClick={() => void keep()}>
            {offline.retry}
          </button>
        </p>
      )}
      {wiped && <p class="warning">{offline.wiped}</p>}
      {waiting > 0 && <p class="note">{offline.waitingCount(waiting)}</p>}
      {arrived > 0 && <p class="note">{offline.arrived(arrived)}</p>}
    </div>
  );
}
