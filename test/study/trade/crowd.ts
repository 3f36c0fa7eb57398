import { generator, offshoot, pick, type Seeded } from "./draws.ts";
import { itinerary, tuneCount } from "./itinerary.ts";
import { invented } from "./lies.ts";
import { settle, type TradeOptions } from "./options.ts";
import { drawOwner } from "./owner.ts";
import { assignRoles, type Role } from "./roles.ts";
import type { End, TradeRow } from "./row.ts";
import { type Sending, send } from "./sending.ts";
import type { HeaterSize } from "./size.ts";
import { carelessness } from "./stating.ts";
import { drawTrade, type Trade } from "./trade.ts";
import { type Truth, truthOf } from "./truth.ts";
import type { Tuned } from "./tuning.ts";

/**
 * A crowd of owners and what they send to the atlas, from what heaters and people physically do. It shares no formula
 * and no constant with the fit, so that it can judge it. All constants are drawn per run from ranges of the trade.
 */

export interface TradeCrowd {
  /** In the order in which they arrive, an owner's rows together, low and high end in turn. */
  rows: TradeRow[];
  truth: Truth;
  /** Tunes that the door would have questioned, so that they are not among the rows. */
  caughtBefore: number;
}

export function tradeCrowd(seed: number | Seeded, options: TradeOptions = {}): TradeCrowd {
  const random = generator(seed);
  const settled = settle(options);
  const trade = drawTrade(random, settled);
  const truth = truthOf(trade, offshoot(random));
  const crowd = { trade, random, rows: [] as TradeRow[], caught: 0 };
  const { owners: n, copies } = settled;
  const roles = assignRoles(random, trade);
  for (let i = 0; i < n; i++) {
    if (
      copies &&
      i >= copies.honestFirst &&
      (i - copies.honestFirst) % (copies.batch ?? 20) === 0
    ) {
      copies.publish(crowd.rows);
    }
    oneOwner(crowd, `o${i}`, roles(i), tuneCount(random));
  }
  if (settled.oneKey) {
    const tunes = crowd.rows.length / 2;
    oneOwner(crowd, `o${n}`, {}, Math.round((tunes * settled.oneKey) / (1 - settled.oneKey)));
  }
  return { rows: crowd.rows, truth, caughtBefore: crowd.caught };
}

function chooseSize(random: Seeded, { sizes, options }: Trade) {
  const shares = options.sizes.map(({ share }) => share);
  return sizes[shares.length > 1 ? pick(random, shares) : 0] as HeaterSize;
}

interface Growing {
  trade: Trade;
  random: Seeded;
  rows: TradeRow[];
  caught: number;
}

function oneOwner(crowd: Growing, key: string, role: Role, count: number): void {
  const { trade, random, rows } = crowd;
  const owner = drawOwner(random, trade, chooseSize(random, trade));
  const { mistake, lying, club, copies: how } = role;
  if (lying?.invented) {
    invented(rows, trade, random, owner, key, lying);
    return;
  }
  if (mistake === "careless") owner.careless = carelessness(random);
  if (club) owner.factor = club.factor;
  const tunes = mistake === "never retuned" || lying?.atLeastTwo ? Math.max(2, count) : count;
  const oneSlip = mistake === "ends swapped" ? Math.floor(random.uniform() * tunes) : -1;
  const nights = itinerary(random, trade, tunes, club, lying);
  const { copies } = trade.options;
  const copy = how && copies ? { how, copies } : undefined;
  let first: Record<End, Tuned> | undefined;
  nights.forEach(({ night, cell, lie }, t) => {
    const isCarried = mistake === "never retuned" && t > 0;
    const isSlip = mistake !== "never retuned" && (oneSlip < 0 || oneSlip === t);
    owner.factor = lie ?? club?.factor ?? 1;
    const sending: Sending = {
      trade,
      random,
      owner,
      key,
      night,
      cell,
      honest: lie === undefined,
      slip: isSlip ? mistake : undefined,
      carried: isCarried ? first : undefined,
      copy,
    };
    const { tuned, passed } = send(rows, sending);
    first ??= tuned;
    if (!passed) crowd.caught++;
  });
}
