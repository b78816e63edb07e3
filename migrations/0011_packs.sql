CREATE TABLE `job_packs` (
	`job_id` text NOT NULL,
	`item_id` text NOT NULL,
	`serial` text DEFAULT '' NOT NULL,
	`out` integer NOT NULL,
	`back` integer DEFAULT 0 NOT NULL,
	`missing` integer DEFAULT 0 NOT NULL,
	`updated_at` integer NOT NULL,
	PRIMARY KEY(`job_id`, `item_id`, `serial`),
	FOREIGN KEY (`job_id`) REFERENCES `jobs`(`id`) ON UPDATE no action ON DELETE cascade,
	FOREIGN KEY (`item_id`) REFERENCES `kit_items`(`id`) ON UPDATE no action ON DELETE cascade,
	CONSTRAINT "job_packs_counts" CHECK("job_packs"."out" > 0 and "job_packs"."back" >= 0 and "job_packs"."missing" >= 0 and "job_packs"."back" + "job_packs"."missing" <= "job_packs"."out"),
	CONSTRAINT "job_packs_unit" CHECK("job_packs"."serial" = '' or "job_packs"."out" = 1)
) STRICT;
--> statement-breakpoint
CREATE INDEX `job_packs_still_out` ON `job_packs` (`job_id`) WHERE "job_packs"."out" > "job_packs"."back" + "job_packs"."missing";
