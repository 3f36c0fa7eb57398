import type { StudyScenario } from "../../../client/atlas/bands/report.ts";
import type { End } from "../../../model/end.ts";
import type { SimulatedRow } from "../crowd.ts";
import type { Population, Seeded } from "../population.ts";
import type { KnownTruth } from "../truth.ts";

/** What one run has to work with. */
export interface Simulation {
  rows: SimulatedRow[];
  /** What the average tune and further heaters are; default the run's own truth. */
  truth?: Population | KnownTruth;
  /** Which heat class and end is asked about; default 5 kW, low. */
  target?: { heat_kW: number; end: End };
}

/** One way that data can come in. */
export interface Scenario
  extends Pick<StudyScenario, "id" | "title" | "family" | "truth" | "contributors"> {
  /** Whether bands are all that is asked: then no rival is fitted, and the time goes into more runs. */
  bands_only?: boolean;
  make(random: Seeded, truth: Population): Simulation;
}
