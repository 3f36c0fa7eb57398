import { describe, expect, test } from "vitest";
import { freshAtlas, ownTune } from "./fresh-atlas.ts";

const atlas = freshAtlas();
const { ask, get } = atlas;

describe("a heater with tunes of its own", () => {
  test("the answer to the question stays, what its own tunes say is added, nothing is kept", async () => {
    const asked = await (await get("/api/start?heat_kW=5&elevation_m=2240")).json();
    const response = await ask([ownTune(1), ownTune(2)]);
    expect(response.status).toBe(200);
    expect(response.headers.get("Cache-Control")).toBe("no-store");
    const { own_heater, ...start } = await response.json();
    expect(start).toEqual(asked);
    expect(own_heater.tunes).toBe(2);
    expect((await (await get("/api/health")).json()).tunes).toBe(0);
  });

  test("what is wrong with it is said of every field at once, with the remedy", async () => {
    const bad = { ...ownTune(), low: { pump_Hz: "1.1", fan_rpm: 1650, co_ppm: 10 } };
    const response = await ask([ownTune(), bad], { heat_kW: 5.2, temperature_C: -5, speed: 1 });
    expect(response.status).toBe(422);
    const { errors } = await response.json();
    expect(errors.map(({ field }: { field: string }) => field).sort()).toEqual(
      ["heat_kW", "own_tunes.1.low.pump_Hz", "speed"].sort(),
    );
  });

  test.each([
    ["none", [], "own_tunes"],
    ["eleven", Array.from({ length: 11 }, (_, n) => ownTune(n)), "own_tunes"],
    ["no list", "mine", "own_tunes"],
    ["the same twice", [ownTune(), ownTune()], "own_tunes.1"],
  ])("own tunes, %s: 422", async (_, own_tunes, field) => {
    const response = await ask(own_tunes);
    expect(response.status).toBe(422);
    const { errors } = await response.json();
    expect(errors[0].field).toBe(field);
  });

  test("no elevation and no place is 422 too", async () => {
    expect((await ask([ownTune()], { heat_kW: 5 })).status).toBe(422);
  });
});
