import { useEffect, useState } from "preact/hooks";
import { sendWaiting } from "../app/offline/deliver.ts";
import { dropWaiting, type WaitingTune, waitingTunes } from "../app/offline/waiting-tunes.ts";
import { WAITING_CHANGED } from "../base/answers/cache-names.ts";
import { offline } from "../texts/offline.ts";
import { shareWords } from "../texts/share.ts";
import { InEnglish } from "../ui/in-english.tsx";
import { allOfRefusal } from "../ui/went-wrong.tsx";
import { format, formatRate } from "../units.ts";

/** Tunes this browser has still to send: send, mend, discard. Nothing when there are none. */
export function WaitingList({ onMend }: { onMend: (waiting: WaitingTune) => void }) {
  const [waiting, setWaiting] = useState<WaitingTune[]>([]);
  useEffect(() => {
    const look = () => void waitingTunes().then(setWaiting);
    look();
    addEventListener(WAITING_CHANGED, look);
    return () => removeEventListener(WAITING_CHANGED, look);
  }, []);
  if (waiting.length === 0) return null;
  return (
    <section class="sheet" aria-labelledby="waiting">
      <h2 id="waiting">{offline.waitingTitle}</h2>
      <ul class="receipts">
        {waiting.map((one) => (
          <WaitingItem key={one.key} waiting={one} onMend={onMend} />
        ))}
      </ul>
    </section>
  );
}

function WaitingItem(props: { waiting: WaitingTune; onMend: (waiting: WaitingTune) => void }) {
  const { waiting, onMend } = props;
  const { tune, place, problem, key } = waiting;
  const [asked, setAsked] = useState(false);
  return (
    <li>
      <p>
        {shareWords.tuneLine(
          format(tune.heater.heat_kW, tune.heater.heat_kW % 1 ? 1 : 0),
          place,
          format(tune.site.elevation_m),
          formatRate(tune.low.pump_Hz),
          formatRate(tune.high.pump_Hz),
        )}
      </p>
      {problem !== null && (
        <div class="error">
          {typeof problem === "string" ? (
            <InEnglish>{problem}</InEnglish>
          ) : (
            allOfRefusal(problem).map((line, i) => <p key={i}>{line}</p>)
          )}
        </div>
      )}
      <div class="row">
        {problem === null ? (
          <button type="button" onClick={() => void sendWaiting()}>
            {offline.sendNow}
          </button>
        ) : (
          <button
            type="button"
            onClick={() => {
              onMend(waiting);
              void dropWaiting(key);
            }}
          >
            {offline.mend}
          </button>
        )}
        {asked ? (
          <>
            <button type="button" class="danger" onClick={() => void dropWaiting(key)}>
              {offline.discardSure}
            </button>
            <button type="button" onClick={() => setAsked(false)}>
              {shareWords.keep}
            </button>
          </>
        ) : (
          <button type="button" onClick={() => setAsked(true)}>
            {offline.discard}
          </button>
        )}
      </div>
    </li>
  );
}
