import { figuresOf, readingsOfHand_pct, type SearchFigures } from "./figures.ts";
import { type Run, runOf, type Sight } from "./runs.ts";

/** `npm run study:sweep -- [RUNS]`: guided sweeps beside stepping by hand, over invented heaters and meters. */
const RUNS = Number(process.argv[2] ?? 400);
const SEED = 20261125;

if (!(Number.isInteger(RUNS) && RUNS > 1)) {
  console.error("npm run study:sweep -- [RUNS]: a whole number of runs above 1.");
  process.exit(2);
}
const sights: Sight[] = ["seen", "below floor"];
for (const sight of sights) {
  const runs = Array.from({ length: RUNS }, (_, run) => runOf(SEED, run, sight));
  const ends: [string, Run[]][] = [
    ["both ends", runs],
    ["low end", runs.filter(({ end }) => end === "low")],
    ["high end", runs.filter(({ end }) => end === "high")],
  ];
  console.log(
    `\nLowest CO ${sight === "seen" ? "within the meter's scale" : "below a floor of 30 ppm"}`,
  );
  for (const [name, of] of ends) {
    for (const who of ["guided", "hand"] as const)
      console.log(lineOf(`${name}, ${who}`, figuresOf(of, who)));
    console.log(`${name}: readings of those by hand ${readingsOfHand_pct(of).toFixed(1)} %`);
  }
}

function lineOf(name: string, figures: SearchFigures): string {
  const parts = Object.entries(figures).map(([key, value]) => `${key} ${Number(value.toFixed(1))}`);
  return `${name}: ${parts.join(", ")}`;
}
