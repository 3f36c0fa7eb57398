/** What lies did to an atlas, as `npm run study:poisoning` writes it and the page shows it: invented owners and liars. */
export interface PoisoningReport {
  /** Version of the code that was studied. */
  code: string;
  seed: number;
  attacks: Attacked[];
  newcomers: Welcomed[];
  few_owners: FewOwners;
  /** Of the first atlas alone, which a test attacks again: a report of other code is known by it. */
  sample: { attacks: number[]; newcomers: number[]; few_owners: number[] };
}

export const ATTACKS = [
  "fresh keys",
  "one key",
  "many keys",
  "five weeks",
  "counted at once",
  "three networks",
  "hundred",
] as const;
export type AttackId = (typeof ATTACKS)[number];

export interface Attacked {
  id: AttackId;
  /** Owners who count before it begins. */
  honest: number;
  clients: number;
  keys: number;
  tunes: number;
  days: number;
  /** Days that a new owner waits; 0 for none. */
  waits_days: number;
  /** Invented atlases, each attacked anew with every lie. */
  atlases: number;
  /** The furthest that a published average tune moved at any time, %, at five elevations and both powers: over the atlases and lies. */
  median_pct: number;
  most_pct: number;
  /** The lie that did most: how many times the right pump rate, and where. */
  worst: { times: number; elevation_m: number };
  /** Attacks in which a version was held back. */
  held_back: number;
  attacks: number;
  /** What it must stay below, %; null where it only shows what would be. */
  goal_pct: number | null;
}

/** How long honest newcomers wait until their tune is in the published fit. */
export interface Welcomed {
  honest: number;
  /** Newcomers a week. */
  a_week: number;
  /** Clients that send a fresh key's tune now and then meanwhile. */
  attackers: number;
  newcomers: number;
  median_days: number;
  most_days: number;
  within_a_week: number;
}

/** A heater size with few owners, beside ten owners of another one. */
export interface FewOwners {
  /** So many are the first, one of them a liar: how far that moved the average from where an honest one in the same air leaves it, %. */
  first: number;
  lies: number;
  median_pct: number;
  most_pct: number;
  /** Lies after which the band of 95 % left that out somewhere. */
  outside_band: number;
  /** To crowds from so many honest owners to so many one more was added, and in how many cases that version would be held back. */
  from: number;
  to: number;
  more: number;
  held_back: number;
}

/** The report, fetched when somebody wants to see it. */
export async function loadPoisoningReport(): Promise<PoisoningReport> {
  const { default: report } = await import("./poisoning-report.json");
  return report as PoisoningReport;
}
