CREATE TABLE `refused_fits` (
	`number` integer PRIMARY KEY NOT NULL,
	`since` text NOT NULL,
	`alarms` text NOT NULL,
	`allowed` integer NOT NULL
);
--> statement-breakpoint
CREATE TABLE `waiting` (
	`contributor` text PRIMARY KEY NOT NULL,
	`since` text NOT NULL,
	`crowded` integer NOT NULL
);
--> statement-breakpoint
CREATE INDEX `tunes_by_contributor` ON `tunes` (`contributor`,`verdict`);