import { useEffect, useId, useState } from "preact/hooks";
import type { RecordedDecision } from "../../server/contract.ts";
import { stewardWords as words } from "../texts/steward.ts";
import type { StewardApi } from "./steward-api.ts";
import { saidOf } from "./tune-sheet.tsx";
import { useAsked } from "./use-asked.ts";

/** Every decision, newest first. */
export function Trail(props: {
  api: StewardApi;
  changes: number;
  onShow: (tune: string) => void;
  onUndo: (number: number) => void;
}) {
  const { api } = props;
  const newest = useAsked(() => api.trail(null), props.changes);
  const [older, setOlder] = useState<{ decisions: RecordedDecision[]; next: number | null }>();
  const id = useId();
  useEffect(() => setOlder(undefined), [newest]);
  if (!newest) return null;
  const decisions = [...newest.decisions, ...(older?.decisions ?? [])];
  const next = older ? older.next : newest.next;
  const more = async () => {
    const page = await api.trail(next).catch(() => null);
    if (page) setOlder({ ...page, decisions: [...(older?.decisions ?? []), ...page.decisions] });
  };
  return (
    <section class="sheet steward-trail" aria-labelledby={id}>
      <h3 id={id}>{words.log}</h3>
      <p class="hint">{words.logHint}</p>
      <ul>
        {decisions.map((decision) => (
          <li key={decision.number}>
            <p>{saidOf(decision)}</p>
            {decision.tune !== null && (
              <p class="row">
                <button
                  type="button"
                  aria-label={words.showTune(decision.number)}
                  onClick={() => props.onShow(decision.tune as string)}
                >
                  {words.show}
                </button>
                {canBeUndone(decision) && (
                  <button
                    type="button"
                    aria-label={words.takeBack(decision.number)}
                    onClick={() => props.onUndo(decision.number)}
                  >
                    {words.undo}
                  </button>
                )}
              </p>
            )}
          </li>
        ))}
      </ul>
      {next !== null && (
        <p>
          <button type="button" onClick={() => void more()}>
            {words.older}
          </button>
        </p>
      )}
    </section>
  );
}

/** A steward's own; where a later one stands on its tune, the atlas says so. */
const canBeUndone = ({ by, reasons }: RecordedDecision) =>
  by === "steward" &&
  !reasons.some(({ code }) => code === "undone_by_steward" || code === "counted_by_steward");
