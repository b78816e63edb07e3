CREATE TABLE `deliverables` (
	`id` text PRIMARY KEY NOT NULL,
	`job_id` text NOT NULL,
	`template_id` text,
	`position` integer NOT NULL,
	`name` text NOT NULL,
	`made_from` text,
	`finished_minutes` text NOT NULL,
	`edit_hours_per_minute` text NOT NULL,
	`ingest_hours` text NOT NULL,
	`rounds` integer NOT NULL,
	`hours_per_round` text NOT NULL,
	`window_days` integer NOT NULL,
	`internal_days` integer NOT NULL,
	`format` text NOT NULL,
	`same_day` integer NOT NULL,
	`due_date` text,
	`agreed_due_date` text,
	`internal_date` text,
	`hand_id` text,
	`off_at` integer,
	`version` integer DEFAULT 1 NOT NULL,
	`created_at` integer NOT NULL,
	`updated_at` integer NOT NULL,
	FOREIGN KEY (`job_id`) REFERENCES `jobs`(`id`) ON UPDATE no action ON DELETE cascade,
	FOREIGN KEY (`template_id`) REFERENCES `templates`(`id`) ON UPDATE no action ON DELETE set null,
	FOREIGN KEY (`hand_id`) REFERENCES `hands`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "deliverables_counts" CHECK("deliverables"."rounds" >= 0 and "deliverables"."window_days" >= 0 and "deliverables"."internal_days" >= 0),
	CONSTRAINT "deliverables_internal_first" CHECK("deliverables"."internal_date" is null or "deliverables"."internal_date" <= "deliverables"."due_date"),
	CONSTRAINT "deliverables_json" CHECK(json_valid("deliverables"."format"))
) STRICT;
--> statement-breakpoint
CREATE INDEX `deliverables_by_job` ON `deliverables` (`job_id`,`position`);--> statement-breakpoint
CREATE UNIQUE INDEX `deliverables_made_once` ON `deliverables` (`job_id`,`made_from`) WHERE "deliverables"."made_from" is not null;--> statement-breakpoint
CREATE TABLE `pinned_blocks` (
	`id` text PRIMARY KEY NOT NULL,
	`stage_id` text NOT NULL,
	`start_at` integer NOT NULL,
	`end_at` integer NOT NULL,
	FOREIGN KEY (`stage_id`) REFERENCES `stages`(`id`) ON UPDATE no action ON DELETE cascade,
	CONSTRAINT "pinned_blocks_end_after_start" CHECK("pinned_blocks"."end_at" > "pinned_blocks"."start_at"),
	CONSTRAINT "pinned_blocks_length" CHECK("pinned_blocks"."end_at" - "pinned_blocks"."start_at" <= 86400000)
) STRICT;
--> statement-breakpoint
CREATE INDEX `pinned_blocks_by_stage` ON `pinned_blocks` (`stage_id`);--> statement-breakpoint
CREATE INDEX `pinned_blocks_by_time` ON `pinned_blocks` (`start_at`);--> statement-breakpoint
CREATE TABLE `stages` (
	`id` text PRIMARY KEY NOT NULL,
	`deliverable_id` text NOT NULL,
	`position` integer NOT NULL,
	`kind` text NOT NULL,
	`half_hours` integer NOT NULL,
	`release_date` text,
	`done_at` integer,
	`version` integer DEFAULT 1 NOT NULL,
	FOREIGN KEY (`deliverable_id`) REFERENCES `deliverables`(`id`) ON UPDATE no action ON DELETE cascade,
	CONSTRAINT "stages_kind" CHECK("stages"."kind" in ('ingest', 'selects', 'rough cut', 'fine cut', 'round', 'picture lock', 'delivered', 'approved')),
	CONSTRAINT "stages_hours" CHECK("stages"."half_hours" >= 0),
	CONSTRAINT "stages_marks" CHECK("stages"."half_hours" = 0 or "stages"."kind" not in ('delivered', 'approved'))
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `stages_in_order` ON `stages` (`deliverable_id`,`position`);--> statement-breakpoint
CREATE INDEX `stages_open` ON `stages` (`deliverable_id`) WHERE "stages"."done_at" is null;--> statement-breakpoint
CREATE TABLE `templates` (
	`id` text PRIMARY KEY NOT NULL,
	`name` text NOT NULL,
	`finished_minutes` text NOT NULL,
	`edit_hours_per_minute` text NOT NULL,
	`ingest_hours` text NOT NULL,
	`rounds` integer NOT NULL,
	`hours_per_round` text NOT NULL,
	`window_days` integer NOT NULL,
	`internal_days` integer NOT NULL,
	`format` text NOT NULL,
	`same_day` integer NOT NULL,
	`due` text NOT NULL,
	`put_away_at` integer,
	`version` integer DEFAULT 1 NOT NULL,
	`created_at` integer NOT NULL,
	`updated_at` integer NOT NULL,
	CONSTRAINT "templates_counts" CHECK("templates"."rounds" >= 0 and "templates"."window_days" >= 0 and "templates"."internal_days" >= 0),
	CONSTRAINT "templates_json" CHECK(json_valid("templates"."due") and json_valid("templates"."format"))
) STRICT;
--> statement-breakpoint
CREATE INDEX `templates_by_name` ON `templates` (`name`);--> statement-breakpoint
CREATE TABLE `hand_overs` (
	`id` text PRIMARY KEY NOT NULL,
	`deliverable_id` text NOT NULL,
	`how` text NOT NULL,
	`where_to` text NOT NULL,
	`at` integer NOT NULL,
	`originals` text NOT NULL,
	`originals_until` text,
	`originals_gone_at` integer,
	`hash_kind` text NOT NULL,
	`files` text NOT NULL,
	`paper_id` text,
	`note` text DEFAULT '' NOT NULL,
	`version` integer DEFAULT 1 NOT NULL,
	FOREIGN KEY (`deliverable_id`) REFERENCES `deliverables`(`id`) ON UPDATE no action ON DELETE cascade,
	FOREIGN KEY (`paper_id`) REFERENCES `papers`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "hand_overs_how" CHECK("hand_overs"."how" in ('link', 'disk')),
	CONSTRAINT "hand_overs_originals_said" CHECK("hand_overs"."originals" in ('kept until', 'handed over', 'never kept')),
	CONSTRAINT "hand_overs_until" CHECK("hand_overs"."originals_until" is null or "hand_overs"."originals" = 'kept until'),
	CONSTRAINT "hand_overs_files_json" CHECK(json_valid("hand_overs"."files"))
) STRICT;
--> statement-breakpoint
CREATE INDEX `hand_overs_by_deliverable` ON `hand_overs` (`deliverable_id`,`at`);--> statement-breakpoint
CREATE INDEX `hand_overs_originals` ON `hand_overs` (`originals_until`) WHERE "hand_overs"."originals_gone_at" is null;--> statement-breakpoint
CREATE TABLE `note_items` (
	`id` text PRIMARY KEY NOT NULL,
	`round_id` text NOT NULL,
	`position` integer NOT NULL,
	`timecode` text NOT NULL,
	`frame` integer,
	`to_frame` integer,
	`text` text NOT NULL,
	`done_at` integer,
	FOREIGN KEY (`round_id`) REFERENCES `rounds`(`id`) ON UPDATE no action ON DELETE cascade,
	CONSTRAINT "note_items_frames" CHECK(("note_items"."frame" is null and "note_items"."to_frame" is null) or ("note_items"."frame" >= 0 and ("note_items"."to_frame" is null or "note_items"."to_frame" >= "note_items"."frame")))
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `note_items_in_order` ON `note_items` (`round_id`,`position`);--> statement-breakpoint
CREATE TABLE `rounds` (
	`id` text PRIMARY KEY NOT NULL,
	`deliverable_id` text NOT NULL,
	`stage_id` text,
	`number` integer NOT NULL,
	`what` text NOT NULL,
	`sent_at` integer NOT NULL,
	`window_days` integer NOT NULL,
	`due_back` text NOT NULL,
	`notes_at` integer,
	`notes` text DEFAULT '' NOT NULL,
	`included` integer NOT NULL,
	`price` text,
	`version` integer DEFAULT 1 NOT NULL,
	FOREIGN KEY (`deliverable_id`) REFERENCES `deliverables`(`id`) ON UPDATE no action ON DELETE cascade,
	FOREIGN KEY (`stage_id`) REFERENCES `stages`(`id`) ON UPDATE no action ON DELETE set null,
	CONSTRAINT "rounds_counts" CHECK("rounds"."number" >= 1 and "rounds"."window_days" >= 0),
	CONSTRAINT "rounds_notes_after_sending" CHECK("rounds"."notes_at" is null or "rounds"."notes_at" >= "rounds"."sent_at"),
	CONSTRAINT "rounds_price_json" CHECK("rounds"."price" is null or json_valid("rounds"."price"))
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `rounds_number` ON `rounds` (`deliverable_id`,`number`);--> statement-breakpoint
CREATE INDEX `rounds_waiting` ON `rounds` (`due_back`) WHERE "rounds"."notes_at" is null;--> statement-breakpoint
CREATE TABLE `time_spent` (
	`id` text PRIMARY KEY NOT NULL,
	`deliverable_id` text NOT NULL,
	`stage_id` text,
	`start_at` integer NOT NULL,
	`end_at` integer,
	`typed` integer NOT NULL,
	`note` text DEFAULT '' NOT NULL,
	`version` integer DEFAULT 1 NOT NULL,
	FOREIGN KEY (`deliverable_id`) REFERENCES `deliverables`(`id`) ON UPDATE no action ON DELETE cascade,
	FOREIGN KEY (`stage_id`) REFERENCES `stages`(`id`) ON UPDATE no action ON DELETE set null,
	CONSTRAINT "time_spent_end_after_start" CHECK("time_spent"."end_at" is null or "time_spent"."end_at" > "time_spent"."start_at"),
	CONSTRAINT "time_spent_typed_ends" CHECK("time_spent"."typed" = 0 or "time_spent"."end_at" is not null)
) STRICT;
--> statement-breakpoint
CREATE INDEX `time_spent_by_deliverable` ON `time_spent` (`deliverable_id`,`start_at`);--> statement-breakpoint
CREATE INDEX `time_spent_by_stage` ON `time_spent` (`stage_id`);--> statement-breakpoint
CREATE UNIQUE INDEX `time_spent_one_runs` ON `time_spent` (("end_at" is null)) WHERE "time_spent"."end_at" is null;
