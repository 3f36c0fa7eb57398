/**
 * What the simulation study found, as `npm run study` writes it and the page draws it. Simulated data alone:
 * the truth is known, so errors and coverages are against it.
 */
export interface StudyReport {
  /** Version of the code that was studied, and hash of all files of the model. */
  code: string;
  model_sha256: string;
  size: "quick" | "full";
  seed: number;
  /** The air that errors and bands are looked at: a cold night by the sea first, then the standard atmosphere. */
  airs: StudyAir[];
  levels: number[];
  scenarios: StudyScenario[];
  /** How often the bands of heaters with own tunes held, by generator and number of own tunes. */
  own_heaters: StudyOwnHeaters[];
  /** How often alarms go off, by generator, in honest crowds and while somebody lies patiently. */
  alarms: StudyAlarms[];
  /** What single parts of the model are worth. */
  ablation: StudyAblation[];
  /** How far answers move when a chosen number is another. */
  sensitivity: StudySensitivity[];
  /** Kinds of mistakes that were simulated at several shares. */
  breakdown?: StudyBreakdown[];
}

/** A chosen number, at 3,000 m: how far the average moves, and by how much 95 % bands change, %. */
export interface StudySensitivity {
  name: string;
  scenario: string;
  runs: number;
  average_pct: number;
  mean_width_pct: number;
  new_width_pct: number;
}

/** A part of the model, at 3,000 m: error of the average, and how often 95 % bands held and their half-width, %. */
export interface StudyAblation {
  part: string;
  scenario: string;
  runs: number;
  with_it: StudyAblationFigures;
  without_it: StudyAblationFigures;
}

export interface StudyAblationFigures {
  rmse_pct: number;
  mean_95_held_pct: number;
  new_95_held_pct: number;
  new_95_half_pct: number;
}

/** Alarms over versions of one owner more each; shares in % of the versions, and of the crowds. */
export interface StudyAlarms {
  generator: "first" | "trade";
  /** Whether each new owner was one liar's new key, or another honest owner. */
  liar: boolean;
  fits: number;
  with_alarm_pct: number;
  by_code_pct: Record<string, number>;
  crowds_with_alarm_pct: number;
}

export interface StudyAir {
  label: string;
  density_kg_m3: number;
}

/** One way that data can come in, and how each estimator fares. */
export interface StudyScenario {
  id: string;
  title: string;
  /** What family of question it belongs to. */
  family: "clean" | "slips" | "lazy" | "flood" | "fakes" | "spread" | "air" | "pooling" | "trade";
  /** "fixed": every run has the same truth. "drawn": each run's truth is drawn from what the prior says. */
  truth: "fixed" | "drawn";
  contributors: number;
  runs: number;
  results: StudyResult[];
}

/** Figures of one estimator; lists are in the order of `airs`. */
export interface StudyResult {
  estimator: string;
  /** Root-mean-square error and mean error of the average tune, %. */
  rmse_pct: number[];
  bias_pct: number[];
  /** Share of truths inside the mean band, and of further heaters inside the new-heater band, %: by level, then air. */
  mean_coverage_pct: number[][];
  new_coverage_pct: number[][];
  /** Median half-width of the bands, %: by level, then air. */
  mean_width_pct: number[][];
  new_width_pct: number[][];
  /** Share of honest rows set aside, and of wrong rows set aside, %; null when there are none or nothing is set aside. */
  false_rejection_pct: number | null;
  caught_pct: number | null;
}

/** Up to which share of one kind of mistake each estimator holds. */
export interface StudyBreakdown {
  /** What the ids of its scenarios begin with. */
  kind: string;
  shares_pct: number[];
  /** An estimator holds while its root-mean-square error in this air is below the limit, at smaller shares too. */
  limit_pct: number;
  air: string;
  /** The largest such share; 0 when it does not hold even at the smallest. */
  holds_to_pct: { estimator: string; share_pct: number }[];
}

/** Heaters with own tunes in a clean crowd of 200: coverage and half-widths, %, by air (0, 3,000, 4,500 m). */
export interface StudyOwnHeaters {
  generator: "first" | "trade";
  own_tunes: number;
  /** One of the own tunes is twice what it should be. */
  one_doubled: boolean;
  heaters: number;
  next_80_held_pct: number[];
  next_95_held_pct: number[];
  next_95_half_pct: number[];
  best_80_held_pct: number[];
  best_95_held_pct: number[];
  best_95_half_pct: number[];
}
