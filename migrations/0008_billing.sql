CREATE TABLE `expenses` (
	`id` text PRIMARY KEY NOT NULL,
	`job_id` text,
	`on_date` text NOT NULL,
	`category` text NOT NULL,
	`what` text NOT NULL,
	`amount_minor` integer NOT NULL,
	`currency` text NOT NULL,
	`rate` text,
	`rate_date` text,
	`mark_up_percent` text DEFAULT '0' NOT NULL,
	`billed` integer NOT NULL,
	`taxes` text,
	`receipt_id` text,
	`version` integer DEFAULT 1 NOT NULL,
	`created_at` integer NOT NULL,
	`updated_at` integer NOT NULL,
	FOREIGN KEY (`job_id`) REFERENCES `jobs`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`receipt_id`) REFERENCES `papers`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "expenses_amount" CHECK("expenses"."amount_minor" > 0),
	CONSTRAINT "expenses_currency" CHECK(length("expenses"."currency") = 3),
	CONSTRAINT "expenses_rate_whole" CHECK(("expenses"."rate" is null) = ("expenses"."rate_date" is null)),
	CONSTRAINT "expenses_category" CHECK("expenses"."category" in ('travel', 'lodging', 'meals', 'parking', 'sub-hire', 'consumables', 'fees', 'other')),
	CONSTRAINT "expenses_billed_for_a_job" CHECK("expenses"."billed" = 0 or "expenses"."job_id" is not null)
) STRICT;
--> statement-breakpoint
CREATE INDEX `expenses_by_job` ON `expenses` (`job_id`,`on_date`);--> statement-breakpoint
CREATE INDEX `expenses_by_date` ON `expenses` (`on_date`);--> statement-breakpoint
CREATE TABLE `hand_payments` (
	`id` text PRIMARY KEY NOT NULL,
	`job_id` text NOT NULL,
	`hand_id` text NOT NULL,
	`amount_minor` integer NOT NULL,
	`currency` text NOT NULL,
	`on_date` text NOT NULL,
	`how` text DEFAULT '' NOT NULL,
	`made_at` integer NOT NULL,
	FOREIGN KEY (`job_id`) REFERENCES `jobs`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`hand_id`) REFERENCES `hands`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "hand_payments_amount" CHECK("hand_payments"."amount_minor" <> 0),
	CONSTRAINT "hand_payments_currency" CHECK(length("hand_payments"."currency") = 3)
) STRICT;
--> statement-breakpoint
CREATE INDEX `hand_payments_by_job` ON `hand_payments` (`job_id`,`hand_id`);--> statement-breakpoint
CREATE TABLE `overtime_asks` (
	`id` text PRIMARY KEY NOT NULL,
	`job_id` text NOT NULL,
	`date` text NOT NULL,
	`minutes` integer NOT NULL,
	`asked_at` integer NOT NULL,
	`state` text NOT NULL,
	`who` text DEFAULT '' NOT NULL,
	`at` integer,
	`how` text DEFAULT '' NOT NULL,
	FOREIGN KEY (`job_id`) REFERENCES `jobs`(`id`) ON UPDATE no action ON DELETE cascade,
	CONSTRAINT "overtime_asks_minutes" CHECK("overtime_asks"."minutes" between 1 and 1440),
	CONSTRAINT "overtime_asks_state" CHECK("overtime_asks"."state" in ('asked', 'approved', 'refused')),
	CONSTRAINT "overtime_asks_settled" CHECK(("overtime_asks"."state" = 'asked') = ("overtime_asks"."at" is null))
) STRICT;
--> statement-breakpoint
CREATE INDEX `overtime_asks_by_job` ON `overtime_asks` (`job_id`,`date`);--> statement-breakpoint
CREATE TABLE `worked_days` (
	`id` text PRIMARY KEY NOT NULL,
	`job_id` text NOT NULL,
	`hand_id` text,
	`date` text NOT NULL,
	`kind` text NOT NULL,
	`zone` text NOT NULL,
	`call` text NOT NULL,
	`wrap` text,
	`call_at` integer NOT NULL,
	`wrap_at` integer,
	`unpaid_break_minutes` integer DEFAULT 0 NOT NULL,
	`note` text DEFAULT '' NOT NULL,
	`version` integer DEFAULT 1 NOT NULL,
	`created_at` integer NOT NULL,
	`updated_at` integer NOT NULL,
	FOREIGN KEY (`job_id`) REFERENCES `jobs`(`id`) ON UPDATE no action ON DELETE cascade,
	FOREIGN KEY (`hand_id`) REFERENCES `hands`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "worked_days_wrap_whole" CHECK(("worked_days"."wrap" is null) = ("worked_days"."wrap_at" is null)),
	CONSTRAINT "worked_days_end_after_start" CHECK("worked_days"."wrap_at" is null or "worked_days"."wrap_at" > "worked_days"."call_at"),
	CONSTRAINT "worked_days_length" CHECK("worked_days"."wrap_at" is null or "worked_days"."wrap_at" - "worked_days"."call_at" <= 86400000),
	CONSTRAINT "worked_days_breaks" CHECK("worked_days"."unpaid_break_minutes" >= 0),
	CONSTRAINT "worked_days_kind" CHECK("worked_days"."kind" in ('shoot', 'half', 'travel', 'prep', 'standby', 'edit'))
) STRICT;
--> statement-breakpoint
CREATE INDEX `worked_days_by_job` ON `worked_days` (`job_id`,`call_at`);--> statement-breakpoint
CREATE UNIQUE INDEX `worked_days_mine` ON `worked_days` (`job_id`,`call_at`) WHERE "worked_days"."hand_id" is null;--> statement-breakpoint
CREATE UNIQUE INDEX `worked_days_of_hands` ON `worked_days` (`job_id`,`hand_id`,`call_at`);--> statement-breakpoint
CREATE TABLE `amendments` (
	`id` text PRIMARY KEY NOT NULL,
	`job_id` text NOT NULL,
	`what` text NOT NULL,
	`who` text NOT NULL,
	`at` integer NOT NULL,
	`how` text NOT NULL,
	`made_at` integer NOT NULL,
	FOREIGN KEY (`job_id`) REFERENCES `jobs`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `amendments_by_job` ON `amendments` (`job_id`,`at`);--> statement-breakpoint
CREATE TABLE `invoice_drafts` (
	`job_id` text NOT NULL,
	`kind` text NOT NULL,
	`changes` text NOT NULL,
	`draft_version` integer DEFAULT 1 NOT NULL,
	`updated_at` integer NOT NULL,
	PRIMARY KEY(`job_id`, `kind`),
	FOREIGN KEY (`job_id`) REFERENCES `jobs`(`id`) ON UPDATE no action ON DELETE cascade
) STRICT;
--> statement-breakpoint
CREATE TABLE `invoice_notes` (
	`id` text PRIMARY KEY NOT NULL,
	`invoice_id` text NOT NULL,
	`kind` text NOT NULL,
	`on_date` text NOT NULL,
	`at` integer NOT NULL,
	`words` text DEFAULT '' NOT NULL,
	FOREIGN KEY (`invoice_id`) REFERENCES `invoices`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "invoice_notes_kind" CHECK("invoice_notes"."kind" in ('reminded', 'disputed', 'settled', 'written off'))
) STRICT;
--> statement-breakpoint
CREATE INDEX `invoice_notes_by_invoice` ON `invoice_notes` (`invoice_id`,`at`);--> statement-breakpoint
CREATE TABLE `invoices` (
	`id` text PRIMARY KEY NOT NULL,
	`kind` text NOT NULL,
	`series` text NOT NULL,
	`year` integer NOT NULL,
	`sequence` integer NOT NULL,
	`number` text NOT NULL,
	`job_id` text,
	`client_id` text,
	`issued_at` integer NOT NULL,
	`issue_date` text NOT NULL,
	`due_date` text NOT NULL,
	`currency` text NOT NULL,
	`rate` text,
	`rate_date` text,
	`net_minor` integer NOT NULL,
	`tax_minor` integer NOT NULL,
	`gross_minor` integer NOT NULL,
	`to_pay_minor` integer NOT NULL,
	`content` text NOT NULL,
	`paper_id` text NOT NULL,
	`credits_id` text,
	FOREIGN KEY (`job_id`) REFERENCES `jobs`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`client_id`) REFERENCES `clients`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`paper_id`) REFERENCES `papers`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`credits_id`) REFERENCES `invoices`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "invoices_kind" CHECK("invoices"."kind" in ('deposit', 'final', 'instalment', 'cancellation', 'credit note')),
	CONSTRAINT "invoices_from_one" CHECK("invoices"."sequence" >= 1),
	CONSTRAINT "invoices_currency" CHECK(length("invoices"."currency") = 3),
	CONSTRAINT "invoices_sum" CHECK("invoices"."net_minor" + "invoices"."tax_minor" = "invoices"."gross_minor"),
	CONSTRAINT "invoices_credit" CHECK(("invoices"."kind" = 'credit note') = ("invoices"."credits_id" is not null)),
	CONSTRAINT "invoices_rate_whole" CHECK(("invoices"."rate" is null) = ("invoices"."rate_date" is null)),
	CONSTRAINT "invoices_due" CHECK("invoices"."due_date" >= "invoices"."issue_date"),
	CONSTRAINT "invoices_content_json" CHECK(json_valid("invoices"."content"))
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `invoices_sequence` ON `invoices` (`series`,`year`,`sequence`);--> statement-breakpoint
CREATE UNIQUE INDEX `invoices_number` ON `invoices` (`number`);--> statement-breakpoint
CREATE INDEX `invoices_by_job` ON `invoices` (`job_id`,`issued_at`);--> statement-breakpoint
CREATE INDEX `invoices_by_client` ON `invoices` (`client_id`,`issued_at`);--> statement-breakpoint
CREATE INDEX `invoices_by_due` ON `invoices` (`due_date`);--> statement-breakpoint
CREATE INDEX `invoices_by_credit` ON `invoices` (`credits_id`);--> statement-breakpoint
CREATE TABLE `payment_parts` (
	`id` text PRIMARY KEY NOT NULL,
	`payment_id` text NOT NULL,
	`invoice_id` text,
	`amount_minor` integer NOT NULL,
	`currency` text NOT NULL,
	`gain_minor` integer,
	`gain_currency` text,
	FOREIGN KEY (`payment_id`) REFERENCES `payments`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`invoice_id`) REFERENCES `invoices`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "payment_parts_amount" CHECK("payment_parts"."amount_minor" <> 0),
	CONSTRAINT "payment_parts_currency" CHECK(length("payment_parts"."currency") = 3),
	CONSTRAINT "payment_parts_gain_whole" CHECK(("payment_parts"."gain_minor" is null) = ("payment_parts"."gain_currency" is null))
) STRICT;
--> statement-breakpoint
CREATE INDEX `payment_parts_by_payment` ON `payment_parts` (`payment_id`);--> statement-breakpoint
CREATE INDEX `payment_parts_by_invoice` ON `payment_parts` (`invoice_id`);--> statement-breakpoint
CREATE TABLE `payments` (
	`id` text PRIMARY KEY NOT NULL,
	`kind` text NOT NULL,
	`client_id` text,
	`on_date` text NOT NULL,
	`amount_minor` integer NOT NULL,
	`currency` text NOT NULL,
	`rate` text,
	`rate_date` text,
	`how` text DEFAULT '' NOT NULL,
	`note` text DEFAULT '' NOT NULL,
	`reverses_id` text,
	`made_at` integer NOT NULL,
	FOREIGN KEY (`client_id`) REFERENCES `clients`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`reverses_id`) REFERENCES `payments`(`id`) ON UPDATE no action ON DELETE no action,
	CONSTRAINT "payments_kind" CHECK("payments"."kind" in ('payment', 'refund', 'credit used', 'reversal')),
	CONSTRAINT "payments_currency" CHECK(length("payments"."currency") = 3),
	CONSTRAINT "payments_rate_whole" CHECK(("payments"."rate" is null) = ("payments"."rate_date" is null)),
	CONSTRAINT "payments_reversal" CHECK(("payments"."kind" = 'reversal') = ("payments"."reverses_id" is not null))
) STRICT;
--> statement-breakpoint
CREATE INDEX `payments_by_date` ON `payments` (`on_date`);--> statement-breakpoint
CREATE INDEX `payments_by_client` ON `payments` (`client_id`,`on_date`);--> statement-breakpoint
CREATE UNIQUE INDEX `payments_reversed_once` ON `payments` (`reverses_id`);
