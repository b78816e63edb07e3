CREATE TABLE `challenges` (
	`id` text PRIMARY KEY NOT NULL,
	`pencil_id` text NOT NULL,
	`asked_at` integer NOT NULL,
	`until_at` integer NOT NULL,
	`until_zone` text NOT NULL,
	FOREIGN KEY (`pencil_id`) REFERENCES `pencils`(`id`) ON UPDATE no action ON DELETE cascade,
	CONSTRAINT "challenges_until_after_asked" CHECK("challenges"."until_at" > "challenges"."asked_at")
) STRICT;
--> statement-breakpoint
CREATE INDEX `challenges_by_pencil` ON `challenges` (`pencil_id`,`asked_at`);--> statement-breakpoint
CREATE TABLE `job_kit` (
	`job_id` text NOT NULL,
	`item_id` text NOT NULL,
	`count` integer NOT NULL,
	PRIMARY KEY(`job_id`, `item_id`),
	FOREIGN KEY (`job_id`) REFERENCES `jobs`(`id`) ON UPDATE no action ON DELETE cascade,
	FOREIGN KEY (`item_id`) REFERENCES `kit_items`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "job_kit_count" CHECK("job_kit"."count" > 0)
) STRICT;
--> statement-breakpoint
CREATE INDEX `job_kit_by_item` ON `job_kit` (`item_id`);--> statement-breakpoint
CREATE TABLE `kit_items` (
	`id` text PRIMARY KEY NOT NULL,
	`name` text NOT NULL,
	`fields` text NOT NULL,
	`version` integer DEFAULT 1 NOT NULL,
	`created_at` integer NOT NULL,
	`updated_at` integer NOT NULL,
	CONSTRAINT "kit_items_fields_json" CHECK(json_valid("kit_items"."fields"))
) STRICT;
--> statement-breakpoint
CREATE INDEX `kit_items_by_name` ON `kit_items` (`name`);--> statement-breakpoint
CREATE TABLE `kit_presets` (
	`id` text PRIMARY KEY NOT NULL,
	`name` text NOT NULL,
	`needs` text NOT NULL,
	`version` integer DEFAULT 1 NOT NULL,
	`updated_at` integer NOT NULL,
	CONSTRAINT "kit_presets_needs_json" CHECK(json_valid("kit_presets"."needs"))
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `kit_presets_name_unique` ON `kit_presets` (`name`);--> statement-breakpoint
CREATE TABLE `personal_times` (
	`id` text PRIMARY KEY NOT NULL,
	`title` text NOT NULL,
	`from_wall` text NOT NULL,
	`to_wall` text NOT NULL,
	`zone` text NOT NULL,
	`start_at` integer NOT NULL,
	`end_at` integer NOT NULL,
	`hardness` text NOT NULL,
	`note` text DEFAULT '' NOT NULL,
	`version` integer DEFAULT 1 NOT NULL,
	`updated_at` integer NOT NULL,
	CONSTRAINT "personal_times_end_after_start" CHECK("personal_times"."end_at" > "personal_times"."start_at"),
	CONSTRAINT "personal_times_hardness" CHECK("personal_times"."hardness" in ('never', 'settle'))
) STRICT;
--> statement-breakpoint
CREATE INDEX `personal_times_by_end` ON `personal_times` (`end_at`,`start_at`);--> statement-breakpoint
CREATE TABLE `legs` (
	`id` text PRIMARY KEY NOT NULL,
	`job_id` text NOT NULL,
	`depart_at` integer NOT NULL,
	`arrive_at` integer NOT NULL,
	`fields` text NOT NULL,
	`version` integer DEFAULT 1 NOT NULL,
	`updated_at` integer NOT NULL,
	FOREIGN KEY (`job_id`) REFERENCES `jobs`(`id`) ON UPDATE no action ON DELETE cascade,
	CONSTRAINT "legs_arrive_after_depart" CHECK("legs"."arrive_at" > "legs"."depart_at"),
	CONSTRAINT "legs_fields_json" CHECK(json_valid("legs"."fields"))
) STRICT;
--> statement-breakpoint
CREATE INDEX `legs_by_job` ON `legs` (`job_id`,`depart_at`);
