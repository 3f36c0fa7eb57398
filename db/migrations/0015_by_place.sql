DROP INDEX `tunes_by_class`;--> statement-breakpoint
CREATE INDEX `tunes_of_class` ON `tunes` (`heat_kW`,`id`);--> statement-breakpoint
CREATE INDEX `tunes_by_place` ON `tunes` (`place`,`cell`);--> statement-breakpoint
CREATE INDEX `tunes_by_class` ON `tunes` (`heat_kW`,`verdict`,`density_kg_m3`,`id`);