import type { Database } from "../db/database.ts";
import { appendDecisions, type NewDecision } from "../db/decisions.ts";
import {
  greatestVersion,
  newestFit,
  newestVersions,
  publishFit,
  type Version,
} from "../db/fits.ts";
import { endRefusal, findRefusal, keepRefusal, type Refusal } from "../db/refusal.ts";
import { causesOf } from "../db/storage-trouble.ts";
import { LOOKED_BACK } from "../model/alarms.ts";
import { fingerprint } from "../model/fit/fingerprint.ts";
import type { PublishedFit } from "../model/fit/group.ts";
import { NUMERICS, SETTINGS } from "../model/fit/settings.ts";
import type { Reason } from "../model/screen.ts";
import { publishedFit } from "./contract/fit.ts";
import type { Alarm } from "./contract/steward-answers.ts";
import { type Change, type FitMaker, fitsHere, type Trial } from "./fitted.ts";
import { alarming, isOver, nameOf } from "./freeze.ts";
import { countDue } from "./new-keys.ts";
import { CODE_VERSION } from "./version.ts";

/** What made a version: another release, or another estimator, makes its own. */
const MADE_BY = { code: CODE_VERSION, estimator: fingerprint() };
const FIT_SETTINGS = { ...SETTINGS, ...NUMERICS };

const isByThisEstimator = ({ estimator }: PublishedFit) => estimator === MADE_BY.estimator;
const isOurs = (fit: PublishedFit) => fit.code === MADE_BY.code && isByThisEstimator(fit);
const KEPT = publishedFit.omit({ safety: true });
const isReadable = (fit: PublishedFit) => isOurs(fit) || KEPT.safeParse(fit).success;

/** Before the first tune: physics alone. */
const PRIOR_VERSION: PublishedFit = {
  version: "prior",
  published_at: null,
  ...MADE_BY,
  settings: FIT_SETTINGS,
  rows_sha256: null,
  demo: false,
  groups: [],
  alarms: [],
};

export interface FitKeeperOptions {
  db: Database;
  now: () => Date;
  demo: boolean;
  /** How long a version read from the database is believed, ms: for ever where this process alone publishes. */
  believe_ms: number;
  /** Days until a new contributor's tunes count; 0 for at once. */
  newKeyDays: number;
  /** Makes the fits; in this thread, unless said otherwise. */
  fits?: FitMaker;
  /** Told of alarms that the version before had not, and of those that hold versions back. It must not fail or take long. */
  onAlarms?: (news: AlarmNews) => void;
  /** Told of each refresh that fails when none has succeeded for a while. It must not fail or take long. */
  onFailing?: () => void;
}

/** What a steward is told of without asking. */
export interface AlarmNews {
  /** Whether the version with these alarms is published all the same, or held back. */
  event: "published" | "held back";
  /** The version that answers now. */
  fit: string;
  alarms: readonly Alarm[];
}

/** Waits so long after a write for more of them before the fit is made again, ms … */
const SETTLE_ms = 150;
/** … and at least so many times as long as the last fit took, so that refreshing never takes over. */
const REST_SHARE = 5;
/** After so many versions in a day the next ones come once a minute: of each that a tune was judged beside something is kept. */
const MANY_A_DAY = 200;
const SELDOM_ms = 60_000;
/** After a refresh that failed (another process holds the database, the disk is full) it is tried again, ms. */
const TRY_AGAIN_ms = 10_000;
/** Failing for so long it does not come right by itself, ms. */
const FAILING_ms = 600_000;

/** Holds the published version that answers are made from, and publishes new ones. */
export class FitKeeper {
  readonly #options: FitKeeperOptions;
  readonly #fits: FitMaker;
  #version: PublishedFit;
  /** The greatest version's name, whatever code made it. */
  #newest = PRIOR_VERSION.version;
  #refusal: Refusal | null = null;
  /** Hash of the rows of the newest refused version: they need not be fitted again. */
  #refused_rows = "";
  #read_at: number | undefined;
  #refreshing: Promise<void> | null = null;
  #again = false;
  #isOver = false;
  #soon: ReturnType<typeof setTimeout> | undefined;
  #lasted_ms = 0;
  /** When the first of the refreshes failed of which none has succeeded since. */
  #fails_since: number | undefined;

  constructor(options: FitKeeperOptions) {
    this.#options = options;
    this.#fits = options.fits ?? fitsHere(options.db);
    this.#version = { ...PRIOR_VERSION, demo: options.demo };
  }

  /** The complete published version at this moment; read from the database when too old. */
  async current(): Promise<PublishedFit> {
    const { now, believe_ms } = this.#options;
    // A clock that was set back makes an age below 0: then nothing is known of it.
    const age_ms = now().getTime() - (this.#read_at ?? Number.NaN);
    if (!(age_ms >= 0 && age_ms <= believe_ms)) {
      await this.#read();
    }
    return this.#version;
  }

  /** Whether accepted tunes may not be in the published version yet. */
  get pending(): boolean {
    return this.#refreshing !== null || this.#soon !== undefined;
  }

  /** Since when newer versions are not published, and why; null when they are. As old as the published version is. */
  get refusal(): { since: string; alarms: Alarm[] } | null {
    return this.#refusal && { ...this.#refusal, alarms: JSON.parse(this.#refusal.alarms) };
  }

  /** Asks for a refresh when writes have settled, without making anyone wait. */
  refreshSoon(): void {
    const ofToday = Number(this.#newest.split(".")[1] ?? 0);
    const pace_ms = ofToday < MANY_A_DAY ? SETTLE_ms : SELDOM_ms;
    this.#refreshIn(Math.max(pace_ms, REST_SHARE * this.#lasted_ms));
  }

  #refreshIn(delay_ms: number): void {
    if (this.#isOver) return;
    this.#soon ??= setTimeout(() => {
      this.#soon = undefined;
      this.refresh().catch((error) => {
        console.error("The fit was not refreshed and is tried again:", causesOf(error).at(-1));
        this.#refreshIn(TRY_AGAIN_ms);
      });
    }, delay_ms);
  }

  /** Stops waiting, and publishes what there is. */
  async settle(): Promise<void> {
    clearTimeout(this.#soon);
    this.#soon = undefined;
    await this.refresh();
  }

  /** Ends it: the fit under way, or else one that is due, is published; what came after its beginning is the next start's. */
  async finish(): Promise<void> {
    this.#isOver = true;
    clearTimeout(this.#soon);
    this.#soon = undefined;
    await (this.#refreshing ?? this.refresh());
  }

  /** Makes and publishes a new version from all accepted tunes, once at a time; asked again meanwhile, once more. */
  refresh(): Promise<void> {
    if (this.#refreshing) {
      this.#again = true;
      return this.#refreshing;
    }
    this.#refreshing = this.#watched().finally(() => {
      this.#refreshing = null;
      if (!this.#again || this.#isOver) return undefined;
      this.#again = false;
      return this.refresh();
    });
    return this.#refreshing;
  }

  async #watched(): Promise<void> {
    const { now, onFailing } = this.#options;
    try {
      await this.#refresh();
      this.#fails_since = undefined;
    } catch (error) {
      this.#fails_since ??= now().getTime();
      if (now().getTime() - this.#fails_since >= FAILING_ms) onFailing?.();
      throw error;
    }
  }

  /** The fit of all accepted tunes, those held back included, without some; nothing is published. */
  without(tunes: readonly string[]): Promise<Trial> {
    return this.#fits.without(tunes);
  }

  async #read(): Promise<void> {
    this.#refusal = await findRefusal(this.#options.db);
    const newest = await newestFit(this.#options.db);
    this.#newest = (await greatestVersion(this.#options.db)) ?? PRIOR_VERSION.version;
    // What another release published answers until this one has made its own, unless it lacks what this one asks of a fit.
    if (newest && isReadable(newest)) this.#version = newest;
    this.#read_at = this.#options.now().getTime();
  }

  async #refresh(): Promise<void> {
    const { db, now, demo, newKeyDays } = this.#options;
    await this.#read();
    await countDue(db, now(), newKeyDays);
    const before = this.#version;
    const known = isOurs(before) ? before.rows_sha256 : null;
    const history = await this.#history();
    const refused = this.#refusal && !isOver(this.#refusal, now());
    const {
      rows_sha256,
      tunes,
      fit: made,
      took_ms,
    } = await this.#fits.fit({
      known: [known, refused ? this.#refused_rows : null],
      before: history.map((version) => version.fit),
    });
    if (rows_sha256 === known) return this.#endRefusal();
    // The rows of the newest refused version.
    if (!made) return;
    if (tunes === 0 && this.#newest === PRIOR_VERSION.version) return;
    const { groups, alarms, changes } = made;
    this.#lasted_ms = took_ms;
    const fit: PublishedFit = {
      version: nextVersion(this.#newest, now()),
      published_at: now().toISOString(),
      ...MADE_BY,
      settings: FIT_SETTINGS,
      rows_sha256,
      demo,
      groups,
      alarms,
    };
    const why = newKeyDays > 0 ? this.#alarming(fit, history) : [];
    if (why.length > 0 && !(this.#refusal && isOver(this.#refusal, now()))) {
      this.#refused_rows = rows_sha256;
      return this.#refuse(why);
    }
    await publishFit(db, fit, why.length > 0);
    this.#version = fit;
    this.#newest = fit.version;
    this.#tell("published", alarms, before.alarms);
    await this.#endRefusal();
    await appendDecisions(
      db,
      changes.map((change) => changeOfMind(change, now())),
    );
  }

  /** Why a version is not published by itself. What was held back beside versions that no longer read as such stays so. */
  #alarming(fit: PublishedFit, history: readonly Version[]): readonly Alarm[] {
    if (this.refusal && history.length === 0) return this.refusal.alarms;
    return alarming(fit, history, this.#options.now());
  }

  async #refuse(why: readonly Alarm[]): Promise<void> {
    const { db, now } = this.#options;
    const today = now().toISOString().slice(0, 10);
    if (!this.#refusal) {
      const reasons = why.map(({ code, heat_kW, end, sentence }) => ({
        code,
        field: `${heat_kW} kW, ${end}`,
        sentence,
      }));
      await appendDecisions(db, [refusalDecision("held", reasons, today)]);
      console.warn("The new fit is not published, for a week or until a steward says so:", reasons);
    }
    const told = this.refusal?.alarms ?? [];
    await keepRefusal(db, today, JSON.stringify(why));
    this.#refusal = await findRefusal(db);
    this.#tell("held back", why, told);
  }

  #tell(event: AlarmNews["event"], alarms: readonly Alarm[], told: readonly Alarm[]): void {
    const known = new Set(told.map(nameOf));
    const news = alarms.filter((alarm) => !known.has(nameOf(alarm)));
    if (news.length > 0) {
      this.#options.onAlarms?.({ event, fit: this.#version.version, alarms: news });
    }
  }

  /** What is published rests on the newest rows again. */
  async #endRefusal(): Promise<void> {
    const { db, now } = this.#options;
    if (!this.#refusal) return;
    const sentence = `What was held back since ${this.#refusal.since} is published, or has gone.`;
    const today = now().toISOString().slice(0, 10);
    await endRefusal(db);
    this.#refusal = null;
    this.#refused_rows = "";
    const over = [{ code: "published_again", field: "fit", sentence }];
    await appendDecisions(db, [refusalDecision("accepted", over, today)]);
  }

  /**
   * The newest versions that a new one is measured against, oldest first: those by this estimator. While versions are held back
   * by any, for a new estimator must not publish what the old one held back.
   */
  async #history(): Promise<Version[]> {
    const newest = await newestVersions(this.#options.db, LOOKED_BACK);
    const isComparable = this.#refusal ? isReadable : isByThisEstimator;
    return newest.filter(({ fit }) => isComparable(fit)).reverse();
  }
}

/** The log says when versions were held back and published again; it is about no tune. */
const refusalDecision = (
  verdict: "held" | "accepted",
  reasons: readonly Reason[],
  decided_on: string,
): NewDecision => ({ tune: "", by: "fit", verdict, reasons: JSON.stringify(reasons), decided_on });

/** Day and running number, "2026-11-25.3"; greater than the last one even when the clock was set back since. */
function nextVersion(version: string, now: Date): string {
  const today = now.toISOString().slice(0, 10);
  if (version === PRIOR_VERSION.version) return `${today}.1`;
  const [day = "", number] = version.split(".");
  return day < today ? `${today}.1` : `${day}.${Number(number) + 1}`;
}

/** One decision a tune and change. */
function changeOfMind({ tune, end, reason }: Change, now: Date): NewDecision {
  const verdict = reason === null ? "accepted" : "rejected";
  const sentence =
    reason ??
    `Later tunes support the ${end === "low" ? "lowest" : "highest"} power: it counts again.`;
  return {
    tune,
    by: "fit",
    verdict,
    reasons: JSON.stringify([{ code: `${verdict}_by_fit`, field: end, sentence }]),
    decided_on: now.toISOString().slice(0, 10),
  };
}
