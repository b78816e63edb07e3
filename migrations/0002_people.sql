CREATE TABLE `clients` (
	`id` text PRIMARY KEY NOT NULL,
	`name` text NOT NULL,
	`fields` text NOT NULL,
	`away_at` integer,
	`version` integer DEFAULT 1 NOT NULL,
	`created_at` integer NOT NULL,
	`updated_at` integer NOT NULL,
	CONSTRAINT "clients_fields_json" CHECK(json_valid("clients"."fields"))
) STRICT;
--> statement-breakpoint
CREATE INDEX `clients_by_name` ON `clients` (`name`);--> statement-breakpoint
CREATE TABLE `hands` (
	`id` text PRIMARY KEY NOT NULL,
	`name` text NOT NULL,
	`fields` text NOT NULL,
	`away_at` integer,
	`version` integer DEFAULT 1 NOT NULL,
	`created_at` integer NOT NULL,
	`updated_at` integer NOT NULL,
	CONSTRAINT "hands_fields_json" CHECK(json_valid("hands"."fields"))
) STRICT;
--> statement-breakpoint
CREATE INDEX `hands_by_name` ON `hands` (`name`);--> statement-breakpoint
ALTER TABLE `jobs` ADD `client_id` text REFERENCES clients(id);--> statement-breakpoint
ALTER TABLE `jobs` ADD `knows` text;--> statement-breakpoint
CREATE INDEX `jobs_by_client` ON `jobs` (`client_id`);
