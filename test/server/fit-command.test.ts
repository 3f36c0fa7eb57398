import { spawnSync } from "node:child_process";
import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { goodTune, openTestAtlas, post } from "./atlas.ts";

const folder = mkdtempSync(join(tmpdir(), "hypsotune-fit-"));

function runFit(text: string, ...args: string[]) {
  const file = join(folder, "rows.csv");
  writeFileSync(file, text);
  return spawnSync("node_modules/.bin/node", ["server/fit-command.ts", file, ...args], {
    encoding: "utf8",
  });
}

test("the export gives the published coefficients to the last digit", async () => {
  const atlas = await openTestAtlas();
  for (let n = 0; n < 25; n++) await post(atlas.app, goodTune(n));
  await atlas.fit.refresh();
  const { groups } = await atlas.fit.current();
  const csv = await (await atlas.app.request("/api/tunes.csv")).text();
  const { stdout, status } = runFit(csv, "--json");
  expect(status).toBe(0);
  const own = JSON.parse(stdout).groups;
  expect(own.length).toBe(2);
  for (const [i, group] of groups.entries()) {
    for (const field of [
      "intercept",
      "slope",
      "covariance",
      "spread",
      "contributors",
      "tunes",
    ] as const) {
      expect(own[i][field]).toEqual(group[field]);
    }
  }
  await atlas.close();
});

test("a row that cannot be a number is set aside with its row and column", () => {
  const { stdout } = runFit(
    "contributor,heat_kW,end,density_kg_m3,pump_Hz,fan_rpm\na,5,low,1.1,1.0,1650\nb,5,low,1.1,-2,1650\n",
    "--json",
  );
  const [group] = JSON.parse(stdout).groups;
  expect(group.rejected).toEqual([
    { row: 2, reason: 'pump_Hz must be a positive number, not "-2".' },
  ]);
  expect(group.at.map((a: { density_kg_m3: number }) => a.density_kg_m3)).toEqual([0.8, 1, 1.225]);
  expect(group.at[0].new_heater_bands.map((b: { level: number }) => b.level)).toEqual([
    0.5, 0.8, 0.9, 0.95, 0.99,
  ]);
});

test("missing columns, files and bad options are said on standard error, nothing on standard output", () => {
  for (const [text, args, word] of [
    ["contributor,heat_kW\na,5\n", [], "density_kg_m3"],
    ["a,b\n1,2\n", ["--end", "middle"], "--end"],
    ["a,b\n1,2\n", ["--at", "0"], "--at"],
    ["a,b\n1,2\n", ["--wat"], "Usage"],
  ] as const) {
    const { stdout, stderr, status } = runFit(text, ...args);
    expect([status, stdout]).toEqual([2, ""]);
    expect(stderr).toContain(word);
  }
});
