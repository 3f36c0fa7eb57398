import { useState } from "preact/hooks";
import type { PublishedFit } from "../../model/fit/group.ts";
import type { Tune } from "../../model/tune.ts";
import type { Submitted } from "../../server/contract.ts";
import { api } from "../api.ts";
import { contributorKey } from "../share/contributor.ts";
import { draftOf, emptyDraft, nextDraft, tuneOf, withValues } from "../share/draft.ts";
import { KeyNote } from "../share/key-note.tsx";
import { Outcome } from "../share/outcome.tsx";
import { randomText } from "../share/random.ts";
import { ReceiptList } from "../share/receipt-list.tsx";
import { type KeptReceipt, keepReceipt, keptReceipts } from "../share/receipts.ts";
import type { Suggestion } from "../share/slips.tsx";
import { TuneFields } from "../share/tune-fields.tsx";
import { useTuneForm } from "../share/use-tune-form.ts";
import { t } from "../texts/en.ts";

/** One key for one tune as it stands: sent again after a lost answer, it is still stored once. */
let attempt = { body: "", key: "" };

function idempotencyKey(tune: Tune): string {
  const body = JSON.stringify(tune);
  if (attempt.body !== body) attempt = { body, key: randomText() };
  return attempt.key;
}

/** Share a tune: form, verdict, receipt, and what was shared before. */
export function Share({ fit, onShared }: { fit: PublishedFit; onShared: () => void }) {
  const form = useTuneForm(fit);
  const { draft, setDraft } = form;
  const [revising, setRevising] = useState<KeptReceipt | null>(null);
  const [outcome, setOutcome] = useState<{ answer: Submitted; kept: boolean } | null>(null);
  const [receipts, setReceipts] = useState(keptReceipts);
  const refresh = () => {
    setReceipts(keptReceipts());
    onShared();
  };

  const send = async () => {
    const tune = tuneOf(draft, contributorKey()) as Tune;
    const answer = revising
      ? await api.revise(revising.id, revising.receipt, tune)
      : await api.submit(tune, idempotencyKey(tune));
    const receipt = answer.receipt ?? revising?.receipt ?? "";
    const kept = keepReceipt(receiptOf(answer, receipt, tune, draft.place));
    setOutcome({ answer, kept });
    setRevising(null);
    setDraft(nextDraft(draft));
    refresh();
  };
  const revise = async (kept: KeptReceipt, changes: Suggestion[] = []) => {
    const { tune } = await api.read(kept.id, kept.receipt);
    setDraft(withValues(draftOf(tune, kept.place), changes));
    setRevising(kept);
    setOutcome(null);
    document.getElementById("share")?.focus();
  };
  const reviseSent = (changes: Suggestion[]) => {
    const kept = receipts.find(({ id }) => id === outcome?.answer.id);
    if (kept) void revise(kept, changes);
  };
  return (
    <div class="page">
      {outcome && <Outcome {...outcome} onUse={reviseSent} />}
      <section class="sheet" aria-labelledby="share">
        <h2 id="share" tabIndex={-1}>
          {revising ? t.share.revising : t.share.title}
        </h2>
        <p>{t.share.intro}</p>
        <TuneFields
          form={form}
          fit={fit}
          revising={revising !== null}
          onSend={send}
          onCancel={() => {
            setRevising(null);
            setDraft(emptyDraft());
          }}
        />
      </section>
      <ReceiptList receipts={receipts} onRevise={(kept) => revise(kept)} onWithdrawn={refresh} />
      <KeyNote />
    </div>
  );
}

function receiptOf(
  { id, verdict }: Submitted,
  receipt: string,
  tune: Tune,
  place: string | null,
): KeptReceipt {
  return {
    id,
    receipt,
    verdict,
    place,
    shared_on: new Date().toISOString().slice(0, 10),
    heat_kW: tune.heater.heat_kW,
    elevation_m: tune.site.elevation_m,
    low_pump_Hz: tune.low.pump_Hz,
    high_pump_Hz: tune.high.pump_Hz,
  };
}
