import { CO_READINGS } from "../../model/co-reading.ts";

/** Columns of the logbook as CSV: SI, units in the names. A row is a heater or an entry, told by `kind`. */
export interface Column {
  name: string;
  /** Where the value is in the record. */
  path: readonly string[];
  of: "heater" | "entry" | "both";
  text?: true;
}

const heater = (path: string, text?: true): Column => ({
  name: `heater_${path.replaceAll(".", "_")}`,
  path: path.split("."),
  of: "heater",
  ...(text && { text }),
});
const entry = (path: string, text?: true): Column => ({
  name: path.replaceAll(".", "_"),
  path: path.split("."),
  of: "entry",
  ...(text && { text }),
});
const end = (which: string): Column[] =>
  [
    "pump_Hz",
    "fan_rpm",
    ...CO_READINGS,
    "power",
    "sweep.minimum_Hz",
    "sweep.lower_Hz",
    "sweep.upper_Hz",
    "sweep.level",
    "sweep.flat_lower_Hz",
    "sweep.flat_upper_Hz",
  ].map((field) => entry(`${which}.${field}`));

export const COLUMNS: readonly Column[] = [
  { name: "id", path: ["id"], of: "both", text: true },
  { name: "changed_at", path: ["changed_at"], of: "both", text: true },
  heater("name", true),
  heater("heat_kW"),
  heater("dose_uL"),
  heater("low_fan_rpm"),
  heater("high_fan_rpm"),
  heater("supply_V"),
  heater("tank_L"),
  heater("step_Hz"),
  heater("step_rpm"),
  heater("settings.at", true),
  heater("settings.low.pump_Hz"),
  heater("settings.low.fan_rpm"),
  heater("settings.high.pump_Hz"),
  heater("settings.high.fan_rpm"),
  heater("meter.name", true),
  heater("meter.kind", true),
  heater("meter.distance_m"),
  heater("meter.resolution_ppm"),
  heater("meter.floor_ppm"),
  heater("meter.ceiling_ppm"),
  heater("meter.lag_s"),
  heater("hours"),
  entry("heater_id", true),
  entry("at", true),
  entry("site.place", true),
  entry("site.elevation_m"),
  entry("site.elevation_sd_m"),
  entry("site.lat"),
  entry("site.lon"),
  entry("air.temperature_C"),
  entry("air.pressure_hPa"),
  entry("air.qnh_hPa"),
  entry("air.humidity_pct"),
  ...end("low"),
  ...end("high"),
  entry("found", true),
  entry("meter.name", true),
  entry("meter.kind", true),
  entry("meter.distance_m"),
  entry("hours"),
  entry("fuel_L"),
  entry("notes", true),
  entry("shared.key", true),
  entry("shared.id", true),
  entry("shared.receipt", true),
];

/** Worked out for people; not read back. */
export const DENSITY_COLUMN = "density_kg_m3";
