import { sql } from "drizzle-orm";
import { index, integer, real, sqliteTable, text } from "drizzle-orm/sqlite-core";
import { FOUND } from "../model/fit/row.ts";

/** One tune. Never finer than it must be: cell not position, month not date, keyed hashes not keys. */
export const tunes = sqliteTable(
  "tunes",
  {
    id: text().primaryKey(),
    /** SHA-256 of the receipt, hex. */
    receipt_sha256: text().notNull(),
    /** Keyed hash of the contributor's key, hex. */
    contributor: text().notNull(),
    /**
     * What the open data call its contributor: random, made with the first of their tunes and gone with the last, so that it
     * joins tunes that are there together and nobody who comes again.
     */
    pseudonym: text().notNull().default(""),
    /**
     * Where its contributor is at home, for the fit: a keyed hash of place and month of the first of their tunes with a place.
     * Owners with the same one share votes.
     */
    home: text(),
    /** Whether its contributor has tuned in several cells: then it is shown in none but a wide one, with its year. It stays so. */
    several_places: integer({ mode: "boolean" }).notNull().default(false),
    /** The tune as sent, JSON, without the contributor's key and with the position already a cell's centre. */
    sent: text().notNull(),
    heat_kW: real().notNull(),
    dose_uL: real(),
    supply_V: real(),
    /** To 10 m. */
    elevation_m: real().notNull(),
    /** Standard deviation of an elevation worked out from a position, up to the next 10 m; null where it was known. */
    elevation_sd_m: real(),
    /** H3 cell of resolution 5, and its parent of resolution 3, the place. */
    cell: text(),
    place: text(),
    /** Whole °C, hPa and %. */
    temperature_C: real(),
    pressure_hPa: real(),
    qnh_hPa: real(),
    humidity_pct: real(),
    /** Density the fit uses, to 0.01, for a finer one would tell the elevation; and which of temperature, pressure, humidity it assumes (comma separated). */
    density_kg_m3: real().notNull(),
    density_assumed: text().notNull(),
    /** Standard deviation of its logarithm, to 0.001, for what it assumes and for an uncertain elevation. */
    ln_density_sd: real().notNull().default(0),
    low_pump_Hz: real().notNull(),
    low_fan_rpm: real().notNull(),
    low_co_ppm: real(),
    low_co_below_ppm: real(),
    low_power: real(),
    high_pump_Hz: real().notNull(),
    high_fan_rpm: real().notNull(),
    high_co_ppm: real(),
    high_co_below_ppm: real(),
    high_power: real(),
    /** How its owner found it: "bracketed", "stopped early" or "as suggested"; null where unknown. */
    found: text({ enum: FOUND }),
    /** Version of the fit that it was judged beside when it was sent. It tells the day to whoever holds the file; no answer has it. */
    judged_version: text(),
    /** What the atlas answered then for this heater in this air: the rate to set, Hz per 1,000 rpm of its fan. */
    low_suggested_Hz_per_krpm: real(),
    high_suggested_Hz_per_krpm: real(),
    meter_kind: text(),
    meter_distance_m: real(),
    /** Months, "YYYY-MM". */
    tuned_on: text(),
    submitted_on: text().notNull(),
    /** Removed by a steward: only its owner sees it. */
    verdict: text({ enum: ["accepted", "held", "removed"] }).notNull(),
    /** Keyed hash of the name of the import that it came with; null of what somebody sent. */
    imported: text(),
  },
  (t) => [
    // With the id, by which tunes of one density are in order: there are thousands of some.
    index("tunes_by_class").on(t.heat_kW, t.verdict, t.density_kg_m3, t.id),
    index("tunes_of_class").on(t.heat_kW, t.id),
    index("tunes_by_place").on(t.place, t.cell),
    index("tunes_by_contributor").on(t.contributor, t.verdict),
    index("tunes_by_judged_version").on(t.judged_version),
    // Few of all: so a steward's queue is read without passing over the others.
    index("tunes_held").on(t.id).where(sql`verdict = 'held'`),
    index("tunes_imported").on(t.imported).where(sql`imported is not null`),
  ],
);

/**
 * New contributors whose tunes do not count yet. Who comes to count leaves the table, and with it the day: it is kept
 * no longer than somebody waits.
 */
export const waiting = sqliteTable(
  "waiting",
  {
    /** Keyed hash of the contributor's key, hex. */
    contributor: text().primaryKey(),
    /** Day of the first tune, "YYYY-MM-DD". */
    since: text().notNull(),
    /** Whether too many others came at the same time: from the same network, or in a surge. */
    crowded: integer({ mode: "boolean" }).notNull(),
  },
  (t) => [index("waiting_in_turn").on(t.crowded, t.since, t.contributor)],
);

/** Heater sizes whose tunes do not count yet, for too few owners of them do. */
export const waitingSizes = sqliteTable("waiting_sizes", { heat_kW: real().primaryKey() });

/** Who or what decided on a tune, and why: append-only while the tune exists. */
export const decisions = sqliteTable(
  "decisions",
  {
    id: integer().primaryKey({ autoIncrement: true }),
    tune: text().notNull(),
    /** "screening", "fit", "steward" or "contributor". */
    by: text().notNull(),
    verdict: text({ enum: ["accepted", "held", "removed", "rejected", "withdrawn"] }).notNull(),
    /** JSON list of reasons. */
    reasons: text().notNull(),
    /** Month of a decision on a tune, "YYYY-MM"; day of what is about none, "YYYY-MM-DD", which counting those who wait goes by. */
    decided_on: text().notNull(),
  },
  (t) => [index("decisions_by_tune").on(t.tune)],
);

/** Published versions of the fit. Never changed once written; older ones are thinned out. */
export const fits = sqliteTable("fits", {
  /** Running number: the newest is the published one. */
  number: integer().primaryKey({ autoIncrement: true }),
  version: text().notNull().unique(),
  rows_sha256: text().notNull(),
  /** The published fit, JSON. */
  fit: text().notNull(),
  /** Whether it was refused at first: what it moved is known, and later versions are held against it. */
  let_through: integer({ mode: "boolean" }).notNull().default(false),
});

/** Of a version that was thinned out, what reproduces the judgement of tunes that were judged beside it. */
export const judgedBeside = sqliteTable("judged_beside", {
  version: text().primaryKey(),
  /** Its groups of those tunes' heater sizes, JSON. */
  groups: text().notNull(),
});

/** One row while newer versions are not published, and none otherwise. */
export const refusedFits = sqliteTable("refused_fits", {
  /** Always 1. */
  number: integer().primaryKey(),
  /** Day of the first version refused since the published one, "YYYY-MM-DD". */
  since: text().notNull(),
  /** The newest refused version's alarms, JSON. */
  alarms: text().notNull(),
  /** Whether a steward lets the next version through. */
  allowed: integer({ mode: "boolean" }).notNull(),
  /** Day on which a steward last said to hold them back, "YYYY-MM-DD"; null when nobody did. */
  kept_back_on: text(),
});

/**
 * What an Idempotency-Key was used for: keyed hash of key and contributor, hash of the body, and the answer. Of a withdrawn
 * tune the key's hash alone stays, so that what waits in a browser is not shared again.
 */
export const idempotencyKeys = sqliteTable(
  "idempotency_keys",
  {
    key: text().primaryKey(),
    body_sha256: text().notNull(),
    tune: text().notNull(),
    /** The answer without its receipt, JSON; the receipt follows from the key again. Empty after a month or two: then it is made anew. */
    answer: text().notNull(),
  },
  // A withdrawal looks for its tune's key.
  (t) => [index("idempotency_keys_by_tune").on(t.tune)],
);

/** What the atlas knows of itself. */
export const facts = sqliteTable("facts", {
  name: text().primaryKey(),
  value: text().notNull(),
});
