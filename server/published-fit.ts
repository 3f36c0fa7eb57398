import type { Database } from "../db/database.ts";
import { type FitVersion, newestFit, publishFit } from "../db/fits.ts";
import { acceptedFitRows, appendDecisions, type NewDecision } from "../db/tunes.ts";
import { fitAtlas } from "../model/fit/fit.ts";
import type { FitRow, PublishedFit, RejectedRow } from "../model/fit/group.ts";
import { sha256 } from "./keys.ts";
import { CODE_VERSION } from "./version.ts";

/** Before the first tune: physics alone. */
const PRIOR_VERSION: FitVersion = {
  fit: {
    version: "prior",
    published_at: null,
    code: CODE_VERSION,
    rows_sha256: null,
    demo: false,
    groups: [],
  },
  rejected: [],
};

export interface FitKeeperOptions {
  db: Database;
  now: () => Date;
  demo: boolean;
  /** How long a version read from the database is believed, ms: for ever where this process alone publishes. */
  believe_ms: number;
}

/** Waits so long after a write for more of them before the fit is made again, ms … */
const SETTLE_ms = 150;
/** … and at least so many times as long as the last refresh took, so that refreshing never takes over. */
const REST_SHARE = 5;

/** Holds the published version that answers are made from, and publishes new ones. */
export class FitKeeper {
  readonly #options: FitKeeperOptions;
  #version: FitVersion;
  #read_at = Number.NEGATIVE_INFINITY;
  #refreshing: Promise<void> | null = null;
  #again = false;
  #soon: ReturnType<typeof setTimeout> | undefined;
  #lasted_ms = 0;

  constructor(options: FitKeeperOptions) {
    this.#options = options;
    this.#version = { ...PRIOR_VERSION, fit: { ...PRIOR_VERSION.fit, demo: options.demo } };
  }

  /** The complete published version at this moment; read from the database when too old. */
  async current(): Promise<FitVersion> {
    const age = this.#options.now().getTime() - this.#read_at;
    if (age > this.#options.believe_ms) await this.#read();
    return this.#version;
  }

  /** Whether accepted tunes may not be in the published version yet. */
  get pending(): boolean {
    return this.#refreshing !== null || this.#soon !== undefined;
  }

  /** Asks for a refresh when writes have settled, without making anyone wait. */
  refreshSoon(): void {
    this.#soon ??= setTimeout(
      () => {
        this.#soon = undefined;
        this.refresh().catch((error) => console.error("The fit was not refreshed:", error));
      },
      Math.max(SETTLE_ms, REST_SHARE * this.#lasted_ms),
    );
  }

  /** Stops waiting, and publishes what there is. */
  async settle(): Promise<void> {
    clearTimeout(this.#soon);
    this.#soon = undefined;
    await this.refresh();
  }

  /** Makes and publishes a new version from all accepted tunes, once at a time; asked again meanwhile, once more. */
  refresh(): Promise<void> {
    if (this.#refreshing) {
      this.#again = true;
      return this.#refreshing;
    }
    this.#refreshing = this.#refresh().finally(() => {
      this.#refreshing = null;
      if (!this.#again) return undefined;
      this.#again = false;
      return this.refresh();
    });
    return this.#refreshing;
  }

  async #read(): Promise<void> {
    const newest = await newestFit(this.#options.db);
    if (newest) this.#version = newest;
    this.#read_at = this.#options.now().getTime();
  }

  async #refresh(): Promise<void> {
    const { db, now, demo } = this.#options;
    const began = performance.now();
    await this.#read();
    const before = this.#version;
    const rows = await acceptedFitRows(db);
    const rows_sha256 = await hashOf(rows);
    if (rows_sha256 === before.fit.rows_sha256 && before.fit.code === CODE_VERSION) return;
    if (rows.length === 0 && before.fit.rows_sha256 === null) return;
    const { groups, rejected } = fitAtlas(rows);
    const version: FitVersion = {
      fit: {
        version: nextVersion(before.fit, now()),
        published_at: now().toISOString(),
        code: CODE_VERSION,
        rows_sha256,
        demo,
        groups,
      },
      rejected,
    };
    await publishFit(db, version);
    this.#version = version;
    await appendDecisions(db, changesOfMind(before.rejected, rejected, rows, now()));
    this.#lasted_ms = performance.now() - began;
  }
}

/** Day and running number: "2026-11-25.3". */
function nextVersion({ version }: PublishedFit, now: Date): string {
  const today = now.toISOString().slice(0, 10);
  const [day, number] = version.split(".");
  return `${today}.${day === today ? Number(number) + 1 : 1}`;
}

/** SHA-256 of the rows in canonical order: anyone can tell whether two fits rest on the same data. */
export function hashOf(rows: readonly FitRow[]): Promise<string> {
  const lines = rows.map((r) =>
    [r.contributor, r.cell ?? "", r.heat_kW, r.end, r.density_kg_m3, r.pump_Hz, r.fan_rpm].join(
      ",",
    ),
  );
  return sha256(lines.toSorted().join("\n"));
}

/** What the fit now sets aside and did not before, or takes back: one decision a tune and change. */
function changesOfMind(
  before: readonly RejectedRow[],
  after: readonly RejectedRow[],
  rows: readonly FitRow[],
  now: Date,
): NewDecision[] {
  const key = (r: RejectedRow) => `${r.row} ${r.end}`;
  const [old, current] = [new Set(before.map(key)), new Set(after.map(key))];
  const present = new Set(rows.map((r) => `${r.row} ${r.end}`));
  const decided_on = now.toISOString().slice(0, 10);
  const decision = (
    r: RejectedRow,
    verdict: "rejected" | "accepted",
    sentence: string,
  ): NewDecision => ({
    tune: String(r.row),
    by: "fit",
    verdict,
    reasons: JSON.stringify([{ code: `${verdict}_by_fit`, field: r.end, sentence }]),
    decided_on,
  });
  return [
    ...after.filter((r) => !old.has(key(r))).map((r) => decision(r, "rejected", r.reason)),
    ...before
      .filter((r) => !current.has(key(r)) && present.has(key(r)))
      .map((r) =>
        decision(r, "accepted", `Later tunes support the ${r.end} end: it counts again.`),
      ),
  ];
}
