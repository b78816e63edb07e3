CREATE TABLE `hand_dates` (
	`id` text PRIMARY KEY NOT NULL,
	`job_id` text NOT NULL,
	`hand_id` text NOT NULL,
	`date` text NOT NULL,
	`state` text NOT NULL,
	`asked_at` integer NOT NULL,
	`at` integer NOT NULL,
	`how` text DEFAULT '' NOT NULL,
	`version` integer DEFAULT 1 NOT NULL,
	`created_at` integer NOT NULL,
	`updated_at` integer NOT NULL,
	FOREIGN KEY (`job_id`) REFERENCES `jobs`(`id`) ON UPDATE no action ON DELETE cascade,
	FOREIGN KEY (`hand_id`) REFERENCES `hands`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "hand_dates_state" CHECK("hand_dates"."state" in ('asked', 'pencilled', 'said yes', 'said no', 'let go')),
	CONSTRAINT "hand_dates_date" CHECK("hand_dates"."date" glob '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]')
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `hand_dates_once` ON `hand_dates` (`job_id`,`hand_id`,`date`);--> statement-breakpoint
CREATE INDEX `hand_dates_by_hand` ON `hand_dates` (`hand_id`,`date`);--> statement-breakpoint
CREATE INDEX `hand_dates_open` ON `hand_dates` (`state`,`date`);
