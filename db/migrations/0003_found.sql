ALTER TABLE `tunes` ADD `found` text;--> statement-breakpoint
ALTER TABLE `tunes` ADD `judged_version` text;--> statement-breakpoint
ALTER TABLE `tunes` ADD `low_suggested_Hz_per_krpm` real;--> statement-breakpoint
ALTER TABLE `tunes` ADD `high_suggested_Hz_per_krpm` real;