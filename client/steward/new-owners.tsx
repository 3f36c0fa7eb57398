import type { ComponentChildren } from "preact";
import { useId, useState } from "preact/hooks";
import { stewardWords as words } from "../texts/steward.ts";
import { whatWentWrong } from "../ui/went-wrong.tsx";
import { isReason, ReasonField } from "./reason-field.tsx";
import { dayOf } from "./shift-words.ts";
import type { StewardApi } from "./steward-api.ts";
import { useAsked } from "./use-asked.ts";

/** Who waits with an accepted tune, in the order in which they come to count; whom one knows may count at once. */
export function NewOwners(props: {
  api: StewardApi;
  onSaid: (said: ComponentChildren, problem?: ComponentChildren) => void;
  onShow: (name: string) => void;
}) {
  const { api, onSaid } = props;
  const [counted, setCounted] = useState(0);
  const seen = useAsked(api.waiting, counted);
  const [reason, setReason] = useState("");
  const [tried, setTried] = useState(false);
  const id = useId();
  if (!seen) return null;
  const letCount = async (name: string) => {
    setTried(true);
    if (!isReason(reason)) return;
    try {
      onSaid(words.counted((await api.letCount(name, reason.trim())).tunes));
      setCounted(counted + 1);
    } catch (error) {
      onSaid("", whatWentWrong(error));
    }
  };
  return (
    <section class="sheet steward-new" aria-labelledby={id}>
      <h3 id={id}>{words.newOwners}</h3>
      <p class="hint">{words.newOwnersHint}</p>
      {seen.waiting.length === 0 ? (
        <p>{words.noNewOwners}</p>
      ) : (
        <>
          <ReasonField
            name="count"
            label={words.reason}
            value={reason}
            tried={tried}
            onValue={setReason}
          />
          <ul>
            {seen.waiting.map(({ contributor, since, crowded }) => (
              <li key={contributor}>
                <p>
                  {words.waitsSince(contributor, dayOf(since))}
                  {crowded && `, ${words.crowded}`}
                </p>
                <p class="row">
                  <button
                    type="button"
                    aria-label={words.showTunes(contributor)}
                    onClick={() => props.onShow(contributor)}
                  >
                    {words.show}
                  </button>
                  <button
                    type="button"
                    aria-label={words.letCountWhom(contributor)}
                    onClick={() => void letCount(contributor)}
                  >
                    {words.letCount}
                  </button>
                </p>
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}
