CREATE TABLE `application` (
	`id` text PRIMARY KEY NOT NULL,
	`job_id` text NOT NULL,
	`invoice_id` text NOT NULL,
	`amount` integer NOT NULL,
	`by` text NOT NULL,
	`at` text NOT NULL,
	FOREIGN KEY (`job_id`) REFERENCES `job`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`invoice_id`) REFERENCES `invoice`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `application_job` ON `application` (`job_id`);--> statement-breakpoint
CREATE INDEX `application_invoice` ON `application` (`invoice_id`);--> statement-breakpoint
CREATE TABLE `bundle` (
	`id` text PRIMARY KEY NOT NULL,
	`name` text NOT NULL,
	`note` text NOT NULL,
	`lines` text NOT NULL,
	`retired` integer NOT NULL
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `bundle_name` ON `bundle` (`name`);--> statement-breakpoint
CREATE TABLE `cash_up` (
	`id` text PRIMARY KEY NOT NULL,
	`day` text NOT NULL,
	`opening` integer NOT NULL,
	`expected` text NOT NULL,
	`counted` text NOT NULL,
	`difference` integer NOT NULL,
	`note` text NOT NULL,
	`by` text NOT NULL,
	`at` text NOT NULL,
	FOREIGN KEY (`by`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `cash_up_day` ON `cash_up` (`day`);--> statement-breakpoint
CREATE TABLE `clock_event` (
	`id` text PRIMARY KEY NOT NULL,
	`entry_id` text NOT NULL,
	`what` text NOT NULL,
	`staff_id` text NOT NULL,
	`job_id` text NOT NULL,
	`work_kind` text NOT NULL,
	`started_at` text NOT NULL,
	`ended_at` text,
	`reason` text NOT NULL,
	`by` text NOT NULL,
	`at` text NOT NULL,
	FOREIGN KEY (`staff_id`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`job_id`) REFERENCES `job`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `clock_event_entry` ON `clock_event` (`entry_id`);--> statement-breakpoint
CREATE INDEX `clock_event_job` ON `clock_event` (`job_id`);--> statement-breakpoint
CREATE INDEX `clock_event_staff` ON `clock_event` (`staff_id`,`started_at`);--> statement-breakpoint
CREATE TABLE `credit_note` (
	`id` text PRIMARY KEY NOT NULL,
	`number` integer NOT NULL,
	`job_id` text NOT NULL,
	`invoice_id` text NOT NULL,
	`lines` text NOT NULL,
	`line_indexes` text NOT NULL,
	`totals` text NOT NULL,
	`total` integer NOT NULL,
	`currency` text NOT NULL,
	`reason` text NOT NULL,
	`paper_id` text NOT NULL,
	`by` text NOT NULL,
	`at` text NOT NULL,
	FOREIGN KEY (`job_id`) REFERENCES `job`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`invoice_id`) REFERENCES `invoice`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`paper_id`) REFERENCES `issued_paper`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `credit_note_number` ON `credit_note` (`number`);--> statement-breakpoint
CREATE INDEX `credit_note_invoice` ON `credit_note` (`invoice_id`);--> statement-breakpoint
CREATE INDEX `credit_note_job` ON `credit_note` (`job_id`);--> statement-breakpoint
CREATE TABLE `customer_terms` (
	`customer_id` text PRIMARY KEY NOT NULL,
	`tax_place` text NOT NULL,
	`exempt_certificate` text NOT NULL,
	`exempt_until` text,
	`on_account` integer NOT NULL,
	`terms_days` integer NOT NULL,
	`credit_limit` integer,
	FOREIGN KEY (`customer_id`) REFERENCES `customer`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE TABLE `limit_override` (
	`id` text PRIMARY KEY NOT NULL,
	`job_id` text NOT NULL,
	`amount` integer NOT NULL,
	`reason` text NOT NULL,
	`by` text NOT NULL,
	`at` text NOT NULL,
	FOREIGN KEY (`job_id`) REFERENCES `job`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `limit_override_job` ON `limit_override` (`job_id`);--> statement-breakpoint
CREATE TABLE `receipt` (
	`id` text PRIMARY KEY NOT NULL,
	`number` integer NOT NULL,
	`customer_id` text NOT NULL,
	`kind` text NOT NULL,
	`method` text NOT NULL,
	`amount` integer NOT NULL,
	`given` integer,
	`change` integer NOT NULL,
	`reference` text NOT NULL,
	`currency` text NOT NULL,
	`paper_id` text NOT NULL,
	`by` text NOT NULL,
	`at` text NOT NULL,
	FOREIGN KEY (`customer_id`) REFERENCES `customer`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`paper_id`) REFERENCES `issued_paper`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `receipt_number` ON `receipt` (`number`);--> statement-breakpoint
CREATE INDEX `receipt_customer` ON `receipt` (`customer_id`);--> statement-breakpoint
CREATE TABLE `till_rules` (
	`only` integer PRIMARY KEY NOT NULL,
	`rules` text NOT NULL
) STRICT;
--> statement-breakpoint
DROP INDEX `invoice_job`;--> statement-breakpoint
ALTER TABLE `invoice` ADD `sort` text DEFAULT 'work' NOT NULL;--> statement-breakpoint
ALTER TABLE `invoice` ADD `declined` text DEFAULT '[]' NOT NULL;--> statement-breakpoint
ALTER TABLE `invoice` ADD `due_on` text;--> statement-breakpoint
ALTER TABLE `invoice` ADD `warranty_of` text REFERENCES job(id);--> statement-breakpoint
ALTER TABLE `invoice` ADD `reason` text DEFAULT '' NOT NULL;--> statement-breakpoint
CREATE INDEX `invoice_of_job` ON `invoice` (`job_id`);--> statement-breakpoint
ALTER TABLE `staff` ADD `hourly_cost` integer DEFAULT 0 NOT NULL;--> statement-breakpoint
ALTER TABLE `part` ADD `price_rule` text DEFAULT 'fixed' NOT NULL;--> statement-breakpoint
ALTER TABLE `part` ADD `list_price` integer;--> statement-breakpoint
ALTER TABLE `part` ADD `core_charge` integer DEFAULT 0 NOT NULL;--> statement-breakpoint
ALTER TABLE `approval` ADD `option` text DEFAULT 'a' NOT NULL;--> statement-breakpoint
ALTER TABLE `approval` ADD `declined` text DEFAULT '[]' NOT NULL;--> statement-breakpoint
ALTER TABLE `approval` ADD `note` text DEFAULT '' NOT NULL;--> statement-breakpoint
ALTER TABLE `estimate` ADD `options` text DEFAULT '[]' NOT NULL;--> statement-breakpoint
ALTER TABLE `payment` ADD `receipt_id` text REFERENCES receipt(id);--> statement-breakpoint
ALTER TABLE `payment` ADD `reference` text DEFAULT '' NOT NULL;