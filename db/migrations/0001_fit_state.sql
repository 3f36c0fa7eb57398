ALTER TABLE `tunes` ADD `ln_density_sd` real DEFAULT 0 NOT NULL;--> statement-breakpoint
ALTER TABLE `fits` DROP COLUMN `rejected`;