import { useLayoutEffect, useMemo, useRef, useState } from "preact/hooks";
import { USUAL_REASONS } from "../../model/steward-reasons.ts";
import { recall, remember } from "../base/remember.ts";
import { stewardWords as words } from "../texts/steward.ts";
import { SaidBar } from "../ui/said-bar.tsx";
import { format } from "../units.ts";
import { Alarms } from "./alarms.tsx";
import { Clusters } from "./clusters.tsx";
import { NewOwners } from "./new-owners.tsx";
import { ReasonChoice } from "./reason-choice.tsx";
import { ShortcutList } from "./shortcut-list.tsx";
import { type Asked, askedBy, isTakenBy } from "./shortcuts.ts";
import { stewardApi } from "./steward-api.ts";
import { Trail } from "./trail.tsx";
import { Trial } from "./trial.tsx";
import { TuneList } from "./tune-list.tsx";
import { TuneSheet } from "./tune-sheet.tsx";
import { type Desk as DeskState, type List, useDesk } from "./use-desk.ts";

/** Where it is kept whether single keys do anything. */
const KEYS_OFF = "steward.keysOff";

/** The queue, the tune before one, alarms, clusters and the log. */
export function Desk(props: { token: string; onLeave: () => void; onRefused: () => void }) {
  const api = useMemo(() => stewardApi(props.token), [props.token]);
  const desk = useDesk(api, props.onRefused);
  const [keysOn, setKeysOn] = useState(() => !recall<boolean>(KEYS_OFF));
  const heading = useRef<HTMLHeadingElement>(null);
  const ownWords = useRef<HTMLInputElement>(null);
  useKeys(keysOn, desk, ownWords);
  // Where the eye is: at the tune that comes next. A screen reader reads its name there.
  const seen = useRef<string | undefined>(undefined);
  useLayoutEffect(() => {
    const id = desk.current?.id;
    const moved = seen.current !== undefined && seen.current !== id;
    seen.current = id;
    if (moved && !desk.choosing) heading.current?.focus({ preventScroll: true });
    if (moved) heading.current?.scrollIntoView({ block: "nearest" });
  }, [desk.current?.id]);
  return (
    <>
      <div class="row steward-head">
        <h2>{words.title}</h2>
        <button type="button" onClick={props.onLeave}>
          {words.leave}
        </button>
      </div>
      <Alarms api={api} changes={desk.changes} onSaid={desk.tell} />
      <Lists desk={desk} />
      <div class="steward-desk" aria-busy={desk.busy}>
        <TuneList desk={desk} />
        <div class="steward-tune">
          {desk.current ? (
            <TuneSheet desk={desk} tune={desk.current} heading={heading}>
              {desk.choosing && (
                <ReasonChoice
                  key={desk.choosing}
                  verdict={desk.choosing}
                  count={desk.targets.length}
                  ownWords={ownWords}
                  onWhy={(why) => void desk.decide(why)}
                  onCancel={() => {
                    desk.choose(null);
                    heading.current?.focus({ preventScroll: true });
                  }}
                />
              )}
            </TuneSheet>
          ) : (
            <section class="sheet">
              <h3 ref={heading} tabIndex={-1}>
                {desk.busy
                  ? words.loading
                  : desk.list.of === "queue"
                    ? words.empty
                    : words.emptyList}
              </h3>
              {desk.canUndo && (
                <p>
                  <button type="button" onClick={() => void desk.undo()}>
                    {words.undo}
                  </button>
                </p>
              )}
            </section>
          )}
          {desk.trial && <Trial trial={desk.trial} onClose={desk.closeTrial} />}
        </div>
      </div>
      <ShortcutList
        on={keysOn}
        onChange={(on) => {
          setKeysOn(on);
          remember(KEYS_OFF, !on);
        }}
      />
      <NewOwners api={api} onSaid={desk.tell} onShow={(name) => desk.show({ of: "owner", name })} />
      <Clusters
        api={api}
        // Looking for them takes the atlas a tenth of a second: not after each decision on something else.
        changes={desk.list.of === "cluster" ? desk.changes : 0}
        onLook={(ids) => desk.show({ of: "cluster", ids })}
      />
      <Trail
        api={api}
        changes={desk.changes}
        onShow={(tune) => desk.show({ of: "log", ids: [tune] })}
        onUndo={(number) => void desk.undo([number])}
      />
      <SaidBar said={desk.said} problem={desk.problem} onClose={() => desk.tell("")} />
    </>
  );
}

/** The lists one may look through; that of an owner, a cluster or the log is there while it is looked at. */
function Lists({ desk }: { desk: DeskState }) {
  const { list, count } = desk;
  const own: Record<List["of"], string> = {
    queue: list.of === "queue" ? words.queue(format(count)) : words.queuePlain,
    held: words.held,
    owner: list.of === "owner" ? words.ofOwner(list.name.slice(0, 6)) : "",
    cluster: words.ofCluster,
    log: words.ofLog,
  };
  const shown: List[] = [
    { of: "queue" },
    { of: "held" },
    ...(list.of === "queue" || list.of === "held" ? [] : [list]),
  ];
  return (
    <fieldset class="steward-lists">
      <legend class="visually-hidden">{words.lists}</legend>
      {shown.map((one) => (
        <button
          key={one.of}
          type="button"
          aria-pressed={one.of === list.of}
          onClick={() => desk.show(one)}
        >
          {own[one.of]}
        </button>
      ))}
    </fieldset>
  );
}

/** Lets single keys do what the buttons do, unless somebody types. */
function useKeys(
  on: boolean,
  desk: DeskState,
  ownWords: { current: HTMLInputElement | null },
): void {
  // At once with each drawing: the next key may come before the screen has it.
  useLayoutEffect(() => {
    if (!on) return undefined;
    const onKey = (event: KeyboardEvent) => {
      // While one decision is on its way nobody can have seen what the next would be about.
      if (desk.busy || isTakenBy(event.target, event.key)) return;
      const asked = askedBy(event, desk.choosing !== null);
      if (!asked) return;
      event.preventDefault();
      act(asked, desk, ownWords.current);
    };
    document.addEventListener("keydown", onKey);
    return () => document.removeEventListener("keydown", onKey);
  });
}

function act(asked: Asked, desk: DeskState, ownWords: HTMLInputElement | null): void {
  const { current, choosing } = desk;
  const reasonNumber = (number: number) => {
    const code = choosing && Object.keys(USUAL_REASONS[choosing])[number - 1];
    if (code) void desk.decide({ usual_reason: code });
  };
  switch (asked.do) {
    case "move":
      desk.goTo(desk.at + asked.by);
      break;
    case "choose":
      desk.choose(asked.verdict);
      break;
    case "reason":
      reasonNumber(asked.number);
      break;
    case "words":
      ownWords?.focus();
      break;
    case "cancel":
      desk.choose(null);
      break;
    case "undo":
      void desk.undo();
      break;
    case "select":
      if (current) desk.select(current.id);
      break;
    case "owner":
      if (current) desk.show({ of: "owner", name: current.contributor });
      break;
    case "without":
      if (current) void desk.without();
      break;
  }
}
