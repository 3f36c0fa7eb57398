CREATE TABLE `waiting_sizes` (
	`heat_kW` real PRIMARY KEY NOT NULL
);
