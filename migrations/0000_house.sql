CREATE TABLE `job_days` (
	`id` text PRIMARY KEY NOT NULL,
	`job_id` text NOT NULL,
	`date` text NOT NULL,
	`kind` text NOT NULL,
	`call` text NOT NULL,
	`wrap` text NOT NULL,
	`zone` text NOT NULL,
	`call_at` integer NOT NULL,
	`wrap_at` integer NOT NULL,
	FOREIGN KEY (`job_id`) REFERENCES `jobs`(`id`) ON UPDATE no action ON DELETE cascade,
	CONSTRAINT "job_days_end_after_start" CHECK("job_days"."wrap_at" > "job_days"."call_at"),
	CONSTRAINT "job_days_length" CHECK("job_days"."wrap_at" - "job_days"."call_at" <= 172800000),
	CONSTRAINT "job_days_kind" CHECK("job_days"."kind" in ('shoot', 'half', 'travel', 'prep', 'standby', 'edit'))
) STRICT;
--> statement-breakpoint
CREATE INDEX `job_days_by_job` ON `job_days` (`job_id`,`call_at`);--> statement-breakpoint
CREATE TABLE `jobs` (
	`id` text PRIMARY KEY NOT NULL,
	`title` text NOT NULL,
	`organisation` text DEFAULT '' NOT NULL,
	`contact_name` text DEFAULT '' NOT NULL,
	`contact_email` text DEFAULT '' NOT NULL,
	`contact_phone` text DEFAULT '' NOT NULL,
	`stage` text NOT NULL,
	`role` text NOT NULL,
	`place_key` text,
	`place` text,
	`message` text,
	`questions` text NOT NULL,
	`spans` text NOT NULL,
	`received_at` integer NOT NULL,
	`received_zone` text NOT NULL,
	`reply_by_wall` text,
	`reply_by_zone` text,
	`reply_by_at` integer,
	`budget` text,
	`deliverables` text NOT NULL,
	`notes` text DEFAULT '' NOT NULL,
	`inked_who` text,
	`inked_how` text,
	`inked_at` integer,
	`inked_quote` integer,
	`version` integer DEFAULT 1 NOT NULL,
	`created_at` integer NOT NULL,
	`updated_at` integer NOT NULL,
	CONSTRAINT "jobs_stage" CHECK("jobs"."stage" in ('inquiry', 'quoted', 'pencilled', 'inked', 'let go', 'declined', 'cancelled')),
	CONSTRAINT "jobs_reply_by_whole" CHECK(("jobs"."reply_by_wall" is null) = ("jobs"."reply_by_at" is null) and ("jobs"."reply_by_zone" is null) = ("jobs"."reply_by_at" is null)),
	CONSTRAINT "jobs_ink_whole" CHECK(("jobs"."stage" <> 'inked') or ("jobs"."inked_who" is not null and "jobs"."inked_at" is not null and "jobs"."inked_how" is not null)),
	CONSTRAINT "jobs_place_json" CHECK("jobs"."place" is null or json_valid("jobs"."place"))
) STRICT;
--> statement-breakpoint
CREATE INDEX `jobs_by_stage` ON `jobs` (`stage`,`reply_by_at`);--> statement-breakpoint
CREATE TABLE `pencils` (
	`id` text PRIMARY KEY NOT NULL,
	`job_id` text NOT NULL,
	`pencilled_at` integer NOT NULL,
	`expires_wall` text NOT NULL,
	`expires_zone` text NOT NULL,
	`expires_at` integer NOT NULL,
	`state` text NOT NULL,
	FOREIGN KEY (`job_id`) REFERENCES `jobs`(`id`) ON UPDATE no action ON DELETE cascade,
	CONSTRAINT "pencils_state" CHECK("pencils"."state" in ('held', 'let go', 'inked', 'renewed'))
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `pencils_one_held` ON `pencils` (`job_id`) WHERE "pencils"."state" = 'held';--> statement-breakpoint
CREATE INDEX `pencils_by_job` ON `pencils` (`job_id`,`pencilled_at`);--> statement-breakpoint
CREATE TABLE `stays` (
	`id` text PRIMARY KEY NOT NULL,
	`job_id` text NOT NULL,
	`start_at` integer NOT NULL,
	`end_at` integer NOT NULL,
	FOREIGN KEY (`job_id`) REFERENCES `jobs`(`id`) ON UPDATE no action ON DELETE cascade,
	CONSTRAINT "stays_end_after_start" CHECK("stays"."end_at" > "stays"."start_at"),
	CONSTRAINT "stays_longest" CHECK("stays"."end_at" - "stays"."start_at" <= 8640000000)
) STRICT;
--> statement-breakpoint
CREATE INDEX `stays_by_time` ON `stays` (`start_at`,`end_at`,`job_id`);--> statement-breakpoint
CREATE INDEX `stays_by_job` ON `stays` (`job_id`);--> statement-breakpoint
CREATE TABLE `deeds` (
	`key` text PRIMARY KEY NOT NULL,
	`procedure` text NOT NULL,
	`at` integer NOT NULL,
	`input_hash` text NOT NULL,
	`result` text NOT NULL,
	CONSTRAINT "deeds_json" CHECK(json_valid("deeds"."result"))
) STRICT;
--> statement-breakpoint
CREATE INDEX `deeds_by_age` ON `deeds` (`at`);--> statement-breakpoint
CREATE TABLE `history` (
	`id` text PRIMARY KEY NOT NULL,
	`at` integer NOT NULL,
	`subject` text NOT NULL,
	`subject_id` text NOT NULL,
	`deed` text NOT NULL,
	`sentence` text NOT NULL,
	`before` text,
	CONSTRAINT "history_json" CHECK("history"."before" is null or json_valid("history"."before"))
) STRICT;
--> statement-breakpoint
CREATE INDEX `history_by_subject` ON `history` (`subject`,`subject_id`,`at`);--> statement-breakpoint
CREATE TABLE `papers` (
	`id` text PRIMARY KEY NOT NULL,
	`job_id` text,
	`kind` text NOT NULL,
	`name` text NOT NULL,
	`type` text NOT NULL,
	`hash` text NOT NULL,
	`bytes` integer NOT NULL,
	`made_at` integer NOT NULL,
	FOREIGN KEY (`job_id`) REFERENCES `jobs`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "papers_hash" CHECK(length("papers"."hash") = 64),
	CONSTRAINT "papers_bytes" CHECK("papers"."bytes" > 0)
) STRICT;
--> statement-breakpoint
CREATE INDEX `papers_by_job` ON `papers` (`job_id`,`made_at`);--> statement-breakpoint
CREATE TABLE `quote_drafts` (
	`job_id` text PRIMARY KEY NOT NULL,
	`changes` text NOT NULL,
	`draft_version` integer DEFAULT 1 NOT NULL,
	`updated_at` integer NOT NULL,
	FOREIGN KEY (`job_id`) REFERENCES `jobs`(`id`) ON UPDATE no action ON DELETE cascade
) STRICT;
--> statement-breakpoint
CREATE TABLE `quote_sendings` (
	`version_id` text PRIMARY KEY NOT NULL,
	`sent_at` integer NOT NULL,
	FOREIGN KEY (`version_id`) REFERENCES `quote_versions`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE TABLE `quote_versions` (
	`id` text PRIMARY KEY NOT NULL,
	`job_id` text NOT NULL,
	`number` integer NOT NULL,
	`made_at` integer NOT NULL,
	`currency` text NOT NULL,
	`gross_minor` integer NOT NULL,
	`valid_until_at` integer NOT NULL,
	`draft` text NOT NULL,
	`reply_subject` text NOT NULL,
	`reply_text` text NOT NULL,
	`paper_id` text NOT NULL,
	FOREIGN KEY (`job_id`) REFERENCES `jobs`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`paper_id`) REFERENCES `papers`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "quote_versions_currency" CHECK(length("quote_versions"."currency") = 3),
	CONSTRAINT "quote_versions_gross" CHECK(typeof("quote_versions"."gross_minor") = 'integer'),
	CONSTRAINT "quote_versions_draft_json" CHECK(json_valid("quote_versions"."draft"))
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `quote_versions_number` ON `quote_versions` (`job_id`,`number`);--> statement-breakpoint
CREATE TABLE `rate_cards` (
	`id` text PRIMARY KEY NOT NULL,
	`name` text NOT NULL,
	`role` text NOT NULL,
	`currency` text NOT NULL,
	`valid_from` text NOT NULL,
	`valid_to` text,
	`fields` text NOT NULL,
	`version` integer DEFAULT 1 NOT NULL,
	`created_at` integer NOT NULL,
	`updated_at` integer NOT NULL,
	CONSTRAINT "rate_cards_currency" CHECK(length("rate_cards"."currency") = 3),
	CONSTRAINT "rate_cards_validity" CHECK("rate_cards"."valid_to" is null or "rate_cards"."valid_to" >= "rate_cards"."valid_from"),
	CONSTRAINT "rate_cards_fields_json" CHECK(json_valid("rate_cards"."fields"))
) STRICT;
--> statement-breakpoint
CREATE INDEX `rate_cards_by_role` ON `rate_cards` (`role`,`valid_from`);--> statement-breakpoint
CREATE TABLE `setup` (
	`id` integer PRIMARY KEY NOT NULL,
	`fields` text NOT NULL,
	`version` integer DEFAULT 1 NOT NULL,
	`updated_at` integer NOT NULL,
	CONSTRAINT "setup_one_row" CHECK("setup"."id" = 1),
	CONSTRAINT "setup_fields_json" CHECK(json_valid("setup"."fields"))
) STRICT;
--> statement-breakpoint
CREATE TABLE `ways` (
	`id` text PRIMARY KEY NOT NULL,
	`low_key` text NOT NULL,
	`high_key` text NOT NULL,
	`from_place` text NOT NULL,
	`to_place` text NOT NULL,
	`mode` text NOT NULL,
	`minutes` integer NOT NULL,
	`distance` text,
	`note` text DEFAULT '' NOT NULL,
	`version` integer DEFAULT 1 NOT NULL,
	`updated_at` integer NOT NULL,
	CONSTRAINT "ways_order" CHECK("ways"."low_key" < "ways"."high_key"),
	CONSTRAINT "ways_minutes" CHECK("ways"."minutes" > 0),
	CONSTRAINT "ways_mode" CHECK("ways"."mode" in ('drive', 'flight', 'rail', 'ferry', 'ride'))
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `ways_pair` ON `ways` (`low_key`,`high_key`,`mode`);
