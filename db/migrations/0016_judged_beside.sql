CREATE TABLE `judged_beside` (
	`version` text PRIMARY KEY NOT NULL,
	`groups` text NOT NULL
);
