CREATE TABLE `corrections` (
	`id` text PRIMARY KEY NOT NULL,
	`sender` text NOT NULL,
	`fact` text NOT NULL,
	`words` text NOT NULL,
	`read` text NOT NULL,
	`chosen` text NOT NULL,
	`at` integer NOT NULL,
	CONSTRAINT "corrections_fact" CHECK("corrections"."fact" in ('place', 'role', 'currency', 'per', 'organisation', 'contactName')),
	CONSTRAINT "corrections_json" CHECK(json_valid("corrections"."chosen"))
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `corrections_one` ON `corrections` (`sender`,`fact`,`words`,`read`);--> statement-breakpoint
ALTER TABLE `jobs` ADD `remembered` text;
