import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { AtlasLedger } from "../../../model/fit/atlas-ledger.ts";
import type { FitRow } from "../../../model/fit/row.ts";
import { reasonAside } from "../../../model/fit/standing.ts";
import { crowd, seeded } from "./simulated-crowd.ts";

/** Both ends of two classes; contributors share towns and months, some rows carry a slip. */
const ROWS: FitRow[] = crowd(seeded(21), 60, 0.15).map((row, i) => ({
  ...row,
  row: i,
  cell: `place ${i % 7}`,
  month: `2026-0${1 + (i % 3)}`,
  heat_kW: i % 4 === 0 ? 2 : 5,
  end: i % 3 === 0 ? "high" : "low",
  ln_density_sd: i % 5 === 0 ? 0.03 : 0,
  co_ppm: i % 6 === 0 ? 80 : 12,
}));

type Step = { do: "add" | "revise" | "withdraw"; at: number };
const step = fc.record({
  do: fc.constantFrom<Step["do"]>("add", "revise", "withdraw"),
  at: fc.nat(ROWS.length - 1),
});

/** What a history leaves in the ledger, and what it should have left. */
function live(history: readonly Step[]): { ledger: AtlasLedger; left: FitRow[] } {
  const ledger = new AtlasLedger();
  const there = new Map<number, FitRow>();
  for (const { do: what, at } of history) {
    const row = ROWS[at] as FitRow;
    const known = there.get(at);
    if (known && what !== "add") ledger.drop(known);
    if (what === "withdraw") there.delete(at);
    else if (what === "revise" || !known) {
      const pump_Hz = row.pump_Hz * (known ? 1.07 : 1);
      const now = { ...row, pump_Hz, month: known ? "2026-09" : row.month };
      ledger.put(now);
      there.set(at, now);
    }
  }
  return { ledger, left: [...there.values()] };
}

function rebuilt(rows: readonly FitRow[]): AtlasLedger {
  const ledger = new AtlasLedger();
  ledger.load(rows);
  return ledger;
}

describe("a ledger that followed every change", () => {
  test("gives the same bits as one built from what is left, whatever the history", () => {
    fc.assert(
      fc.property(fc.array(step, { minLength: 1, maxLength: 150 }), (history) => {
        const { ledger, left } = live(history);
        const fresh = rebuilt(left);
        expect(ledger.fit()).toEqual(fresh.fit());
        expect(ledger.surges()).toEqual(fresh.surges());
      }),
      { numRuns: 60, seed: 5 },
    );
  });

  test("counts every row as its sentence says, though it looks only at those near the limits", () => {
    const rows = crowd(seeded(22), 400, 0.1);
    const ledger = rebuilt(rows.slice(0, 300));
    for (const row of rows.slice(300)) {
      ledger.put(row);
      const [group] = ledger.fit([]);
      if (!group) throw new Error("No fit");
      const all = rows.slice(0, group.tunes + group.rejected);
      const aside = all.filter((r) => reasonAside(group, r) !== null);
      expect(group.rejected).toBe(aside.length);
      const kept = all.filter((r) => !aside.includes(r)).map((r) => r.density_kg_m3);
      expect(group.density_range?.[0]).toBeCloseTo(Math.min(...kept), 9);
      expect(group.density_range?.[1]).toBeCloseTo(Math.max(...kept), 9);
    }
  });

  test("says which rows change their standing, once, and when they come back", () => {
    const [first] = crowd(seeded(23), 1) as [FitRow];
    const lean = { ...first, row: "lean", contributor: "lean", cell: "x", pump_Hz: 0.55 };
    const ledger = rebuilt([...crowd(seeded(24), 30), lean]);
    const changes: { row: FitRow; aside: boolean }[] = [];
    ledger.fit(changes);
    expect(changes.filter(({ row }) => row.row === "lean")).toEqual([{ row: lean, aside: true }]);
    changes.length = 0;
    ledger.fit(changes);
    expect(changes).toEqual([]);
    // A thousand crews elsewhere turn out to tune as lean: the outlier was the first of them.
    for (const row of crowd(seeded(25), 1000)) {
      ledger.put({
        ...row,
        row: `l${row.row}`,
        contributor: `l${row.contributor}`,
        pump_Hz: row.pump_Hz * 0.62,
      });
    }
    ledger.fit(changes);
    expect(changes.filter(({ row }) => row.row === "lean")).toEqual([{ row: lean, aside: false }]);
  });

  test("rows set aside by the fit before are known after a restart", () => {
    const rows = crowd(seeded(26), 80, 0.1);
    const before: { row: FitRow; aside: boolean }[] = [];
    rebuilt(rows).fit(before);
    expect(before.length).toBeGreaterThan(3);
    const again = rebuilt(rows);
    const aside = new Set(before.map(({ row }) => row.row));
    again.knownAside((row) => aside.has(row.row));
    const changes: { row: FitRow; aside: boolean }[] = [];
    again.fit(changes);
    expect(changes).toEqual([]);
  });
});
