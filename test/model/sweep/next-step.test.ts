import { expect, test } from "vitest";
import { startTune } from "../../../model/start.ts";
import { foundBy, foundTogether, type SweepAnswer } from "../../../model/sweep/answer.ts";
import type { SweepReading, SweepSetup } from "../../../model/sweep/setup.ts";
import { nextStep } from "../../../model/sweep/sweep.ts";
import { inventedFit } from "../invented-fit.ts";

const bands = (centre: number, ln_sd = 0.1) =>
  [1.2816, 1.96, 2.5758].map((z, i) => ({
    level: [0.8, 0.95, 0.99][i] as number,
    lower: centre * Math.exp(-z * ln_sd),
    upper: centre * Math.exp(z * ln_sd),
  }));
const low: SweepSetup = { end: "low", present_Hz: 1.3, suggested_Hz: 1.1, bands_Hz: bands(1.1) };
const high: SweepSetup = { end: "high", present_Hz: 4.6, suggested_Hz: 4.2, bands_Hz: bands(4.2) };

/** A watched reading each: three minutes at a rate. */
const settled = (list: readonly (readonly [number, number])[]): SweepReading[] =>
  list.map(([pump_Hz, co_ppm], i) => ({ pump_Hz, co_ppm, time_s: 180 * (i + 1), still: true }));

interface Heater {
  minimum_Hz: number;
  lowest_ppm: number;
  width: number;
  flame_out_Hz?: number;
}
const co = ({ minimum_Hz, lowest_ppm, width }: Heater, pump_Hz: number) =>
  Math.round(lowest_ppm * (1 + (Math.log(pump_Hz / minimum_Hz) / width) ** 2));

/** Somebody who watches every figure, at a heater without noise. */
function swept(setup: SweepSetup, heater: Heater) {
  const readings: SweepReading[] = [];
  const answers: SweepAnswer[] = [];
  const floor_ppm = setup.meter?.floor_ppm ?? 0;
  let time_s = 0;
  for (let k = 0; k < 100; k++) {
    const answer = nextStep(setup, readings);
    answers.push(answer);
    if (answer.kind !== "set" && answer.kind !== "wait") {
      const set = answers.flatMap((one) => (one.kind === "set" ? [one.pump_Hz] : []));
      return { end: answer, readings, answers, set };
    }
    const { pump_Hz } = answer;
    time_s += answer.wait_s;
    const co_ppm = co(heater, pump_Hz);
    const confirming = answer.kind === "set" && answer.why === "confirm";
    const at = { pump_Hz, time_s, still: true, confirming };
    if (pump_Hz < (heater.flame_out_Hz ?? 0)) readings.push({ pump_Hz, time_s, flame_out: true });
    else
      readings.push({ ...at, ...(co_ppm < floor_ppm ? { co_below_ppm: floor_ppm } : { co_ppm }) });
  }
  throw new Error("no end");
}

test("CO that still falls at the last rate read is no minimum: the rise on the rich side has to be seen", () => {
  const question = {
    heat_kW: 5,
    site: { elevation_m: 2757, elevation_sd_m: 0, elevation_source: "given" as const },
    air: { temperature_C: -10 },
    low_fan_rpm: 1500,
    high_fan_rpm: 4300,
  };
  const tune = startTune(inventedFit(), question);
  const setup: SweepSetup = {
    end: "low",
    present_Hz: 0.8,
    suggested_Hz: tune.low.pump_Hz,
    bands_Hz: tune.low.new_heater_bands_Hz,
  };
  const falling = [
    [0.8, 308],
    [0.9, 171],
    [1, 84],
    [1.1, 34],
  ] as const;
  for (const n of [1, 2, 3, 4]) {
    const answer = nextStep(setup, settled(falling.slice(0, n)));
    expect(answer).toMatchObject({ kind: "set", why: "richer", rich: "open" });
  }
  // Beyond the 99 % band it goes on while CO falls, a quarter at most, and then says what it has not seen.
  const { end, set } = swept(setup, { minimum_Hz: 1.6, lowest_ppm: 12, width: 0.14 });
  expect(end).toMatchObject({ kind: "not bracketed", lean: "rose", rich: "limit" });
  expect(end.kind === "not bracketed" && foundBy(end)).toBe("stopped early");
  expect(Math.max(...set)).toBeLessThan(1.6);
});

test("it begins where the pump is set, and comes down in short moves", () => {
  const first = nextStep({ ...low, present_Hz: 1.6, suggested_Hz: 0.8, bands_Hz: bands(0.8) }, []);
  expect(first).toMatchObject({ kind: "set", why: "start", pump_Hz: 1.6, step: 1 });
  for (const [setup, most] of [
    [{ ...low, present_Hz: 1.8 }, 0.2],
    [{ ...high, present_Hz: 6 }, 0.4],
  ] as const) {
    const { set, end } = swept(setup, {
      minimum_Hz: 0.95 * setup.suggested_Hz,
      lowest_ppm: 12,
      width: 0.09,
    });
    expect(set[0]).toBe(setup.present_Hz);
    for (const [i, rate] of set.entries()) {
      if (i > 0) expect(Math.abs(rate - (set[i - 1] as number))).toBeLessThanOrEqual(most + 1e-9);
    }
    expect(end.kind).toBe("found");
  }
});

test("a heater that does not burn below 1.05 Hz is tuned, whatever the starting settings say", () => {
  const setup = { ...low, present_Hz: 1.6, suggested_Hz: 0.8, bands_Hz: bands(0.8) };
  // Its lowest CO is where it burns: found.
  const above = swept(setup, { minimum_Hz: 1.22, lowest_ppm: 12, width: 0.09, flame_out_Hz: 1.05 });
  expect(above.end).toMatchObject({ kind: "found", pump_Hz: 1.2 });
  // Its lowest CO would be where it does not: left beside that rate, which is said.
  const below = swept(setup, { minimum_Hz: 1, lowest_ppm: 12, width: 0.09, flame_out_Hz: 1.05 });
  expect(below.end).toMatchObject({
    kind: "not bracketed",
    pump_Hz: 1.1,
    lean: "flame-out",
    flame_out_Hz: 1,
  });
  for (const { readings } of [above, below]) {
    expect(readings.filter(({ flame_out }) => flame_out).length).toBeLessThanOrEqual(2);
  }
});

test("after a flame-out it goes back to where it burned, never so lean again, and a third one is the manual's", () => {
  const before = settled([
    [1.3, 60],
    [1.2, 30],
    [1.1, 20],
  ]);
  const out = (time_s: number) => ({ pump_Hz: 1, time_s, flame_out: true });
  const back = nextStep(low, [...before, out(600)]);
  expect(back).toMatchObject({ kind: "set", why: "flame-out", pump_Hz: 1.1, wait_s: 180 });
  const relit = { pump_Hz: 1.1, set_s: 900, time_s: 1100, co_ppm: 20, still: true };
  const after = nextStep(low, [...before, out(600), relit]);
  expect(after).toMatchObject({ kind: "not bracketed", pump_Hz: 1.1, flame_out_Hz: 1 });
  const twice = [...before, out(600), relit, out(1200)];
  expect(nextStep(low, twice).kind).toBe("set");
  const third = nextStep(low, [...twice, { ...relit, set_s: 1500, time_s: 1700 }, out(1800)]);
  expect(third).toMatchObject({ kind: "stopped", flame_outs: 3 });
});

test("with the attempts to relight used up before, it goes leaner only while CO clearly falls", () => {
  const setup = { ...high, relights_used: 2 };
  const falls = settled([
    [4.6, 120],
    [4.4, 70],
  ]);
  expect(nextStep(setup, falls)).toMatchObject({ kind: "set", pump_Hz: 4.2 });
  const flat = settled([
    [4.6, 20],
    [4.4, 20],
  ]);
  const answer = nextStep(setup, flat);
  expect(answer.kind === "set" && answer.pump_Hz > 4.4).toBe(true);
});

test("begun again it keeps where the flame went out", () => {
  const setup = { ...low, present_Hz: 1.2, flame_outs_Hz: [1] };
  expect(nextStep(setup, [])).toMatchObject({ kind: "set", why: "start", pump_Hz: 1.2 });
  const { set } = swept(setup, { minimum_Hz: 0.9, lowest_ppm: 12, width: 0.09 });
  expect(Math.min(...set)).toBe(1.1);
});

test("both limbs climbed: the minimum between them, the flat range, and a place in it for each end", () => {
  const found = (setup: SweepSetup, heater: Heater) => {
    const { end } = swept(setup, heater);
    if (end.kind !== "found") throw new Error(end.kind);
    return end;
  };
  const bottom = found(low, { minimum_Hz: 1.04, lowest_ppm: 15, width: 0.09 });
  expect(bottom).toMatchObject({ pump_Hz: 1, lean: "rose", rich: "rose" });
  expect(Math.abs(bottom.minimum_Hz - 1.04)).toBeLessThan(0.03);
  expect(bottom.between_Hz.lower).toBeLessThan(1.04);
  expect(bottom.between_Hz.upper).toBeGreaterThan(1.04);
  expect(foundBy(bottom)).toBe("bracketed");
  // In a flat bottom: towards its rich edge at the low end, lean of its middle at the high end.
  const wide = { lowest_ppm: 12, width: 0.45 };
  const flatLow = found({ ...low, bands_Hz: bands(1.1, 0.2) }, { ...wide, minimum_Hz: 1.1 });
  const middle = ({ flat_Hz }: typeof flatLow) => (flat_Hz.lower + flat_Hz.upper) / 2;
  expect(flatLow.pump_Hz).toBeGreaterThan(middle(flatLow));
  const flatHigh = found(high, { lowest_ppm: 12, width: 0.16, minimum_Hz: 4.1 });
  expect(flatHigh.pump_Hz).toBeLessThan(middle(flatHigh));
});

test("a minimum counts where the pump is to stay: a reading there that does not fit opens the search again", () => {
  const swept_ = settled([
    [1.3, 90],
    [1.2, 40],
    [1.1, 18],
    [1, 15],
    [0.9, 40],
  ]);
  const answer = nextStep(low, swept_);
  expect(answer).toMatchObject({ kind: "set", why: "confirm" });
  if (answer.kind !== "set") return;
  const at = { pump_Hz: answer.pump_Hz, set_s: 900, time_s: 1080, still: true, confirming: true };
  expect(nextStep(low, [...swept_, { ...at, co_ppm: 16 }])).toMatchObject({
    kind: "found",
    co_ppm: 16,
  });
  expect(nextStep(low, [...swept_, { ...at, co_ppm: 45 }]).kind).not.toBe("found");
});

test("a room alarm that shows nothing below 30: a range, its middle if both edges were seen, and an end", () => {
  const setup: SweepSetup = {
    ...low,
    present_Hz: 1.2,
    suggested_Hz: 0.9,
    bands_Hz: bands(0.9, 0.2),
    meter: { floor_ppm: 30 },
  };
  const { end, set } = swept(setup, { minimum_Hz: 0.9, lowest_ppm: 12, width: 0.14 });
  expect(end).toMatchObject({
    kind: "below floor",
    co_below_ppm: 30,
    below_Hz: { lower: 0.8, upper: 1 },
    pump_Hz: 0.9,
    lean: "rose",
    rich: "rose",
  });
  expect(end.kind === "below floor" && foundBy(end)).toBe("stopped early");
  expect(set.length).toBeLessThanOrEqual(8);
  // Nothing shown anywhere: the suggestion is all there is, and the search does not go far.
  const blind = swept(setup, { minimum_Hz: 0.9, lowest_ppm: 5, width: 0.5 });
  expect(blind.end).toMatchObject({ kind: "below floor", pump_Hz: 0.9 });
  expect(blind.end.kind === "below floor" && foundBy(blind.end)).toBe("as suggested");
  expect(Math.min(...blind.set)).toBeGreaterThanOrEqual(0.9 * Math.exp(-1.2816 * 0.2));
});

test("above the scale everywhere: back to where it began, and no minimum", () => {
  const { end, set } = swept(
    { ...low, meter: { ceiling_ppm: 300 } },
    { minimum_Hz: 1, lowest_ppm: 400, width: 0.1 },
  );
  expect(end).toMatchObject({ kind: "above scale", pump_Hz: 1.3, co_above_ppm: 300 });
  expect(set.length).toBeLessThanOrEqual(18);
});

test("CO shooting up sends back at once, settled or not", () => {
  const readings = settled([
    [4.6, 20],
    [4.4, 25],
  ]);
  const spike = { pump_Hz: 4.8, set_s: 360, time_s: 370, co_ppm: 420 };
  const answer = nextStep(high, [...readings, spike]);
  expect(answer).toMatchObject({ kind: "set", why: "spike" });
  if (answer.kind === "set") expect(answer.pump_Hz).toBeLessThan(4.8);
});

test("every answer says which step it is, how many there are at most, and what has been seen", () => {
  const { answers } = swept(low, { minimum_Hz: 1.04, lowest_ppm: 15, width: 0.09 });
  const steps = answers.map(({ step }) => step);
  expect(steps).toEqual([...steps].sort((a, b) => a - b));
  for (const { step, steps_most } of answers) expect(step).toBeLessThanOrEqual(steps_most);
  expect(answers[1]).toMatchObject({ step: 2, lean: "open" });
});

test("a tune of both ends is no better found than its worse end", () => {
  expect(foundTogether("bracketed", "bracketed")).toBe("bracketed");
  expect(foundTogether("bracketed", "stopped early")).toBe("stopped early");
  expect(foundTogether("as suggested", "bracketed")).toBe("as suggested");
});

test("what is no reading is refused by name", () => {
  const one = { pump_Hz: 4.2, co_ppm: 20, time_s: 100 };
  expect(() => nextStep(high, [one, { ...one, time_s: 50 }])).toThrow("readings[1].time_s");
  expect(() => nextStep(high, [{ ...one, co_ppm: Number.NaN }])).toThrow("readings[0].co_ppm");
  expect(() => nextStep(high, [{ pump_Hz: 4.2, time_s: 1 }])).toThrow("readings[0]");
  expect(() => nextStep({ ...high, step_Hz: 0 }, [])).toThrow("step_Hz");
  expect(() => nextStep({ ...high, present_Hz: Number.NaN }, [])).toThrow("present_Hz");
});

test("before anything was read no side is called done, wherever the heater begins", () => {
  for (const present_Hz of [0.6, 1.3, 1.9]) {
    const first = nextStep({ ...low, present_Hz }, []);
    expect(first, String(present_Hz)).toMatchObject({ kind: "set", lean: "open", rich: "open" });
  }
});
