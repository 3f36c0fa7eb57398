import { assign, chance, type Seeded } from "./draws.ts";
import { type Lying, liarNights } from "./lies.ts";
import { anyMonth, type Night, night } from "./nights.ts";
import { MISTAKES, type Mistake } from "./row.ts";
import type { CopyHow } from "./sending.ts";
import type { Trade } from "./trade.ts";
import { homeElevation, tripElevation } from "./travel.ts";

/** Who of the crowd is what: shares of mistakes, lies, clubs and copies among the owners. */

/** What an owner is besides honest and careful. */
export interface Role {
  mistake?: Mistake;
  lying?: Lying;
  club?: Club;
  copies?: CopyHow;
}

export interface Club {
  factor: number;
  night: Night;
  cell: string;
}

/** Exact shares of each role among the owners, nobody with two; owners who come before the first copy have none. */
export function assignRoles(random: Seeded, trade: Trade): (i: number) => Role {
  const { owners, mistakes = {}, lies, clubs, copies } = trade.options;
  const roles: Role[] = [];
  const shares: number[] = [];
  const add = (share: number | undefined, role: Role) => {
    if (!share) return;
    roles.push(role);
    shares.push(share);
  };
  for (const mistake of MISTAKES) add(mistakes[mistake], { mistake });
  if (lies) add(lies.share, { lying: liarNights(random, trade, lies) });
  for (let c = 0; c < (clubs?.number ?? 0); c++) {
    const factor = Math.exp((clubs?.habit_sd ?? 0) * random.normal());
    const elevation_m = chance(random, 0.5)
      ? homeElevation(random, trade.travel)
      : tripElevation(random, trade.travel);
    const meeting = night(random, trade.climate, elevation_m, anyMonth(random), false);
    const club = { factor, night: meeting, cell: `club-${c}` };
    add((clubs?.members ?? 0) / owners, { club });
  }
  add(copies?.outright, { copies: "outright" });
  add(copies?.halfWay, { copies: "half-way" });
  const from = copies?.honestFirst ?? 0;
  const marks = assign(random, owners, shares, from);
  return (i) => {
    const role = roles[marks[i] ?? -1];
    if (role) return role;
    // Half of those who tune properly also start from what the atlas suggests.
    return copies && i >= from && chance(random, 0.5) ? { copies: "properly" } : {};
  };
}
