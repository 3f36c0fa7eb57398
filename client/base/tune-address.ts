import type { End } from "../../model/end.ts";
import type { CellTune } from "../../server/contract.ts";

/** What tells one accepted tune from the others, as far as charts know it. */
export type ShownTune = Pick<CellTune, "heat_kW" | "elevation_m"> &
  Record<End, { pump_Hz: number; fan_rpm: number }>;

const CHART = "#/scaling/tune";

/** Where the chart of how settings scale shows this tune. */
export function chartAddress({ heat_kW, elevation_m, low, high }: ShownTune): string {
  const figures = [low, high].flatMap(({ pump_Hz, fan_rpm }) => [pump_Hz, fan_rpm]);
  return [CHART, heat_kW, elevation_m, ...figures].join("/");
}

/** Where the map shows the cell that holds this tune. */
export function mapAddress(cell: string): string {
  return `#/map/${cell}`;
}

/** The tune that an address asks the chart for; undefined where it asks for none that can be. */
export function tuneInAddress(hash: string): ShownTune | undefined {
  if (!hash.startsWith(`${CHART}/`)) return undefined;
  const steps = hash.slice(CHART.length + 1).split("/");
  const figures = steps.map((step) => (/^-?\d+(\.\d+)?$/.test(step) ? Number(step) : Number.NaN));
  if (figures.length !== 6 || figures.some(Number.isNaN)) return undefined;
  const [heat_kW, elevation_m, low_Hz, low_rpm, high_Hz, high_rpm] = figures as [
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  return {
    heat_kW,
    elevation_m,
    low: { pump_Hz: low_Hz, fan_rpm: low_rpm },
    high: { pump_Hz: high_Hz, fan_rpm: high_rpm },
  };
}

/** The cell that an address asks the map for. */
export function cellInAddress(hash: string): string | undefined {
  return /^#\/map\/([0-9a-f]{15})$/.exec(hash)?.[1];
}

/** Whether a dot of the chart is this tune's. */
export function isTune(
  tune: ShownTune,
  end: End,
  dot: { elevation_m: number; pump_Hz: number; fan_rpm: number },
): boolean {
  const same = (a: number, b: number) => Math.abs(a - b) < 1e-6;
  const { pump_Hz, fan_rpm } = tune[end];
  return (
    same(tune.elevation_m, dot.elevation_m) &&
    same(pump_Hz, dot.pump_Hz) &&
    same(fan_rpm, dot.fan_rpm)
  );
}
