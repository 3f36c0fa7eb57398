import { useState } from "preact/hooks";
import { api } from "../api.ts";
import { t } from "../texts/en.ts";
import { format } from "../units.ts";
import { dropReceipt, type KeptReceipt, receiptsFile } from "./receipts.ts";

/** The tunes shared from this browser: look after them, revise, withdraw. */
export function ReceiptList(props: {
  receipts: KeptReceipt[];
  onRevise: (kept: KeptReceipt) => Promise<void>;
  onWithdrawn: () => void;
}) {
  const { receipts } = props;
  const [note, setNote] = useState("");
  const tell = (error: unknown) => setNote((error as Error).message);
  return (
    <section class="sheet" aria-labelledby="mine">
      <h2 id="mine">{t.share.mine}</h2>
      {receipts.length === 0 ? (
        <p>{t.share.none}</p>
      ) : (
        <>
          <ul class="receipts">
            {receipts.map((kept) => (
              <ReceiptItem
                key={kept.id}
                kept={kept}
                onRevise={() => props.onRevise(kept).catch(tell)}
                onWithdraw={async () => {
                  try {
                    await api.withdraw(kept.id, kept.receipt);
                    dropReceipt(kept.id);
                    setNote(t.share.withdrawn);
                    props.onWithdrawn();
                  } catch (error) {
                    tell(error);
                  }
                }}
              />
            ))}
          </ul>
          <div class="row">
            <button type="button" onClick={download}>
              {t.share.download}
            </button>
          </div>
        </>
      )}
      <p class="hint" role="status">
        {note}
      </p>
    </section>
  );
}

function ReceiptItem(props: {
  kept: KeptReceipt;
  onRevise: () => void;
  onWithdraw: () => Promise<void>;
}) {
  const { kept } = props;
  const [standing, setStanding] = useState("");
  const [asked, setAsked] = useState(false);
  const check = async () => {
    try {
      const { verdict, fit } = await api.read(kept.id, kept.receipt);
      const sees = t.share.sees(t.share.standing[fit.low], t.share.standing[fit.high], fit.version);
      setStanding(`${t.share[verdict]}; ${sees}`);
    } catch (error) {
      setStanding((error as Error).message);
    }
  };
  return (
    <li>
      <p>
        <strong>{t.share[kept.verdict]}</strong>, {kept.shared_on}:{" "}
        {t.share.tuneLine(
          format(kept.heat_kW, kept.heat_kW % 1 ? 1 : 0),
          kept.place,
          format(kept.elevation_m),
          format(kept.low_pump_Hz, 1),
          format(kept.high_pump_Hz, 1),
        )}
      </p>
      <p class="receipt hint">{t.share.receiptIs(kept.receipt)}</p>
      <div class="row">
        <button type="button" onClick={() => void check()}>
          {t.share.check}
        </button>
        <button type="button" onClick={props.onRevise}>
          {t.share.revise}
        </button>
        {asked ? (
          <>
            <button type="button" class="danger" onClick={() => void props.onWithdraw()}>
              {t.share.withdrawSure}
            </button>
            <button type="button" onClick={() => setAsked(false)}>
              {t.share.keep}
            </button>
          </>
        ) : (
          <button type="button" onClick={() => setAsked(true)}>
            {t.share.withdraw}
          </button>
        )}
      </div>
      <p class="hint" role="status">
        {standing}
      </p>
    </li>
  );
}

function download(): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(receiptsFile());
  link.download = "hypsotune-receipts.json";
  link.click();
  URL.revokeObjectURL(link.href);
}
