import { driftOf, type EndDrift } from "../../../model/drift/drift.ts";
import { ENDS } from "../../../model/end.ts";
import { seeded } from "../../../seed-demo/random.ts";
import { type SeasonKind, seasonOf } from "./season.ts";

export interface Watched {
  /** Share of seasons in which anything was spoken of at any look, and of what, %. */
  any_pct: number;
  co_pct: number;
  mixture_pct: number;
  /** Median of the entry after which a rise of CO was first spoken of; null where it mostly never was. */
  co_first_after: number | null;
  /** Share of seasons whose interval of CO at the last entry held the true change, %. */
  interval_holds_pct: number;
}

/** Looks after every entry of many seasons. */
export function watch(kind: SeasonKind, seasons: number, seed: number): Watched {
  const firsts: number[] = [];
  const said = { any: 0, co: 0, mixture: 0, holds: 0, intervals: 0 };
  for (let season = 0; season < seasons; season++) {
    const logged = seasonOf(kind, seeded(seed * 1_000_003 + season));
    let [co, mixture] = [0, 0];
    for (let n = 3; n <= logged.length; n++) {
      const drift = driftOf(logged.slice(0, n));
      const one = (is: (end: EndDrift) => boolean | undefined) =>
        ENDS.some((end) => is(drift[end]));
      if (one((end) => end.co?.shown)) co ||= n;
      if (one((end) => end.mixture?.shown)) mixture ||= n;
    }
    said.any += co || mixture ? 1 : 0;
    said.co += co ? 1 : 0;
    said.mixture += mixture ? 1 : 0;
    firsts.push(co || Number.POSITIVE_INFINITY);
    const last = driftOf(logged).low.co;
    if (last) {
      said.intervals += 1;
      const truth = Math.exp((kind.co_rise * last.over.amount) / 100);
      said.holds += last.interval.lower <= truth && truth <= last.interval.upper ? 1 : 0;
    }
  }
  const pct = (count: number, of = seasons) => (100 * count) / of;
  const median = firsts.sort((a, b) => a - b)[Math.floor(seasons / 2)] ?? Number.POSITIVE_INFINITY;
  return {
    any_pct: pct(said.any),
    co_pct: pct(said.co),
    mixture_pct: pct(said.mixture),
    co_first_after: Number.isFinite(median) ? median : null,
    interval_holds_pct: pct(said.holds, said.intervals),
  };
}
