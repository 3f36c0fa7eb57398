import type { ComponentChildren } from "preact";
import { useId, useState } from "preact/hooks";
import { stewardWords as words } from "../texts/steward.ts";
import { whatWentWrong } from "../ui/went-wrong.tsx";
import { isReason, ReasonField } from "./reason-field.tsx";
import { dayOf, sizeOf } from "./shift-words.ts";
import type { StewardApi } from "./steward-api.ts";
import { useAsked } from "./use-asked.ts";

/**
 * Who waits with an accepted tune, in the order in which they come to count, and which heater sizes wait for owners; whom one knows
 * may count at once.
 */
export function NewOwners(props: {
  api: StewardApi;
  onSaid: (said: ComponentChildren, problem?: ComponentChildren) => void;
  onShow: (name: string) => void;
}) {
  const { api, onSaid } = props;
  const [counted, setCounted] = useState(0);
  const [pages, setPages] = useState(1);
  // All pages anew: whoever comes to count leaves a gap, and others come in between.
  const seen = useAsked(() => api.waiting(pages), `${pages} ${counted}`);
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
  const { waiting, next, sizes } = seen;
  const line = (name: string, what: string) => (
    <li key={name}>
      <p>{what}</p>
      <p class="row">
        <button type="button" aria-label={words.showTunes(name)} onClick={() => props.onShow(name)}>
          {words.show}
        </button>
        <button
          type="button"
          aria-label={words.letCountWhom(name)}
          onClick={() => void letCount(name)}
        >
          {words.letCount}
        </button>
      </p>
    </li>
  );
  return (
    <section class="sheet steward-new" aria-labelledby={id}>
      <h3 id={id}>{words.newOwners}</h3>
      <p class="hint">{words.newOwnersHint}</p>
      {waiting.length + sizes.length > 0 && (
        <ReasonField
          name="count"
          label={words.reason}
          value={reason}
          tried={tried}
          onValue={setReason}
        />
      )}
      {waiting.length === 0 ? (
        <p>{words.noNewOwners}</p>
      ) : (
        <ul>
          {waiting.map(({ contributor, since, crowded }) =>
            line(
              contributor,
              `${words.waitsSince(contributor, dayOf(since))}${crowded ? `, ${words.crowded}` : ""}`,
            ),
          )}
        </ul>
      )}
      {next !== null && (
        <p>
          <button type="button" onClick={() => setPages(pages + 1)}>
            {words.more}
          </button>
        </p>
      )}
      {sizes.length > 0 && (
        <>
          <h4>{words.newSizes}</h4>
          <p class="hint">{words.newSizesHint}</p>
        </>
      )}
      {sizes.map(({ heat_kW, owners_needed, owners }) => {
        const known = owners.filter(({ waits }) => !waits).length;
        return (
          <div key={heat_kW}>
            <p>{words.sizeWaits(sizeOf(heat_kW), known, owners_needed)}</p>
            <ul>
              {owners.map(({ contributor, tunes, waits }) =>
                line(contributor, words.ownerOfSize(contributor, tunes, waits)),
              )}
            </ul>
          </div>
        );
      })}
    </section>
  );
}
