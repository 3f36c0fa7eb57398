import { useEffect, useState } from "preact/hooks";
import type { PublishedFit } from "../../model/fit/group.ts";
import { screen } from "../../model/screen.ts";
import type { Tune } from "../../model/tune.ts";
import type { Submitted } from "../../server/contract.ts";
import type { LogbookEntry, LogbookHeater } from "../app/records/entry.ts";
import { countsFrom } from "../share/counts-from.ts";
import { HighCo, highReadings } from "../share/high-co.tsx";
import { logbookWords } from "../texts/logbook.ts";
import { shareWords } from "../texts/share.ts";
import { reasonSentence } from "../ui/reason-sentence.tsx";
import { formatIn, UNITS } from "../units.ts";
import {
  doNotSend,
  isGone,
  letGo,
  reviseShared,
  type Shareable,
  shareable,
  shareEntry,
  withdrawShared,
} from "./share-entry.ts";
import type { Doing } from "./use-doing.tsx";

const words = logbookWords.share;
/** Stands for the contributor key until a tune is sent. */
const NOBODY_YET = "key-made-on-sending";

interface ShareProps {
  entry: LogbookEntry;
  heater: LogbookHeater;
  gone: ReadonlySet<string>;
  fit: PublishedFit;
  title: string;
  doing: Doing;
  onShared: () => void;
}

/** Share an entry's tune; once shared, revise and withdraw it. */
export function LogbookShare(props: ShareProps) {
  const { entry, heater, gone, title, doing, onShared } = props;
  const { shared } = entry;
  const [asked, setAsked] = useState<"send" | "revise" | "withdraw" | null>(null);
  const [said, setSaid] = useState<Shareable | null>(null);
  useEffect(() => {
    if (asked === null || asked === "withdraw") return;
    void shareable(entry, heater, NOBODY_YET).then(setSaid);
  }, [asked, entry, heater]);
  const done = () => {
    setAsked(null);
    onShared();
  };
  const isWaiting = shared && "key" in shared && !gone.has(shared.key);
  const isShared = shared && "receipt" in shared;
  if ((asked === "send" && !isWaiting && !isShared) || (asked === "revise" && isShared)) {
    const send = (tune: Tune) =>
      doing(async () => {
        if (isShared) return await revise(entry, shared, tune);
        const sent = await shareEntry(entry, tune);
        return sent === "waits" ? undefined : { text: told(words.arrived, sent.answer) };
      }).then(done);
    return (
      <Consent
        {...props}
        said={said}
        revising={asked === "revise"}
        onSend={send}
        onCancel={() => setAsked(null)}
      />
    );
  }
  if (isWaiting) {
    return (
      <div class="shared">
        <p class="note">{words.waits}</p>
        <button
          type="button"
          onClick={() => void doing(() => doNotSend(entry).then(() => undefined))}
        >
          {words.discard}
        </button>
      </div>
    );
  }
  if (isShared) {
    const withdraw = () =>
      void doing(async () => {
        await withdrawShared(entry, shared);
        return { text: shareWords.withdrawn };
      }).then(done);
    return (
      <div class="shared">
        <p class="note">
          {words.shared}. {words.receiptNotKept} <a href="#/share">{words.openShare}</a>
        </p>
        <div class="row">
          <button type="button" onClick={() => setAsked("revise")}>
            {words.revise}
          </button>
          {asked === "withdraw" ? (
            <>
              <button type="button" class="danger" onClick={withdraw}>
                {shareWords.withdrawSure}
              </button>
              <button type="button" onClick={() => setAsked(null)}>
                {shareWords.keep}
              </button>
            </>
          ) : (
            <button type="button" onClick={() => setAsked("withdraw")}>
              {shareWords.withdraw}
            </button>
          )}
        </div>
      </div>
    );
  }
  return (
    <div class="shared">
      {shared && <p class="warning">{words.gone}</p>}
      <button type="button" aria-label={words.shareThis(title)} onClick={() => setAsked("send")}>
        {words.share}
      </button>
    </div>
  );
}

/** The verdict, and from when the tune counts if it has to wait. */
function told(say: (verdict: string) => string, answer: Submitted): string {
  return [say(shareWords[answer.verdict]), countsFrom(answer)].filter(Boolean).join(" ");
}

async function revise(entry: LogbookEntry, at: { id: string; receipt: string }, tune: Tune) {
  try {
    return { text: told(words.revised, await reviseShared(entry, at, tune)) };
  } catch (error) {
    if (!isGone(error)) throw error;
    await letGo(entry, at.id);
    return { text: words.notThere };
  }
}

/** What is sent, what looks like a slip, and the consent. */
function Consent(
  props: ShareProps & {
    said: Shareable | null;
    revising: boolean;
    onSend: (tune: Tune) => Promise<void>;
    onCancel: () => void;
  },
) {
  const { entry, fit, said, revising, onSend, onCancel } = props;
  const [consent, setConsent] = useState(false);
  const [tried, setTried] = useState(false);
  const [sending, setSending] = useState(false);
  const tune = said && "tune" in said ? said.tune : null;
  const slips = tune
    ? screen(tune, { fit, terrain: null, month: entry.at.slice(0, 7) }).reasons
    : [];
  const elevation = formatIn((tune ?? entry).site?.elevation_m ?? 0, UNITS.elevation[0]);
  const send = async () => {
    setTried(true);
    if (!tune || !consent || sending) return;
    setSending(true);
    await onSend(tune);
  };
  return (
    <div class="shared">
      <p>{words.what(elevation)}</p>
      {said && "why" in said && (
        <p class="error">{said.why === "ceiling" ? words.cannot : logbookWords.entry.fix}</p>
      )}
      {tune && <HighCo advice={highReadings(tune)} />}
      {slips.length > 0 && (
        <div class="warning">
          <p>{words.looks}</p>
          <ul>
            {slips.map((reason) => (
              <li key={`${reason.code} ${reason.field}`}>{reasonSentence(reason)}</li>
            ))}
          </ul>
        </div>
      )}
      <label class="check">
        <input
          type="checkbox"
          name="consent"
          checked={consent}
          onChange={(e) => setConsent(e.currentTarget.checked)}
        />
        {shareWords.consent}
      </label>
      {tried && !consent && <p class="error">{shareWords.needConsent}</p>}
      <p class="note">{shareWords.acceptedMeans}</p>
      <div class="row">
        <button type="button" class="main" disabled={!tune} onClick={() => void send()}>
          {sending ? shareWords.sending : revising ? shareWords.sendRevision : shareWords.send}
        </button>
        <button type="button" onClick={onCancel}>
          {words.cancel}
        </button>
      </div>
    </div>
  );
}
