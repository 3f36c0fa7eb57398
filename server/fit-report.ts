import { type Bands, bandsAt } from "../model/fit/bands.ts";
import type { AtlasFit } from "../model/fit/fit.ts";
import type { FitSettings, GroupFit } from "../model/fit/group.ts";
import type { RejectedRow } from "../model/fit/row.ts";

/** What the fit command says; as JSON its `groups` are the atlas's own, with rows and bands added. */
export interface FitReport {
  code: string;
  estimator: string;
  settings: FitSettings;
  rows_sha256: string;
  groups: GroupReport[];
  /** Rows that belong to no group: their heat class or end cannot be read, or nobody else is in it. */
  rejected: RowReason[];
}

type RowReason = Pick<RejectedRow, "row" | "reason">;
type At = Bands & { density_kg_m3: number };
type GroupReport = Omit<GroupFit, "rejected"> & { rejected: RowReason[]; at: At[] };

/** The groups that are wanted, each with the rows set aside from it and its bands at some densities. */
export function reportGroups(
  { groups, rejected }: AtlasFit,
  wanted: (group: Pick<GroupFit, "heat_kW" | "end">) => boolean,
  densities: readonly number[],
): Pick<FitReport, "groups" | "rejected"> {
  const within = (row: RejectedRow, group: GroupFit) =>
    row.heat_kW === group.heat_kW && row.end === group.end;
  return {
    groups: groups.filter(wanted).map((group) => ({
      ...group,
      rejected: rejected.filter((row) => within(row, group)).map(reasonOf),
      at: densities.map((density_kg_m3) => ({ density_kg_m3, ...bandsAt(group, density_kg_m3) })),
    })),
    rejected: rejected.filter((row) => !groups.some((group) => within(row, group))).map(reasonOf),
  };
}

function reasonOf({ row, reason }: RejectedRow): RowReason {
  return { row, reason };
}

/** The same for reading. Coefficients in full: they are for comparing. */
export function reportText({
  code,
  estimator,
  settings,
  rows_sha256,
  groups,
  rejected,
}: FitReport): string {
  return [
    ...groups.flatMap(groupLines),
    ...rejected.map(asideLine),
    `code ${code}, estimator ${estimator}, rows ${rows_sha256}`,
    `settings ${Object.entries(settings)
      .map(([name, value]) => `${name} ${value}`)
      .join(", ")}`,
  ].join("\n");
}

function groupLines(group: GroupReport): string[] {
  const { heat_kW, end, intercept, slope, spread, contributors, tunes, rejected, at } = group;
  return [
    `${heat_kW} kW, ${end === "low" ? "lowest" : "highest"} power: ${tunes} tunes by ${contributors} contributors`,
    `  ln(Hz per 1,000 rpm) = ${intercept} + ${slope} · ln(density/1.225)`,
    `  one tune of one heater scatters by ${(spread * 100).toFixed(1)} %`,
    ...at.map(bandLine),
    ...rejected.map((row) => `  ${asideLine(row)}`),
    "",
  ];
}

function asideLine({ row, reason }: RowReason): string {
  return `row ${row} set aside: ${reason}`;
}

function bandLine({ density_kg_m3, pump_Hz_per_krpm, mean_bands, new_heater_bands }: At): string {
  const range = (bands: Bands["mean_bands"]) => {
    const band = bands.find(({ level }) => level === 0.95);
    return `${band?.lower.toFixed(3)}–${band?.upper.toFixed(3)}`;
  };
  return `  at ${density_kg_m3} kg/m³: ${pump_Hz_per_krpm.toFixed(3)} Hz per 1,000 rpm; 95 %: mean ${range(mean_bands)}, new heater ${range(new_heater_bands)}`;
}
