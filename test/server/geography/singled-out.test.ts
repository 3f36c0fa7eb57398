import { readFileSync } from "node:fs";
import { latLngToCell } from "h3-js";
import { expect, test } from "vitest";
import { KEPT_RESOLUTION, PLACE_RESOLUTION, WIDE_RESOLUTION } from "../../../server/cells.ts";
import { readSettlements } from "../../../server/geography/settlements.ts";

test("how many high settlements cell and elevation single out is what docs/privacy.md says", async () => {
  const high = (await readSettlements()).filter((s) => !s.pass && (s.elevation_m ?? 0) > 3000);
  const alone_pct = (resolution: number, step_m: number) => {
    const together = Map.groupBy(
      high,
      ({ lat, lon, elevation_m }) =>
        `${latLngToCell(lat, lon, resolution)} ${Math.round((elevation_m as number) / step_m)}`,
    );
    const alone = [...together.values()].filter(({ length }) => length === 1).length;
    return Math.round((100 * alone) / high.length);
  };
  const shown = [KEPT_RESOLUTION, PLACE_RESOLUTION, WIDE_RESOLUTION].map((r) => alone_pct(r, 100));
  const said = readFileSync("docs/privacy.md", "utf8").replaceAll("\n", " ");
  const [, count, ...figures] =
    /Of (\d,\d+) settlements above 3,000 m (\d+) % .*?(\d+) % .*?(\d+) % .*?(\d+) %/.exec(said) ??
    [];
  expect(count?.replace(",", "")).toBe(String(high.length));
  expect(figures.map(Number)).toEqual([...shown, alone_pct(KEPT_RESOLUTION, 10)]);
});
