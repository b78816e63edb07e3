CREATE TABLE `documents` (
	`id` text PRIMARY KEY NOT NULL,
	`kind` text NOT NULL,
	`hand_id` text,
	`until` text,
	`fields` text NOT NULL,
	`scan_id` text,
	`version` integer DEFAULT 1 NOT NULL,
	`created_at` integer NOT NULL,
	`updated_at` integer NOT NULL,
	FOREIGN KEY (`hand_id`) REFERENCES `hands`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`scan_id`) REFERENCES `papers`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "documents_fields_json" CHECK(json_valid("documents"."fields")),
	CONSTRAINT "documents_kind" CHECK("documents"."kind" in ('passport', 'identity card', 'right to work', 'liability insurance', 'equipment insurance', 'driving licence', 'remote pilot licence', 'vehicle', 'carnet', 'other'))
) STRICT;
--> statement-breakpoint
CREATE INDEX `documents_by_until` ON `documents` (`until`);--> statement-breakpoint
CREATE INDEX `documents_by_hand` ON `documents` (`hand_id`);
