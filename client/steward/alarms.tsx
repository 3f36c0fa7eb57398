import type { ComponentChildren } from "preact";
import { useId, useState } from "preact/hooks";
import type { AlarmsAnswer } from "../../server/contract.ts";
import { t } from "../texts/app.ts";
import { stewardWords as words } from "../texts/steward.ts";
import { InEnglish } from "../ui/in-english.tsx";
import { whatWentWrong } from "../ui/went-wrong.tsx";
import { isReason, ReasonField } from "./reason-field.tsx";
import { dayOf, sizeOf } from "./shift-words.ts";
import type { StewardApi } from "./steward-api.ts";
import { useAsked } from "./use-asked.ts";

/** What the fit warns of, and what is to become of a fit that is held back. */
export function Alarms(props: {
  api: StewardApi;
  changes: number;
  onSaid: (said: ComponentChildren, problem?: ComponentChildren) => void;
}) {
  const { api, onSaid } = props;
  const [decided, setDecided] = useState(0);
  const seen = useAsked(api.alarms, `${props.changes} ${decided}`);
  const id = useId();
  if (!seen) return null;
  const { fit, alarms, refused } = seen;
  const say = async (what: "publish" | "keep-back", reason: string) => {
    try {
      await api.publication(what, reason);
      onSaid(what === "publish" ? words.said.publish : words.said.keepBack);
      setDecided(decided + 1);
    } catch (error) {
      onSaid("", whatWentWrong(error));
    }
  };
  return (
    <section class="sheet steward-alarms" aria-labelledby={id} data-frozen={refused !== null}>
      <h3 id={id}>{words.alarms}</h3>
      {alarms.length === 0 ? (
        <p>{words.noAlarms(fit)}</p>
      ) : (
        <>
          <p>{words.published(fit)}</p>
          <AlarmList alarms={alarms} />
        </>
      )}
      {refused && (
        <>
          <p class="warning">{words.frozen(dayOf(refused.since))}</p>
          <AlarmList alarms={refused.alarms} />
          {refused.kept_back_on && <p>{words.keptBack(dayOf(refused.kept_back_on))}</p>}
          {refused.let_through ? (
            <p>{words.letThrough}</p>
          ) : (
            <>
              <p>{words.frozenMeans}</p>
              <Publication onSay={say} />
            </>
          )}
        </>
      )}
    </section>
  );
}

function AlarmList({ alarms }: Pick<AlarmsAnswer, "alarms">) {
  return (
    <ul>
      {alarms.map(({ code, heat_kW, end, sentence }) => (
        <li key={`${code} ${heat_kW} ${end}`}>
          {sizeOf(heat_kW)} kW, {t.endWord[end]}: <InEnglish>{sentence}</InEnglish>
        </li>
      ))}
    </ul>
  );
}

function Publication(props: {
  onSay: (what: "publish" | "keep-back", reason: string) => Promise<void>;
}) {
  const [reason, setReason] = useState("");
  const [tried, setTried] = useState(false);
  const say = (what: "publish" | "keep-back") => {
    setTried(true);
    if (isReason(reason)) void props.onSay(what, reason.trim());
  };
  return (
    <form
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        say("keep-back");
      }}
    >
      <ReasonField
        name="publication"
        label={words.reason}
        value={reason}
        tried={tried}
        onValue={setReason}
      />
      <div class="row">
        <button type="submit">{words.keepBack}</button>
        <button type="button" class="danger" onClick={() => say("publish")}>
          {words.publish}
        </button>
      </div>
    </form>
  );
}
