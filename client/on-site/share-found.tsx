import type { ComponentChildren } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import { tuneSchema } from "../../model/tune.ts";
import { send } from "../app/offline/deliver.ts";
import { WAITING_CHANGED } from "../base/answers/cache-names.ts";
import { keptReceipts } from "../base/receipts.ts";
import { coarsePosition } from "../share/coarse-position.ts";
import { contributorKey } from "../share/contributor.ts";
import { tuneOf } from "../share/draft.ts";
import { refusedBySchema } from "../share/refused-by-schema.ts";
import { offline } from "../texts/offline.ts";
import { onsite as words } from "../texts/onsite.ts";
import { shareWords } from "../texts/share.ts";
import { goToFirstMarked } from "../ui/first-marked.ts";
import { allThatWentWrong, namedFieldSentence } from "../ui/went-wrong.tsx";
import { logSweep } from "./logged.ts";
import type { Session } from "./session.ts";
import { draftOfSweep } from "./tune.ts";

/** The tune on its way to the atlas: consent, one press, the receipt with the logbook's entry. */
export function ShareSweep(props: {
  session: Session;
  onSession: (session: Session) => void;
  onShared: () => void;
}) {
  const { session, onSession, onShared } = props;
  const [consent, setConsent] = useState(false);
  const [withPlace, setWithPlace] = useState(false);
  const [tried, setTried] = useState(false);
  const [sending, setSending] = useState(false);
  const [problem, setProblem] = useState<ComponentChildren[]>([]);
  const place = useRef<HTMLElement>(null);
  const { plan, shared } = session;
  const hasPlace = plan.lat !== null && plan.lon !== null;

  const settle = async (next: Session) => {
    onSession(next);
    // The entry learns where its tune is; without one the receipt is under Share all the same.
    await logSweep(next, words.done.heaterName, new Date()).catch(() => {});
  };
  // What waited may have arrived since, with this view open or not.
  useEffect(() => {
    if (shared !== "waits") return;
    const look = () => {
      const kept = keptReceipts().find(({ key }) => key === session.id);
      if (!kept) return;
      const { id, receipt, verdict } = kept;
      void settle({ ...session, shared: { id, receipt, verdict, kept: true } });
    };
    look();
    addEventListener(WAITING_CHANGED, look);
    return () => removeEventListener(WAITING_CHANGED, look);
  }, [shared]);

  const share = async () => {
    setTried(true);
    if (!consent) return goToFirstMarked(place.current);
    if (sending) return;
    setSending(true);
    setProblem([]);
    try {
      const position =
        withPlace && hasPlace
          ? await coarsePosition(plan.lat as number, plan.lon as number)
          : undefined;
      const parsed = tuneSchema.safeParse(
        tuneOf(draftOfSweep(session, position), contributorKey()),
      );
      if (!parsed.success) {
        return setProblem(refusedBySchema(parsed.error).map(namedFieldSentence));
      }
      const sent = await send({
        key: session.id,
        tune: parsed.data,
        place: plan.place,
        kept_on: new Date().toISOString(),
        problem: null,
      });
      await settle({ ...session, shared: sent === "waits" ? sent : arrivedOf(sent) });
      onShared();
    } catch (error) {
      setProblem(allThatWentWrong(error));
    } finally {
      setSending(false);
    }
  };
  return (
    <section class="sheet" aria-labelledby="share-sweep" ref={place}>
      <h2 id="share-sweep">{words.done.shareTitle}</h2>
      {shared === undefined && (
        <>
          <p>{words.done.shareIntro}</p>
          {hasPlace && (
            <label class="check">
              <input
                type="checkbox"
                name="with_place"
                checked={withPlace}
                onChange={(e) => setWithPlace(e.currentTarget.checked)}
              />
              {words.done.sharePlace}
            </label>
          )}
          <label class="check">
            <input
              type="checkbox"
              name="consent"
              checked={consent}
              aria-invalid={tried && !consent ? "true" : undefined}
              onChange={(e) => setConsent(e.currentTarget.checked)}
            />
            {shareWords.consent}
          </label>
          {tried && !consent && <p class="error">{shareWords.needConsent}</p>}
          {problem.length > 0 && (
            <div class="error" role="alert">
              <p>{words.done.wrong}</p>
              {problem.map((line, i) => (
                <p key={i}>{line}</p>
              ))}
            </div>
          )}
          <button
            type="button"
            class="main large"
            aria-disabled={sending}
            onClick={() => void share()}
          >
            {sending ? shareWords.sending : shareWords.send}
          </button>
        </>
      )}
      <p role="status">{shared === "waits" ? offline.waits : ""}</p>
      {shared !== undefined && shared !== "waits" && (
        <div data-verdict={shared.verdict}>
          <p class="verdict">{shareWords[shared.verdict]}</p>
          <p>{shared.verdict === "held" ? shareWords.heldMeans : shareWords.acceptedMeans}</p>
          {shared.kept ? (
            <p>{words.done.receiptKept}</p>
          ) : (
            <>
              <p class="warning">{words.done.receiptNotKept}</p>
              <p class="receipt">{shared.receipt}</p>
            </>
          )}
          <p>
            <a class="button-like" href="#/share">
              {words.done.inShare}
            </a>
          </p>
        </div>
      )}
    </section>
  );
}

function arrivedOf({ answer, receiptKept }: Exclude<Awaited<ReturnType<typeof send>>, "waits">) {
  const { id, verdict, receipt = "" } = answer;
  return { id, verdict, receipt, kept: receiptKept };
}
