import type { ComponentChildren } from "preact";
import { useEffect, useLayoutEffect, useRef, useState } from "preact/hooks";
import type { PublishedFit } from "../../model/fit/group.ts";
import type { Tune } from "../../model/tune.ts";
import type { Submitted } from "../../server/contract.ts";
import type { MyHeater } from "../app/heater/my-heater.ts";
import { type Sent, send as sendTune } from "../app/offline/deliver.ts";
import { keepMeter } from "../app/records/last-meter.ts";
import { api } from "../base/answers/api.ts";
import { WAITING_CHANGED } from "../base/answers/cache-names.ts";
import { type KeptReceipt, keepReceipt, keptReceipts, receiptOf } from "../base/receipts.ts";
import { offline } from "../texts/offline.ts";
import { shareWords } from "../texts/share.ts";
import { goToHeading } from "../ui/go-to.ts";
import { SaidBar } from "../ui/said-bar.tsx";
import type { Suggestion } from "../ui/slips.tsx";
import { whatWentWrong } from "../ui/went-wrong.tsx";
import { contributorKey } from "./contributor.ts";
import { draftFor, draftOf, emptyDraft, nextDraft, tuneOf, withValues } from "./draft.ts";
import { KeyNote } from "./key-note.tsx";
import { Outcome } from "./outcome.tsx";
import { ReceiptList } from "./receipt-list.tsx";
import { forgetSendingKey, sendingKey } from "./sending-key.ts";
import { TuneFields } from "./tune-fields.tsx";
import { useTuneForm } from "./use-tune-form.tsx";
import { WaitingList } from "./waiting-list.tsx";

/** Share a tune: form, verdict, receipt, and what was shared before. */
export function Share(props: {
  fit: PublishedFit;
  mine: MyHeater | null | undefined;
  onShared: () => void;
}) {
  const { fit, mine, onShared } = props;
  const form = useTuneForm(fit);
  const { draft, setDraft } = form;
  const [revising, setRevising] = useState<KeptReceipt | null>(null);
  const [outcome, setOutcome] = useState<{ answer: Submitted; kept: boolean } | "waits" | null>(
    null,
  );
  const [receipts, setReceipts] = useState(keptReceipts);
  const [said, setSaid] = useState<ComponentChildren>("");
  const [problem, setProblem] = useState<ComponentChildren>("");
  // A tune revised is of the heater it was found on.
  const ofMine = revising ? null : mine;
  useEffect(() => {
    if (ofMine) setDraft((before) => draftFor(before, ofMine));
  }, [ofMine?.heater.id, ofMine?.heater.changed_at]);
  // The form is filled from elsewhere on the page: its reader goes on at its beginning, once it is drawn.
  const [filled, setFilled] = useState(0);
  const heading = useRef<HTMLHeadingElement>(null);
  useLayoutEffect(() => {
    if (filled > 0) goToHeading(heading.current);
  }, [filled]);
  const refresh = () => {
    setReceipts(keptReceipts());
    onShared();
  };

  // What waited may have been sent by now, with this view open.
  useEffect(() => {
    const look = () => setReceipts(keptReceipts());
    addEventListener(WAITING_CHANGED, look);
    // It may have been sent between the drawing and now.
    look();
    return () => removeEventListener(WAITING_CHANGED, look);
  }, []);

  const sendNew = (tune: Tune) =>
    sendTune({
      key: sendingKey(tune),
      tune,
      place: draft.place,
      kept_on: new Date().toISOString(),
      problem: null,
    });
  const sendRevision = async (tune: Tune, { id, receipt }: KeptReceipt) => {
    const answer = await api.revise(id, receipt, tune);
    return { answer, kept: keepReceipt(receiptOf(answer, receipt, tune, draft.place)) };
  };
  const send = async () => {
    const tune = tuneOf(draft, contributorKey()) as Tune;
    setSaid("");
    setOutcome(revising ? await sendRevision(tune, revising) : outcomeOf(await sendNew(tune)));
    forgetSendingKey();
    // What was sent is sent, whether the meter is kept or not.
    if (ofMine) await keepMeter(ofMine.heater.id, draft.meter).catch(() => {});
    setRevising(null);
    setDraft(nextDraft(draft));
    refresh();
  };
  const revise = async (kept: KeptReceipt, changes: Suggestion[] = []) => {
    const { tune } = await api.read(kept.id, kept.receipt);
    setDraft(withValues(draftOf(tune, kept.place), changes));
    setRevising(kept);
    setOutcome(null);
    setSaid("");
    setProblem("");
    setFilled((times) => times + 1);
  };
  const reviseSent = (changes: Suggestion[]) => {
    if (!outcome || outcome === "waits") return;
    const kept = receipts.find(({ id }) => id === outcome.answer.id);
    if (kept) revise(kept, changes).catch((error) => setProblem(whatWentWrong(error)));
  };
  return (
    <div class="page">
      {outcome === "waits" && <Waits />}
      {outcome && outcome !== "waits" && <Outcome {...outcome} onUse={reviseSent} />}
      <WaitingList
        onMend={({ tune, place }) => {
          setRevising(null);
          setDraft(draftOf(tune, place));
          setFilled((times) => times + 1);
        }}
      />
      <section class="sheet" aria-labelledby="share">
        <h2 id="share" tabIndex={-1} ref={heading}>
          {revising ? shareWords.revising : shareWords.title}
        </h2>
        <p>{shareWords.intro}</p>
        <TuneFields
          form={form}
          fit={fit}
          revising={revising !== null}
          mine={ofMine}
          onSend={send}
          onCancel={() => {
            setRevising(null);
            setDraft(emptyDraft());
            setFilled((times) => times + 1);
          }}
        />
      </section>
      <ReceiptList
        receipts={receipts}
        onRevise={(kept) => revise(kept)}
        onWithdrawn={() => {
          setSaid(shareWords.withdrawn);
          refresh();
        }}
      />
      <KeyNote />
      <SaidBar
        said={said}
        problem={problem}
        onClose={() => {
          setSaid("");
          setProblem("");
        }}
      />
    </div>
  );
}

/** The tune waits to be sent: said where its sender looks, for the form is empty again. */
function Waits() {
  const place = useRef<HTMLParagraphElement>(null);
  useEffect(() => {
    place.current?.scrollIntoView({ block: "start" });
    place.current?.focus({ preventScroll: true });
  }, []);
  return (
    <p class="sheet warning" role="status" tabIndex={-1} ref={place}>
      {offline.waits}
    </p>
  );
}

function outcomeOf(sent: Sent) {
  return sent === "waits" ? sent : { answer: sent.answer, kept: sent.receiptKept };
}
