import type { Advice } from "../model/advice.ts";
import type { Air } from "../model/air.ts";
import type { Compared } from "../model/compare.ts";
import type { End } from "../model/end.ts";
import type { PublishedFit } from "../model/fit/group.ts";
import type { ListedPlace } from "../model/geography/listed-place.ts";
import type { Match } from "../model/geography/names.ts";
import type { Safety } from "../model/safety.ts";
import type { ScalingCurvePoint } from "../model/scaling-curve.ts";
import type { Reason, Verdict } from "../model/screen.ts";
import type { StewardVerdict } from "../model/steward-reasons.ts";
import type { Tune } from "../model/tune.ts";
import type { TwoFits } from "../model/two-fits.ts";
import type { Challenge } from "./proof-schema.ts";

export type { Advice } from "../model/advice.ts";
export type { ListedPlace as Place } from "../model/geography/listed-place.ts";
export type { ScalingCurvePoint } from "../model/scaling-curve.ts";
export type { Reason, Verdict } from "../model/screen.ts";

/**
 * What the API answers, as types: the client imports these and nothing else of the server.
 * The schemas behind the API's description are checked against them.
 */

/** Answer to POST and PUT of a tune. */
export interface Submitted {
  id: string;
  /** Shown once; absent when a tune is revised. */
  receipt?: string;
  verdict: Verdict;
  reasons: Reason[];
  /** A new contributor's tunes wait: the day from which they are expected to count if accepted. Null: at once. */
  counts_from: string | null;
  /** What the owner should know of the heater, whatever the verdict; empty as a rule. */
  advice: Advice[];
  air: Air;
  /** Beside the published fit, one entry an end. */
  compared: Compared[];
  accepted_means: string;
  safety: Safety;
}

/** One decision on a tune: append-only. */
export interface Decision {
  /** Month of a decision on a tune, day of what is about none. */
  decided_on: string;
  /** "screening", "fit", "waiting" (days that passed) or "steward". */
  by: string;
  verdict: Verdict | "removed" | "rejected" | "withdrawn";
  reasons: Reason[];
}

/** Answer to GET of a tune with its receipt: as kept, and what became of it. */
export interface KeptTune {
  id: string;
  tune: Omit<Tune, "contributor">;
  cell: string | null;
  /** Removed by a steward: nobody else sees it; revised, it is looked at again. */
  verdict: StewardVerdict;
  reasons: Reason[];
  /** As when it was submitted, by what is known now. */
  counts_from: string | null;
  /** What the newest published fit makes of each end. */
  fit: {
    version: string;
    low: "kept" | "rejected" | "not in it";
    high: "kept" | "rejected" | "not in it";
  };
  advice: Advice[];
  air: Air;
  compared: Compared[];
  accepted_means: string;
  decisions: Decision[];
  safety: Safety;
}

/** One decision as the audit trail records it. */
export interface RecordedDecision extends Decision {
  /** Running number: later decisions have higher ones. */
  number: number;
  /** Null where it is about no tune, or about one that was withdrawn: the trail keeps that, not which. */
  tune: string | null;
}

/** A tune as the steward sees it: no receipt, and of its contributor the pseudonym alone. */
export interface StewardsTune {
  id: string;
  contributor: string;
  /** Whether its contributor is new and waits: then it does not count yet whatever is decided. */
  waits: boolean;
  /** Month. */
  submitted_on: string;
  tune: Omit<Tune, "contributor">;
  cell: string | null;
  verdict: StewardVerdict;
  /** Why: of the decision in force. */
  reasons: Reason[];
  air: Air;
  compared: Compared[];
  /** Oldest first. */
  decisions: RecordedDecision[];
}

/** A page of held tunes, oldest first. */
export interface HeldTunes {
  /** How many there are in all of those asked about. */
  held: number;
  tunes: StewardsTune[];
  /** To ask for the next page with, as `after`; null on the last one. */
  next: number | null;
  accepted_means: string;
  safety: Safety;
}

/** Tunes asked for by their ids or their contributor, at most a hundred. */
export interface StewardsTunes {
  tunes: StewardsTune[];
  accepted_means: string;
  safety: Safety;
}

/** A page of the audit trail, newest first. */
export interface AuditTrail {
  decisions: RecordedDecision[];
  next: number | null;
}

/** Answer to what a steward decides, or takes back. */
export interface Decided {
  /** The decisions made by it, one a tune; their numbers take them back. */
  decisions: RecordedDecision[];
  /** Ids of tunes that were asked for and are not there: withdrawn, as a rule. */
  gone: string[];
  accepted_means: string;
  safety: Safety;
}

/** Tunes of one place, month and heater size that agree more than heaters do, most of them of new contributors. */
export interface StewardsCluster {
  /** H3 cell of resolution 3; null where they have no place. */
  place: string | null;
  month: string;
  heat_kW: number;
  /** Against the average heater in their air, %: plus is richer. */
  shift_pct: Record<End, number>;
  contributors: number;
  new_contributors: number;
  /** How many were set as the atlas suggested: those agree for that reason. */
  as_suggested: number;
  /** At most the probability that chance makes such a cluster here. */
  chance: number;
  /** Ids. */
  tunes: string[];
}

export interface ClustersAnswer {
  /** The least probable first. */
  clusters: StewardsCluster[];
  /** So many of the newest tunes were looked at. */
  looked_at: number;
}

/** What the fit would be without some tunes, beside the published one. */
export interface WithoutAnswer {
  /** The published version. */
  fit: string;
  /** How many of the tunes are in the fit at all. */
  left_out: number;
  /** Tunes that are left. */
  tunes: number;
  /** For the sizes of the tunes left out. */
  compared: TwoFits[];
}

/** New contributors who wait with an accepted tune, in the order in which they come to count. */
export interface WaitingAnswer {
  waiting: {
    /** Pseudonym. */
    contributor: string;
    /** Day of the first tune. */
    since: string;
    /** Whether too many others came at the same time. */
    crowded: boolean;
  }[];
}

/** A contributor whom a steward lets count, and how many tunes that is. */
export interface Counted {
  contributor: string;
  tunes: number;
}

/** Something about the published fit that a steward should look into. */
export interface Alarm {
  code: string;
  heat_kW: number;
  end: End;
  sentence: string;
  value: number;
  threshold: number;
}

export interface AlarmsAnswer {
  /** Version of the fit that they are about. */
  fit: string;
  alarms: Alarm[];
  /** Why newer versions are not published, and since which day; null when they are. */
  refused: {
    since: string;
    alarms: Alarm[];
    /** Day on which a steward last said to hold them back; null when nobody did. */
    kept_back_on: string | null;
    /** Whether a steward has let the next version through, which is not made yet. */
    let_through: boolean;
  } | null;
}

/** Answer to a steward who lets the next version through, which comes as soon as it is made, or holds it back for another week. */
export interface Publication {
  /** The version published until then. */
  fit: string;
}

/** A place with how its name matches; "nearly": it is called otherwise than was asked. */
export type FoundPlace = ListedPlace & { match: Match };

export interface PlacesAnswer {
  places: FoundPlace[];
  credit: string;
}

export interface ElevationAnswer {
  lat: number;
  lon: number;
  elevation_m: number;
  sd_m: number;
  uncertainty_68_m: number;
  uncertainty_95_m: number;
  source: string;
  nearest: { name: string | null; distance_m: number } | null;
  credit: string;
}

export interface ScalingPoint {
  /** Pseudonym: joins one contributor's tunes at several elevations. */
  contributor: string;
  elevation_m: number;
  density_kg_m3: number;
  pump_Hz: number;
  fan_rpm: number;
  pump_Hz_per_krpm: number;
  status: "kept" | "rejected" | "held";
  /** Why it was rejected or held, as a sentence. */
  reason: string | null;
  /** The same for a page of another language. */
  aside: AsideReason | null;
}

/** Why a tune does not count: a stable short name, and the figures that a sentence of it needs. */
export interface AsideReason {
  code: string;
  figures: Record<string, number>;
}

export interface ScalingAnswer {
  heat_kW: number;
  end: End;
  fit: string;
  prior_only: boolean;
  demo: boolean;
  points: ScalingPoint[];
  /** How many points there are in all; `points` holds at most 2,000, an even sample said to be so. */
  points_total: number;
  curve: ScalingCurvePoint[];
  safety: Safety;
}

export interface Cell {
  /** H3 cell, resolution 3 to 5: coarser where fewer than 5 contributors would show. 2 for those who tuned in several. */
  cell: string;
  lat: number;
  lon: number;
  tunes: number;
  contributors: number;
  /** Mean elevation of its tunes, to 100 m. */
  elevation_m: number;
  /** Median mixture shift of its tunes against the fit, %, by end. */
  mixture_shift_pct: { low: number; high: number };
}

export interface CellsAnswer {
  parent: string;
  cells: Cell[];
  demo: boolean;
  safety: Safety;
}

/** One end of an accepted tune as it was set. */
export interface SetEnd {
  pump_Hz: number;
  fan_rpm: number;
  /** Lowest steady reading, ppm; null where the meter showed nothing or none was given. */
  co_ppm: number | null;
  /** The meter's floor where it showed nothing, ppm. */
  co_below_ppm: number | null;
}

/** An accepted tune as its cell shows it: no finer in place and time than the open data, and of nobody. */
export interface CellTune {
  heat_kW: number;
  elevation_m: number;
  /** Null where it was not given. */
  temperature_C: number | null;
  density_kg_m3: number;
  /** Month of the tune, or of its submission where that was not given. */
  month: string;
  low: SetEnd;
  high: SetEnd;
}

/** An accepted tune in air like that asked about. */
export interface NearTune extends CellTune {
  id: string;
  /** The cell it is shown in; null without a place. */
  cell: string | null;
  /** Its pump rates against the average heater's in its air, of its dose where stated: plus is richer. */
  against_average_pct: Record<End, number>;
}

/** The tunes nearest in air; where a place was asked about, it orders those in like air. Those the fit sets aside are left out. */
export interface NearAnswer {
  heat_kW: number;
  /** Of the air asked about. */
  density_kg_m3: number;
  fit: string;
  /** Nearest first. */
  tunes: NearTune[];
  demo: boolean;
  safety: Safety;
}

/** The tunes of one shown cell. */
export interface CellTunesAnswer {
  cell: string;
  /** How many there are in all; `tunes` holds the newest of them. */
  tunes_total: number;
  /** Over all of them, m. */
  elevation_range_m: [lowest: number, highest: number];
  month_range: [oldest: string, newest: string];
  /** Newest month first. */
  tunes: CellTune[];
  demo: boolean;
  safety: Safety;
}

/** The newest revision of the open data as files that never change, and which others are kept. */
export interface DataAnswer {
  /** Follows from what the files hold. */
  revision: string;
  /** Revisions before it whose files are still there. */
  before: string[];
  /** The version of the fit published at the moment. */
  fit: string;
  files: {
    name: string;
    address: string;
    media_type: string;
    size_bytes: number;
    sha256: string;
  }[];
  /** Where it says what the columns mean. */
  dictionary: string;
  licence: { name: string; url: string };
  citation: string;
  demo: boolean;
  safety: Safety;
}

/** One version of the fit among those kept, and what it changed. */
export interface ListedFit {
  version: string;
  published_at: string | null;
  /** Version of the code and of the estimator that made it. */
  code: string;
  estimator: string;
  /** Tunes that count, by the end at which fewer do, and how many more than in the version before it. */
  tunes: number;
  tunes_more: number | null;
  /** Where the average tune at sea level moved most against the version before, %; plus is richer. Null where nothing compares. */
  most_moved: { heat_kW: number; end: End; change_pct: number } | null;
  alarms: string[];
}

export interface FitsAnswer {
  /** Newest first. */
  fits: ListedFit[];
}

/** The published fit as the API answers it, with the cautions. */
export type FitAnswer = PublishedFit & { safety: Safety };

export interface Health {
  ok: boolean;
  demo: boolean;
  tunes: number;
  fit: string;
  fit_age_s: number | null;
  /** Whether a refresh of the fit is on its way. */
  fit_pending: boolean;
  /** Whether an alarm keeps newer versions from being published. */
  frozen: boolean;
  /** Whether place search and elevations are there. */
  geography: boolean;
}

/** That new tunes are taken at this moment; what keeps them out is a 503. */
export interface Ready {
  ready: true;
}

/** RFC 9457. */
export interface Problem {
  type: string;
  title: string;
  status: number;
  detail?: string;
  errors?: { field: string; code: string; message: string }[] | undefined;
  /** In a flood: what lets the tune in. */
  challenge?: Challenge | undefined;
}

/** Map sources set by the configuration; null for the built-in ones. */
export interface MapConfiguration {
  basemap_style: string | null;
  elevation_tiles: string | null;
}
