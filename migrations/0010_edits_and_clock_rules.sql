CREATE TABLE `clock_notes` (
	`id` text PRIMARY KEY NOT NULL,
	`at` integer NOT NULL,
	`job_id` text,
	`sentence` text NOT NULL,
	`put_away_at` integer
) STRICT;
--> statement-breakpoint
CREATE INDEX `clock_notes_by_put_away` ON `clock_notes` (`put_away_at`,`at`);--> statement-breakpoint
CREATE TABLE `zone_data` (
	`id` integer PRIMARY KEY NOT NULL,
	`version` text NOT NULL,
	`at` integer NOT NULL,
	CONSTRAINT "zone_data_one_row" CHECK("zone_data"."id" = 1)
) STRICT;
--> statement-breakpoint
ALTER TABLE `jobs` ADD `edits` text;
