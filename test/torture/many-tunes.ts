import { latLngToCell } from "h3-js";
import type { Database } from "../../db/database.ts";
import { onTune } from "../../db/decisions.ts";
import { decisions, tunes } from "../../db/schema.ts";
import type { TuneRow } from "../../db/tunes.ts";
import { seeded } from "../../seed-demo/random.ts";
import { placeOf } from "../../server/cells.ts";

/** Rows of one statement: SQLite takes 32,766 parameters. */
const ROWS_AT_ONCE = 500;
/** Tunes of one owner at most. */
const TUNES_OF_ONE = 10;
const SIZES_kW = [2, 5, 5, 8];
/** Places where people tune. */
const PLACES = 4000;
const SLIPS = 0.02;

/**
 * Puts so many accepted tunes into a database, in the likeness of one: owners of one heater and one to ten tunes each, most at one
 * place, under random names; a few tunes are slips.
 */
export async function putTunes(db: Database, like: TuneRow, count: number): Promise<void> {
  const { uniform, normal } = seeded(7);
  const anyOf = <T>(list: readonly T[]) => list[Math.floor(list.length * uniform())] as T;
  const name = (letters: number) =>
    Array.from({ length: letters / 8 }, () =>
      Math.floor(2 ** 32 * uniform())
        .toString(16)
        .padStart(8, "0"),
    ).join("");
  const places = Array.from({ length: PLACES }, () =>
    latLngToCell(-50 + 110 * uniform(), -170 + 340 * uniform(), 5),
  );
  const someone = () => {
    const home = anyOf(places);
    return {
      left: 1 + Math.floor(TUNES_OF_ONE * uniform()),
      travels: uniform() < 0.3,
      home,
      times: Math.exp(0.08 * normal()),
      of: {
        contributor: name(64),
        pseudonym: name(16),
        home: `${placeOf(home)}|${Math.floor(12 * uniform())}`,
        heat_kW: anyOf(SIZES_kW),
      },
    };
  };
  let owner = someone();
  const one = (): TuneRow => {
    if (owner.left === 0) owner = someone();
    owner.left--;
    const cell = owner.travels ? anyOf(places) : owner.home;
    const elevation_m = 10 * Math.floor(400 * uniform());
    const density_kg_m3 = Number(
      (1.29 * Math.exp(-elevation_m / 9500 + 0.03 * normal())).toFixed(2),
    );
    const slip = uniform() < SLIPS ? 2 : 1;
    const ratio = (density_kg_m3 / like.density_kg_m3) ** 0.92;
    const set = (pump_Hz: number) =>
      Number((slip * owner.times * ratio * pump_Hz * Math.exp(0.03 * normal())).toFixed(2));
    return {
      ...like,
      ...owner.of,
      id: name(24),
      receipt_sha256: name(64),
      ...{ cell, place: placeOf(cell), several_places: owner.travels },
      ...{ elevation_m, density_kg_m3 },
      low_pump_Hz: set(like.low_pump_Hz),
      high_pump_Hz: set(like.high_pump_Hz),
      found: "bracketed",
    };
  };
  for (let from = 0; from < count; from += ROWS_AT_ONCE) {
    const rows = Array.from({ length: Math.min(ROWS_AT_ONCE, count - from) }, one);
    const screened = rows.map(({ id: tune }) =>
      onTune({
        ...{ tune, by: "screening", reasons: "[]" },
        ...{ verdict: "accepted" as const, decided_on: "2026-11-25" },
      }),
    );
    await db.batch([db.insert(tunes).values(rows), db.insert(decisions).values(screened)]);
  }
}
