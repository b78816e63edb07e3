ALTER TABLE `hand_overs` ADD `originals_gone_why` text DEFAULT '' NOT NULL;--> statement-breakpoint
ALTER TABLE `hand_overs` ADD `message_subject` text DEFAULT '' NOT NULL;--> statement-breakpoint
ALTER TABLE `hand_overs` ADD `message_text` text DEFAULT '' NOT NULL;--> statement-breakpoint
ALTER TABLE `hand_overs` ADD `taken_back_at` integer;--> statement-breakpoint
ALTER TABLE `hand_overs` ADD `taken_back_why` text DEFAULT '' NOT NULL;
