import { globSync, readFileSync } from "node:fs";
import { parseSync } from "oxc-parser";
import { expect, test } from "vitest";

/**
 * Pump rates and shifts are rounded in one place, model/rounding.ts, and written by the formats of client/units.ts made of it.
 * Here every other rounding of what is called a rate, a pump's Hz, a shift or a percentage is found, by what it is called.
 */

/** What rounds, by the name it is called with; of `format`, units.ts's own. */
const ROUNDS_ARGUMENT = /^(Math\.(round|floor|ceil|trunc)|format|asTyped)$/;
const ROUNDS_OBJECT = /^(toFixed|toPrecision|toLocaleString)$/;

/** Names of what one rule holds for. */
const RATE_OR_SHIFT =
  /(pump|[a-z]_Hz|\bHz\b|\b[hH]z\b|[rR]ates?\b|shift|_pct\b|percent|[mM]ixture)/;
/** A mixture's own figure is set on no controller; how often a band holds is no shift. */
const OTHER =
  /(per_?krpm|observed_pct|held_pct|limit_pct|shares_pct|half_width|rmse_pct|bias_pct)/i;

/** Where a rounding of such a name is something else. */
const NOT_SETTINGS: Record<string, string> = {
  "model/rounding.ts": "the rule",
  "client/units.ts": "the formats made of it",
  "model/fit/": "how the fit counts its rows, and what it says of itself",
  "model/sweep/search.ts": "how many moves it takes",
  "client/on-site/figures.ts": "decimals by the heater's own step, rounded by the rule before",
  "client/on-site/chart-layout.ts": "pixels",
  "client/atlas/bands/poisoning-study.tsx": "how far simulated lies moved an average",
};

interface Node {
  type: string;
  start: number;
  end: number;
  [key: string]: unknown;
}

const isNode = (value: unknown): value is Node =>
  typeof value === "object" && value !== null && typeof (value as Node).type === "string";

function* nodesIn(value: unknown): Generator<Node> {
  if (Array.isArray(value)) for (const one of value) yield* nodesIn(one);
  if (!isNode(value)) return;
  yield value;
  for (const [key, inner] of Object.entries(value)) if (key !== "parent") yield* nodesIn(inner);
}

/** Roundings of rates or shifts in a source, as they are written. */
function roundingsIn(file: string, source: string): string[] {
  const { program, errors } = parseSync(file, source);
  if (errors.length > 0) throw new Error(`${file} does not parse: ${errors[0]?.message}`);
  const text = (node: Node) => source.slice(node.start, node.end);
  const found: string[] = [];
  for (const node of nodesIn(program)) {
    if (node.type !== "CallExpression") continue;
    const callee = node.callee as Node;
    const [first] = node.arguments as Node[];
    const property = callee.type === "MemberExpression" ? text(callee.property as Node) : "";
    const rounded =
      ROUNDS_ARGUMENT.test(text(callee)) && first
        ? text(first)
        : ROUNDS_OBJECT.test(property)
          ? text(callee.object as Node)
          : "";
    if (RATE_OR_SHIFT.test(rounded) && !OTHER.test(rounded)) found.push(text(node));
  }
  return found;
}

test("a rounding of a rate or a shift is found wherever it stands, and one of something else is not", () => {
  const found = (source: string) => roundingsIn("some.tsx", source).length > 0;
  for (const source of [
    "format(tune.low.pump_Hz, 1)",
    "const hz = (rate: number) => String(Number(rate.toFixed(2)));",
    "const whole = Math.round(Math.abs(shift_pct));",
    "const first = Math.ceil(lean_Hz / step_Hz - 1e-6);",
    "<strong>{format(worst_pct, 1)} %</strong>",
    "Math.round(pump_Hz / PUMP_STEP_Hz) * PUMP_STEP_Hz",
    "format(Math.ceil(below_pct))",
    "asTyped(start.high.pump_Hz, 1)",
    "pump_Hz_exact.toLocaleString()",
  ]) {
    expect(found(source), source).toBe(true);
  }
  for (const source of [
    "format(elevation_m)",
    "formatRate(tune.low.pump_Hz)",
    "formatPercent(shift_pct)",
    "format(point.pump_Hz_per_krpm, 3)",
    "Math.floor(index / 2)",
    "density.toFixed(4)",
  ]) {
    expect(found(source), source).toBe(false);
  }
});

test("rates in a table's column have one number of decimals", () => {
  // Rates that can be set, all on one step; and the card's table, written for one step too.
  const onOneStep = ["client/start/ways.tsx", "client/card/rate-table.tsx"];
  const tables = globSync("client/**/*.tsx").filter((file) =>
    /FiguresTable|<table/.test(readFileSync(file, "utf8")),
  );
  expect(tables.length).toBeGreaterThan(8);
  const each = tables.filter((file) => /formatRate\(/.test(readFileSync(file, "utf8")));
  expect(each.toSorted()).toEqual(onOneStep.toSorted());
});

test("nothing but the rule rounds a pump rate, a shift or its percentage", () => {
  const files = globSync("{model,client,server,db}/**/*.{ts,tsx}").filter(
    (file) => !Object.keys(NOT_SETTINGS).some((exempt) => file.startsWith(exempt)),
  );
  expect(files.length).toBeGreaterThan(200);
  const found = files.flatMap((file) =>
    roundingsIn(file, readFileSync(file, "utf8")).map((text) => `${file}: ${text}`),
  );
  expect(found).toEqual([]);
});
