import type { End } from "../../../model/end.ts";
import type { Band } from "../../../model/fit/bands.ts";
import type { OwnAside, OwnContradiction } from "../../../model/own-rows.ts";
import type { StartBasis } from "../../../model/start.ts";
import { locale } from "../../language.ts";
import { t } from "../../texts/app.ts";
import { heaterWords as words } from "../../texts/heater.ts";
import { format, formatFineRate, formatPercent } from "../../units.ts";
import type { OwnTunesView } from "./own-view.ts";

/** Closer than this a heater runs about right, %: our own working value, finer than most pumps' steps. */
const ABOUT_RIGHT_pct = 5;
/** Both ends are told apart where they differ by more than this, %. */
const ALIKE_pct = 5;

const day = new Intl.DateTimeFormat(locale, { dateStyle: "medium" });

/** A date as people of the page's language write it. */
export const dayOf = (at: string): string => day.format(new Date(at));

/** What leaving the heater as it is would do here. */
export function leadSentence({ low, high }: Record<End, number>): string {
  const [calmer, worse] = [low, high].sort((p, q) => Math.abs(p) - Math.abs(q)) as [number, number];
  if (Math.abs(worse) <= ABOUT_RIGHT_pct) return words.lead.right;
  const alike = Math.abs(worse - calmer) <= ALIKE_pct;
  const said = alike
    ? words.lead.one(shiftIn(worse))
    : words.lead.both(shiftIn(low), shiftIn(high));
  const isRich = Math.max(low, high) > ABOUT_RIGHT_pct;
  const isLean = Math.min(low, high) < -ABOUT_RIGHT_pct;
  // Short where both are said: on a phone the answer's certainty and bands stand below it on the first screen.
  const { bothMean, richMeans, leanMeans } = words.lead;
  return `${said}: ${isRich && isLean ? bothMean : isRich ? richMeans : leanMeans}.`;
}

function shiftIn(shift_pct: number): string {
  if (Math.abs(shift_pct) <= ABOUT_RIGHT_pct) return words.lead.even;
  const size = formatPercent(Math.abs(shift_pct));
  return shift_pct > 0 ? words.lead.rich(size) : words.lead.lean(size);
}

/** What the answer rests on, and what the own tunes narrow it by. */
export function basisSentence({ tunes, half_pct }: OwnTunesView, basis: StartBasis): string {
  const [mine, others] = [formatPercent(half_pct.mine), formatPercent(half_pct.others)];
  if (basis.prior_only) return words.basis.ownAlone(tunes, mine, others);
  return words.basis.own(format(basis.tunes), format(basis.contributors), tunes, mine, others);
}

export function bestSentence(best_Hz: Record<End, Band>): string {
  const span = ({ lower, upper }: Band) => `${formatFineRate(lower)}–${formatFineRate(upper)}`;
  return words.best(span(best_Hz.low), span(best_Hz.high));
}

/** Why own tunes do not count, a sentence for each; `found_at` has when each was found. */
export function asideSentences(
  set_aside: readonly OwnAside[],
  found_at: readonly string[],
): string[] {
  return [...new Set(set_aside.map(({ tune }) => tune))].map((one) => {
    const asides = set_aside.filter(({ tune }) => tune === one);
    const [first, second] = asides as [OwnAside, OwnAside?];
    const date = dayOf(found_at[one - 1] ?? "");
    const end = second ? null : first.end;
    const which = end ? words.aside.ofEnd(date, t.endWord[end]) : words.aside.of(date);
    return `${which} ${whyAside(asides)}`;
  });
}

function whyAside(asides: readonly OwnAside[]): string {
  const figures = new Set(asides.flatMap(({ field }) => (field ? [figureOf(field)] : [])));
  if (figures.size > 0) return words.aside.slip([...figures].join(", "));
  const codes = new Set(asides.map(({ code }) => code));
  if (codes.size > 1) return words.aside.apart;
  return codes.has("far_richer") ? words.aside.richer : words.aside.leaner;
}

/** "low.pump_Hz" in words. */
function figureOf(field: string): string {
  const [part, quantity] = field.split(".") as [string, keyof typeof words.aside.figures];
  const name = words.aside.figures[quantity];
  return part === "low" || part === "high" ? `${name} (${t.endWord[part]})` : name;
}

export function contradictionSentence(
  { tunes, end }: OwnContradiction,
  found_at: readonly string[],
): string {
  const dates = tunes.map((tune) => dayOf(found_at[tune - 1] ?? ""));
  const listed = `${dates.slice(0, -1).join(", ")} ${words.aside.and} ${dates.at(-1)}`;
  return words.aside.contradict(listed, t.endWord[end]);
}
