import { z } from "zod";
import { type Tune, tuneSchema } from "../../model/tune.ts";
import { seeded } from "../../seed-demo/random.ts";
import { goodTune } from "../server/atlas.ts";

/** What the walk below needs to know of a JSON schema. */
interface Shape {
  properties?: Record<string, Shape>;
  required?: string[];
  minimum?: number;
  maximum?: number;
  multipleOf?: number;
  enum?: string[];
  pattern?: string;
}

/** As clients see it: the bounds are read from the schema, so that the attack follows them. */
const shape = z.toJSONSchema(tuneSchema, { unrepresentable: "any" }) as Shape;

/**
 * Bodies that the schema lets in, from a seed: every number ordinary, anywhere between its bounds, or at one of them, so that
 * slips meet in every combination.
 */
export function bodiesWithinBounds(seed: number): () => Tune {
  const { uniform } = seeded(seed);
  const below = (count: number) => Math.floor(uniform() * count);
  let n = 0;

  function number({ minimum = 0, maximum = 0, multipleOf }: Shape, usual: unknown): number {
    const kind = uniform();
    if (kind < 0.35 && typeof usual === "number") return usual;
    const value =
      kind < 0.65 ? (kind < 0.5 ? minimum : maximum) : minimum + uniform() * (maximum - minimum);
    return multipleOf ? multipleOf * Math.round(value / multipleOf) : value;
  }

  function text({ pattern }: Shape): string {
    if (pattern?.startsWith("^20"))
      return `20${10 + below(90)}-${String(1 + below(12)).padStart(2, "0")}`;
    return `within-bounds-${below(5000)}-key`;
  }

  function value(of: Shape, usual: unknown): unknown {
    if (of.enum) return of.enum[below(of.enum.length)];
    if (of.pattern) return text(of);
    if (!of.properties) return number(of, usual);
    const { required = [] } = of;
    return Object.fromEntries(
      Object.entries(of.properties)
        .filter(([name]) => required.includes(name) || uniform() < 0.6)
        .map(([name, part]) => [name, value(part, (usual as Record<string, unknown>)?.[name])]),
    );
  }

  return () => togetherOrNot(value(shape, goodTune(n++)) as Tune);
}

/** What the schema asks of fields together: one figure of CO an end, a whole position or none, one pressure. */
function togetherOrNot(tune: Tune): Tune {
  for (const end of [tune.low, tune.high]) {
    if (end.co_ppm !== undefined) delete end.co_below_ppm;
    else end.co_below_ppm ??= 30;
  }
  const { site, air } = tune;
  if (site.lat === undefined || site.lon === undefined) {
    delete site.lat;
    delete site.lon;
  }
  if (air?.pressure_hPa !== undefined) delete air.qnh_hPa;
  return tuneSchema.parse(tune);
}
