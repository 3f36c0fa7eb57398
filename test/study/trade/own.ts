import { generator, type Seeded } from "./draws.ts";
import { bestPumpRate, fanSpeed } from "./heater.ts";
import { nightAt } from "./nights.ts";
import { drawOwner, type Owner } from "./owner.ts";
import { type End, lnRatio, type Mistake, type TradeRow } from "./row.ts";
import { send } from "./sending.ts";
import { sizeOf, type Trade } from "./trade.ts";
import { tuneEnd } from "./tuning.ts";

/** One owner's heater over the years, for judging what the atlas says of a heater whose tunes it has. */
export interface OwnHeater {
  heat_kW: number;
  nominal_uL: number;
  /** Where the owner states it. */
  dose_uL?: number;
  /** Its next honest, properly swept tune in air of exactly x: ln(Hz per 1,000 rpm). */
  next(random: Seeded, end: End, x: number): number;
  /**
   * Its best setting: ln(Hz per 1,000 rpm) that this owner's proper sweeps come to on average in such air, without the
   * single tune's scatter. The owner's standing habit is in it, since that is what own tunes show.
   */
  best(end: End, x: number): number;
  /** Its tunes in nights of these true x, low and high in turn, as the atlas gets them; on request one is a mistake. */
  rows(
    random: Seeded,
    xs: readonly number[],
    mistaken?: { at: number; mistake?: Mistake },
  ): TradeRow[];
}

export function drawOwn(random: Seeded, trade: Trade, heat_kW: number): OwnHeater {
  const owner = drawOwner(random, trade, sizeOf(trade, heat_kW));
  const seed = Math.floor(random.uniform() * 4294967296);
  const { nominal_uL } = owner.heater;
  const habit: Partial<Record<End, number>> = {};
  return {
    heat_kW,
    nominal_uL,
    ...(owner.tells.dose ? { dose_uL: nominal_uL } : {}),
    next: (r, end, x) =>
      lnRatio(tuneEnd(r, trade, owner, end, nightAt(r, trade.climate, x), "properly")),
    best: (end, x) => {
      habit[end] ??= standingHabit(generator(seed), trade, owner, end);
      return (habit[end] ?? 0) + leastCO(generator(seed), trade, owner, end, x);
    },
    rows: (r, xs, mistaken) => ownRows(r, trade, owner, xs, mistaken),
  };
}

/** ln ratio at the bottom of the bowl, over the nights that have such air. */
function leastCO(random: Seeded, trade: Trade, owner: Owner, end: End, x: number): number {
  const fan_rpm = fanSpeed(owner.heater, end, x);
  let sum = 0;
  for (let i = 0; i < 12; i++) {
    const night = nightAt(random, trade.climate, x);
    const pump_Hz = bestPumpRate(owner.heater, trade.burning, end, fan_rpm, night);
    sum += lnRatio({ pump_Hz, fan_rpm });
  }
  return sum / 12;
}

/** How far this owner's sweeps come out from the bottom of the bowl, on average over airs. */
function standingHabit(random: Seeded, trade: Trade, owner: Owner, end: End): number {
  const n = 200;
  let sum = 0;
  for (let i = 0; i < n; i++) {
    const night = nightAt(random, trade.climate, -0.5 + (0.65 * (i + random.uniform())) / n);
    const tuned = tuneEnd(random, trade, owner, end, night, "properly");
    sum += Math.log(tuned.pump_Hz / tuned.best_Hz);
  }
  return sum / n;
}

const LIKELY: readonly Mistake[] = [
  "feet as metres",
  "ends swapped",
  "fan doubled or halved",
  "never retuned",
];

function ownRows(
  random: Seeded,
  trade: Trade,
  owner: Owner,
  xs: readonly number[],
  mistaken: { at: number; mistake?: Mistake } | undefined,
): TradeRow[] {
  const rows: TradeRow[] = [];
  const wrong = mistaken?.mistake ?? LIKELY[Math.floor(random.uniform() * LIKELY.length)];
  for (const [i, x] of xs.entries()) {
    const at = { trade, random, owner, key: "own", cell: `own-${i}`, manner: "properly" } as const;
    const night = nightAt(random, trade.climate, x);
    const slip = mistaken?.at === i ? wrong : undefined;
    if (slip === "never retuned") {
      const other = nightAt(random, trade.climate, xs[i === 0 ? xs.length - 1 : i - 1] ?? 0);
      const carried = send([], { ...at, night: other }).tuned;
      send(rows, { ...at, night, carried });
    } else if (!send(rows, { ...at, night, slip }).passed) {
      // What the door would have questioned was not sent so; swapped ends always pass.
      send(rows, { ...at, night, slip: "ends swapped" });
    }
  }
  return rows;
}
