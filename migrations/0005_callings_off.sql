CREATE TABLE `callings_off` (
	`id` text PRIMARY KEY NOT NULL,
	`job_id` text NOT NULL,
	`at` integer NOT NULL,
	`told_at` integer NOT NULL,
	`quote_version` integer NOT NULL,
	`postponed_to` text,
	`days_before` text NOT NULL,
	`owes` text NOT NULL,
	`taken_back_at` integer,
	FOREIGN KEY (`job_id`) REFERENCES `jobs`(`id`) ON UPDATE no action ON DELETE cascade,
	CONSTRAINT "callings_off_told_by_then" CHECK("callings_off"."told_at" <= "callings_off"."at"),
	CONSTRAINT "callings_off_json" CHECK(json_valid("callings_off"."owes") and json_valid("callings_off"."days_before"))
) STRICT;
--> statement-breakpoint
CREATE INDEX `callings_off_by_job` ON `callings_off` (`job_id`,`at`);
