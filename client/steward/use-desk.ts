import type { ComponentChildren } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import type { StewardVerdict } from "../../model/steward-reasons.ts";
import type { Decided, StewardsTune, WithoutAnswer } from "../../server/contract.ts";
import { AtlasProblem } from "../base/answers/api.ts";
import { stewardWords as words } from "../texts/steward.ts";
import { whatWentWrong } from "../ui/went-wrong.tsx";
import type { StewardApi, Why } from "./steward-api.ts";

/** Which tunes are listed. */
export type List =
  | { of: "queue" | "held" }
  | { of: "owner"; name: string }
  | { of: "cluster" | "log"; ids: readonly string[] };

interface Listed {
  tunes: StewardsTune[];
  /** All that belong in the list, those not fetched yet included. */
  count: number;
  /** Where the rest begins; null when all are here. */
  next: number | null;
}

/** Fewer than this left in the list: the next ones are fetched. */
const FEW = 10;
/** As many as one decision takes. */
const AT_ONCE = 100;
const NONE: Listed = { tunes: [], count: 0, next: null };

export interface Desk extends Listed {
  list: List;
  busy: boolean;
  /** The tune looked at, and its place in the list. */
  current: StewardsTune | undefined;
  at: number;
  selected: ReadonlySet<string>;
  /** What is decided, or looked into, next: the selection, or without one the tune looked at. */
  targets: readonly string[];
  choosing: StewardVerdict | null;
  said: ComponentChildren;
  problem: ComponentChildren;
  canUndo: boolean;
  trial: WithoutAnswer | "working" | null;
  /** Grows with every decision: what is shown of the log and the clusters is old then. */
  changes: number;
  show: (list: List) => Promise<void>;
  showMore: () => void;
  goTo: (at: number) => void;
  select: (id: string) => void;
  selectAll: () => void;
  clearSelection: () => void;
  choose: (verdict: StewardVerdict | null) => void;
  decide: (why: Why) => Promise<void>;
  undo: (decisions?: readonly number[]) => Promise<void>;
  without: () => Promise<void>;
  closeTrial: () => void;
  tell: (said: ComponentChildren, problem?: ComponentChildren) => void;
}

/** All that a steward has before them: a list, a tune, a selection, and what came of the last press. */
export function useDesk(api: StewardApi, onRefused: (error: AtlasProblem) => void): Desk {
  const [list, setList] = useState<List>({ of: "queue" });
  const [listed, setListed] = useState<Listed>(NONE);
  const [busy, setBusy] = useState(true);
  const [at, setAt] = useState(0);
  const [selected, setSelected] = useState<ReadonlySet<string>>(new Set());
  const [choosing, setChoosing] = useState<StewardVerdict | null>(null);
  const [[said, problem], setSaid] = useState<[ComponentChildren, ComponentChildren]>(["", ""]);
  const [undoable, setUndoable] = useState<readonly (readonly number[])[]>([]);
  const [trial, setTrial] = useState<Desk["trial"]>(null);
  const [changes, setChanges] = useState(0);
  // Two presses at once would decide twice.
  const running = useRef<Promise<void> | null>(null);
  const fetching = useRef<number | null>(null);
  const trials = useRef(0);
  const current = listed.tunes[at];
  const targets = selected.size > 0 ? [...selected] : current ? [current.id] : [];
  const tell: Desk["tell"] = (said, problem = "") => setSaid([said, problem]);

  /** Does something with the API, one at a time; what goes wrong is said. */
  const run = async (work: () => Promise<void>) => {
    if (running.current) return;
    setBusy(true);
    running.current = work().catch((error) => {
      if (error instanceof AtlasProblem && error.problem.status === 401) onRefused(error);
      tell("", whatWentWrong(error));
    });
    await running.current;
    running.current = null;
    setBusy(false);
  };

  const fetched = async (list: List, after = 0): Promise<Listed> => {
    if (!("ids" in list || "name" in list)) {
      const { tunes, held, next } = await api.held(list.of === "queue", after);
      return { tunes, count: held, next };
    }
    const tunes = "ids" in list ? await api.byIds(list.ids) : (await api.ofOwner(list.name)).tunes;
    return { tunes, count: tunes.length, next: null };
  };

  const load = async (list: List, goTo?: string) => {
    const found = await fetched(list);
    setListed(found);
    setAt((before) => {
      const wanted = found.tunes.findIndex(({ id }) => id === goTo);
      return wanted >= 0 ? wanted : Math.max(0, Math.min(before, found.tunes.length - 1));
    });
  };

  /** The next ones, while whatever else is done goes on; a list that was left meanwhile stays left. */
  const more = async () => {
    const { next: from } = listed;
    if (from === null || fetching.current === from) return;
    fetching.current = from;
    try {
      const { tunes, next } = await fetched(list, from);
      setListed((now) => {
        if (now.next !== from) return now;
        const known = new Set(now.tunes.map(({ id }) => id));
        return { ...now, next, tunes: [...now.tunes, ...tunes.filter(({ id }) => !known.has(id))] };
      });
    } catch (error) {
      tell("", whatWentWrong(error));
    } finally {
      fetching.current = null;
    }
  };

  useEffect(() => void run(() => load(list)), []);
  useEffect(() => {
    if (listed.next !== null && listed.tunes.length - at < FEW) void more();
  }, [listed, at]);

  /** What was decided leaves the queue, and stays in every other list with its new verdict. */
  const after = async ({ decisions, gone }: Decided) => {
    setChanges((count) => count + 1);
    if (list.of !== "queue") return load(list, current?.id);
    const decided = new Set([...gone, ...decisions.map(({ tune }) => tune)]);
    const isLeft = ({ id }: StewardsTune) => !decided.has(id);
    const left = listed.tunes.filter(isLeft).length;
    const before = listed.tunes.slice(0, at).filter(isLeft).length;
    setListed((now) => {
      const tunes = now.tunes.filter(isLeft);
      return { ...now, tunes, count: now.count - (now.tunes.length - tunes.length) };
    });
    setAt(Math.max(0, Math.min(before, left - 1)));
  };

  const sayGone = (gone: readonly string[]) =>
    gone.length > 0 ? ` ${words.gone(gone.length)}` : "";

  return {
    ...listed,
    ...{
      list,
      busy,
      current,
      at,
      selected,
      targets,
      choosing,
      said,
      problem,
      trial,
      changes,
      tell,
    },
    canUndo: undoable.length > 0,
    show: async (next) => {
      // It decides nothing: pressed while something is on its way it has its turn after that.
      while (running.current) await running.current;
      await run(async () => {
        setChoosing(null);
        setTrial(null);
        setList(next);
        setAt(0);
        setSelected(new Set(next.of === "cluster" ? next.ids.slice(0, AT_ONCE) : []));
        await load(next);
      });
    },
    showMore: () => void more(),
    goTo: (wanted) => setAt(Math.max(0, Math.min(wanted, listed.tunes.length - 1))),
    select: (id) => {
      const next = new Set(selected);
      if (!next.delete(id) && next.size < AT_ONCE) next.add(id);
      setSelected(next);
    },
    selectAll: () => setSelected(new Set(listed.tunes.slice(0, AT_ONCE).map(({ id }) => id))),
    clearSelection: () => setSelected(new Set()),
    choose: (verdict) => setChoosing(targets.length > 0 ? verdict : null),
    decide: (why) =>
      run(async () => {
        if (!choosing) return;
        const made = await api.decide(targets, choosing, why);
        setChoosing(null);
        setSelected(new Set());
        setUndoable([...undoable, made.decisions.map(({ number }) => number)]);
        tell(words.did[choosing](made.decisions.length) + sayGone(made.gone));
        await after(made);
      }),
    undo: (decisions) =>
      run(async () => {
        const numbers = decisions ?? undoable.at(-1);
        if (!numbers) return tell(words.nothingToUndo);
        const { decisions: made, gone } = await api.undo(numbers);
        const back = new Set(numbers);
        setUndoable(undoable.filter((done) => !done.some((number) => back.has(number))));
        setChanges((count) => count + 1);
        tell(words.undone(made.length) + sayGone(gone));
        await load(list, made[0]?.tune ?? undefined);
      }),
    without: async () => {
      // It may take a while, and deciding goes on.
      setTrial("working");
      const asked = ++trials.current;
      const show = (answer: Desk["trial"]) => asked === trials.current && setTrial(answer);
      await api.without(targets).then(show, (error) => {
        show(null);
        tell("", whatWentWrong(error));
      });
    },
    closeTrial: () => {
      trials.current++;
      setTrial(null);
    },
  };
}
