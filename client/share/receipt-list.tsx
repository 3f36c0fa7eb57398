import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";
import type { Advice } from "../../server/contract.ts";
import { api } from "../base/answers/api.ts";
import { dropReceipt, type KeptReceipt, receiptsFile } from "../base/receipts.ts";
import { saveFile } from "../base/save-file.ts";
import { shareWords } from "../texts/share.ts";
import { reasonSentence } from "../ui/reason-sentence.tsx";
import { whatWentWrong } from "../ui/went-wrong.tsx";
import { format, formatRate } from "../units.ts";
import { countsFrom } from "./counts-from.ts";
import { HighCo } from "./high-co.tsx";

/** The tunes shared from this browser: look after them, revise, withdraw. */
export function ReceiptList(props: {
  receipts: KeptReceipt[];
  onRevise: (kept: KeptReceipt) => Promise<void>;
  onWithdrawn: () => void;
}) {
  const { receipts } = props;
  return (
    <section class="sheet" aria-labelledby="mine">
      <h2 id="mine">{shareWords.mine}</h2>
      {receipts.length === 0 ? (
        <p>{shareWords.none}</p>
      ) : (
        <>
          <ul class="receipts">
            {receipts.map((kept) => (
              <ReceiptItem
                // A revised tune is looked up anew.
                key={JSON.stringify(kept)}
                kept={kept}
                onRevise={() => props.onRevise(kept)}
                onWithdraw={async () => {
                  await api.withdraw(kept.id, kept.receipt);
                  dropReceipt(kept.id);
                  props.onWithdrawn();
                }}
              />
            ))}
          </ul>
          <div class="row">
            <button
              type="button"
              onClick={() =>
                saveFile("hypsotune-receipts.json", "application/json", receiptsFile())
              }
            >
              {shareWords.download}
            </button>
          </div>
        </>
      )}
    </section>
  );
}

function ReceiptItem(props: {
  kept: KeptReceipt;
  onRevise: () => Promise<void>;
  onWithdraw: () => Promise<void>;
}) {
  const { kept } = props;
  const [advice, setAdvice] = useState<Advice[]>(kept.advice ?? []);
  const [standing, setStanding] = useState<ComponentChildren>("");
  const [asked, setAsked] = useState(false);
  // Beside the button that was pressed.
  const tell = (error: unknown) => setStanding(whatWentWrong(error));
  const check = async () => {
    try {
      const tune = await api.read(kept.id, kept.receipt);
      const { verdict, fit, advice: now } = tune;
      const sees = shareWords.sees(
        shareWords.standing[fit.low],
        shareWords.standing[fit.high],
        fit.version,
      );
      setAdvice(now);
      setStanding(
        verdict === "removed" ? (
          <>
            {shareWords.removed}: {tune.reasons.map(reasonSentence)}
          </>
        ) : (
          `${shareWords[verdict]}; ${countsFrom(tune) ?? sees}`
        ),
      );
    } catch (error) {
      tell(error);
    }
  };
  return (
    <li>
      <p>
        <strong>{shareWords[kept.verdict]}</strong>, {kept.shared_on}:{" "}
        {shareWords.tuneLine(
          format(kept.heat_kW, kept.heat_kW % 1 ? 1 : 0),
          kept.place,
          format(kept.elevation_m),
          formatRate(kept.low_pump_Hz),
          formatRate(kept.high_pump_Hz),
        )}
      </p>
      <HighCo advice={advice} />
      <p class="receipt hint">{shareWords.receiptIs(kept.receipt)}</p>
      <div class="row">
        <button type="button" onClick={() => void check()}>
          {shareWords.check}
        </button>
        <button type="button" onClick={() => void props.onRevise().catch(tell)}>
          {shareWords.revise}
        </button>
        {asked ? (
          <>
            <button
              type="button"
              class="danger"
              onClick={() => void props.onWithdraw().catch(tell)}
            >
              {shareWords.withdrawSure}
            </button>
            <button type="button" onClick={() => setAsked(false)}>
              {shareWords.keep}
            </button>
          </>
        ) : (
          <button type="button" onClick={() => setAsked(true)}>
            {shareWords.withdraw}
          </button>
        )}
      </div>
      <p class="hint" role="status">
        {standing}
      </p>
    </li>
  );
}
