CREATE TABLE `decisions` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`tune` text NOT NULL,
	`by` text NOT NULL,
	`verdict` text NOT NULL,
	`reasons` text NOT NULL,
	`decided_on` text NOT NULL
);
--> statement-breakpoint
CREATE INDEX `decisions_by_tune` ON `decisions` (`tune`);--> statement-breakpoint
CREATE TABLE `fits` (
	`number` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`version` text NOT NULL,
	`rows_sha256` text NOT NULL,
	`fit` text NOT NULL,
	`rejected` text NOT NULL
);
--> statement-breakpoint
CREATE UNIQUE INDEX `fits_version_unique` ON `fits` (`version`);--> statement-breakpoint
CREATE TABLE `idempotency_keys` (
	`key` text PRIMARY KEY NOT NULL,
	`body_sha256` text NOT NULL,
	`tune` text NOT NULL,
	`answer` text NOT NULL
);
--> statement-breakpoint
CREATE TABLE `tunes` (
	`id` text PRIMARY KEY NOT NULL,
	`receipt_sha256` text NOT NULL,
	`contributor` text NOT NULL,
	`sent` text NOT NULL,
	`heat_kW` real NOT NULL,
	`dose_uL` real,
	`supply_V` real,
	`elevation_m` real NOT NULL,
	`cell` text,
	`place` text,
	`temperature_C` real,
	`pressure_hPa` real,
	`qnh_hPa` real,
	`humidity_pct` real,
	`density_kg_m3` real NOT NULL,
	`density_assumed` text NOT NULL,
	`low_pump_Hz` real NOT NULL,
	`low_fan_rpm` real NOT NULL,
	`low_co_ppm` real,
	`low_co_below_ppm` real,
	`low_power` real,
	`high_pump_Hz` real NOT NULL,
	`high_fan_rpm` real NOT NULL,
	`high_co_ppm` real,
	`high_co_below_ppm` real,
	`high_power` real,
	`meter_kind` text,
	`meter_distance_m` real,
	`tuned_on` text,
	`submitted_on` text NOT NULL,
	`verdict` text NOT NULL
);
--> statement-breakpoint
CREATE INDEX `tunes_by_class` ON `tunes` (`heat_kW`);