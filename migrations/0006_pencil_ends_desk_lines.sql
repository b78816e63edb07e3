CREATE TABLE `put_away_lines` (
	`line` text PRIMARY KEY NOT NULL,
	`at` integer NOT NULL
) STRICT;
--> statement-breakpoint
ALTER TABLE `pencils` ADD `ended_at` integer;--> statement-breakpoint
CREATE INDEX `pencils_by_expiry` ON `pencils` (`expires_at`);
