ALTER TABLE `tunes` ADD `pseudonym` text DEFAULT '' NOT NULL;--> statement-breakpoint
ALTER TABLE `tunes` ADD `home` text;--> statement-breakpoint
ALTER TABLE `tunes` ADD `several_places` integer DEFAULT false NOT NULL;--> statement-breakpoint
UPDATE `decisions` SET `decided_on` = substr(`decided_on`, 1, 7) WHERE `tune` <> '';--> statement-breakpoint
UPDATE `tunes` SET `density_kg_m3` = round(`density_kg_m3`, 2), `ln_density_sd` = round(`ln_density_sd`, 3);--> statement-breakpoint
UPDATE `tunes` SET `pseudonym` = lower(hex(randomblob(8))) WHERE rowid IN (SELECT min(rowid) FROM `tunes` GROUP BY `contributor`);--> statement-breakpoint
UPDATE `tunes` SET `pseudonym` = (SELECT `t`.`pseudonym` FROM `tunes` `t` WHERE `t`.`contributor` = `tunes`.`contributor` AND `t`.`pseudonym` <> '') WHERE `pseudonym` = '';--> statement-breakpoint
UPDATE `tunes` SET `home` = lower(hex(randomblob(8))) WHERE rowid IN (SELECT min(rowid) FROM `tunes` WHERE `place` IS NOT NULL GROUP BY `place`, coalesce(`tuned_on`, `submitted_on`));--> statement-breakpoint
UPDATE `tunes` SET `home` = `named`.`home` FROM (SELECT `place`, coalesce(`tuned_on`, `submitted_on`) AS `month`, `home` FROM `tunes` WHERE `home` IS NOT NULL) AS `named` WHERE `tunes`.`home` IS NULL AND `named`.`place` = `tunes`.`place` AND `named`.`month` = coalesce(`tunes`.`tuned_on`, `tunes`.`submitted_on`);--> statement-breakpoint
UPDATE `tunes` SET `home` = (SELECT `t`.`home` FROM `tunes` `t` WHERE `t`.`contributor` = `tunes`.`contributor` AND `t`.`home` IS NOT NULL ORDER BY `t`.rowid LIMIT 1);--> statement-breakpoint
UPDATE `tunes` SET `several_places` = 1 WHERE `contributor` IN (SELECT `contributor` FROM `tunes` GROUP BY `contributor` HAVING count(DISTINCT `cell`) > 1);