DROP INDEX `tunes_by_class`;--> statement-breakpoint
CREATE INDEX `tunes_by_class` ON `tunes` (`heat_kW`,`verdict`,`density_kg_m3`);