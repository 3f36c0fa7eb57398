ALTER TABLE `tunes` ADD `imported` text;--> statement-breakpoint
CREATE INDEX `tunes_imported` ON `tunes` (`imported`) WHERE imported is not null;