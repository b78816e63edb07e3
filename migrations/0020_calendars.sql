CREATE TABLE `calendar_out` (
	`id` integer PRIMARY KEY NOT NULL,
	`folder` text NOT NULL,
	`is_on` integer NOT NULL,
	`feed_port` integer,
	`feed_key` text,
	`written_at` integer,
	`written_hash` text,
	`trouble` text,
	`feed_trouble` text,
	`version` integer DEFAULT 1 NOT NULL,
	`updated_at` integer NOT NULL,
	CONSTRAINT "calendar_out_one" CHECK("calendar_out"."id" = 1),
	CONSTRAINT "calendar_out_feed" CHECK("calendar_out"."feed_key" is null or "calendar_out"."feed_port" is not null),
	CONSTRAINT "calendar_out_port" CHECK("calendar_out"."feed_port" is null or "calendar_out"."feed_port" between 1024 and 65535),
	CONSTRAINT "calendar_out_json" CHECK(("calendar_out"."trouble" is null or json_valid("calendar_out"."trouble")) and ("calendar_out"."feed_trouble" is null or json_valid("calendar_out"."feed_trouble")))
) STRICT;
--> statement-breakpoint
CREATE TABLE `calendars` (
	`id` text PRIMARY KEY NOT NULL,
	`name` text NOT NULL,
	`path` text NOT NULL,
	`zone` text NOT NULL,
	`hardness` text NOT NULL,
	`is_on` integer NOT NULL,
	`version` integer DEFAULT 1 NOT NULL,
	`updated_at` integer NOT NULL,
	`read_at` integer,
	`stamp` text,
	`read_from` integer,
	`events` integer DEFAULT 0 NOT NULL,
	`left_out` text DEFAULT '[]' NOT NULL,
	`trouble` text,
	`trouble_at` integer,
	CONSTRAINT "calendars_hardness" CHECK("calendars"."hardness" in ('never', 'settle', 'ignore all-day')),
	CONSTRAINT "calendars_read_whole" CHECK(("calendars"."read_at" is null) = ("calendars"."stamp" is null) and ("calendars"."read_at" is null) = ("calendars"."read_from" is null)),
	CONSTRAINT "calendars_trouble_whole" CHECK(("calendars"."trouble" is null) = ("calendars"."trouble_at" is null)),
	CONSTRAINT "calendars_json" CHECK(json_valid("calendars"."left_out") and ("calendars"."trouble" is null or json_valid("calendars"."trouble")))
) STRICT;
--> statement-breakpoint
CREATE TABLE `exported_events` (
	`uid` text PRIMARY KEY NOT NULL,
	`sequence` integer NOT NULL,
	`event` text NOT NULL,
	`changed_at` integer NOT NULL,
	CONSTRAINT "exported_events_sequence" CHECK("exported_events"."sequence" >= 0),
	CONSTRAINT "exported_events_json" CHECK(json_valid("exported_events"."event"))
) STRICT;
--> statement-breakpoint
CREATE TABLE `imported_events` (
	`calendar_id` text NOT NULL,
	`number` integer NOT NULL,
	`uid` text NOT NULL,
	`title` text NOT NULL,
	`start_at` integer NOT NULL,
	`end_at` integer NOT NULL,
	`is_all_day` integer NOT NULL,
	`is_tentative` integer NOT NULL,
	PRIMARY KEY(`calendar_id`, `number`),
	FOREIGN KEY (`calendar_id`) REFERENCES `calendars`(`id`) ON UPDATE no action ON DELETE cascade,
	CONSTRAINT "imported_events_end_after_start" CHECK("imported_events"."end_at" > "imported_events"."start_at"),
	CONSTRAINT "imported_events_longest" CHECK("imported_events"."end_at" - "imported_events"."start_at" <= 8640000000)
) STRICT;
--> statement-breakpoint
CREATE INDEX `imported_events_by_time` ON `imported_events` (`start_at`,`end_at`);
