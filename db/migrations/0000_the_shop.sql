CREATE TABLE `gauge` (
	`id` text PRIMARY KEY NOT NULL,
	`name` text NOT NULL,
	`kind` text NOT NULL,
	`unit` text NOT NULL,
	`range_low` real NOT NULL,
	`range_high` real NOT NULL,
	`resolution` real NOT NULL,
	`max_error` real NOT NULL,
	`calibrated_on` text,
	`calibration_due` text,
	`certificate` text NOT NULL
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `gauge_name` ON `gauge` (`name`);--> statement-breakpoint
CREATE TABLE `hold_point_event` (
	`id` text PRIMARY KEY NOT NULL,
	`job_id` text NOT NULL,
	`key` text NOT NULL,
	`outcome` text NOT NULL,
	`reason` text NOT NULL,
	`by` text NOT NULL,
	`at` text NOT NULL,
	FOREIGN KEY (`job_id`) REFERENCES `job`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `hold_point_event_job` ON `hold_point_event` (`job_id`);--> statement-breakpoint
CREATE TABLE `reading` (
	`id` text PRIMARY KEY NOT NULL,
	`job_id` text NOT NULL,
	`engine_id` text NOT NULL,
	`feature` text NOT NULL,
	`place` text NOT NULL,
	`place_label` text NOT NULL,
	`phase` text NOT NULL,
	`text` text NOT NULL,
	`unit` text NOT NULL,
	`value` real NOT NULL,
	`value_base` real NOT NULL,
	`gauge_id` text,
	`gauge_remark` text NOT NULL,
	`uncertainty_base` real NOT NULL,
	`temperature` real,
	`specification_id` text,
	`low` real,
	`high` real,
	`verdict` text NOT NULL,
	`conformance` real,
	`slip_kind` text,
	`slip_likely` real,
	`by` text NOT NULL,
	`at` text NOT NULL,
	`supersedes` text,
	FOREIGN KEY (`job_id`) REFERENCES `job`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`engine_id`) REFERENCES `engine`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`gauge_id`) REFERENCES `gauge`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`specification_id`) REFERENCES `specification`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `reading_job` ON `reading` (`job_id`);--> statement-breakpoint
CREATE INDEX `reading_engine` ON `reading` (`engine_id`,`feature`);--> statement-breakpoint
CREATE UNIQUE INDEX `reading_supersedes` ON `reading` (`supersedes`);--> statement-breakpoint
CREATE TABLE `customer` (
	`id` text PRIMARY KEY NOT NULL,
	`number` integer NOT NULL,
	`name` text NOT NULL,
	`phone` text NOT NULL,
	`phone_international` text NOT NULL,
	`email` text NOT NULL,
	`address` text NOT NULL,
	`reach_by` text NOT NULL,
	`note` text NOT NULL,
	`since` text NOT NULL,
	`search_text` text NOT NULL
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `customer_number` ON `customer` (`number`);--> statement-breakpoint
CREATE TABLE `engine` (
	`id` text PRIMARY KEY NOT NULL,
	`machine_id` text NOT NULL,
	`make` text NOT NULL,
	`model` text NOT NULL,
	`type_code` text NOT NULL,
	`serial` text NOT NULL,
	`date_code` text NOT NULL,
	`engine_model_id` text,
	FOREIGN KEY (`machine_id`) REFERENCES `machine`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`engine_model_id`) REFERENCES `engine_model`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `engine_machine` ON `engine` (`machine_id`);--> statement-breakpoint
CREATE TABLE `job` (
	`id` text PRIMARY KEY NOT NULL,
	`number` integer NOT NULL,
	`customer_id` text NOT NULL,
	`machine_id` text NOT NULL,
	`engine_id` text NOT NULL,
	`state` text NOT NULL,
	`state_since` text NOT NULL,
	`state_note` text NOT NULL,
	`complaint` text NOT NULL,
	`symptoms` text NOT NULL,
	`condition` text NOT NULL,
	`left_with` text NOT NULL,
	`fuel` text NOT NULL,
	`last_service` text NOT NULL,
	`reach_by` text NOT NULL,
	`diagnosis_fee` integer,
	`spending_limit` integer,
	`deposit_agreed` integer,
	`promised_for` text,
	`taken_in_at` text NOT NULL,
	`taken_in_on` text NOT NULL,
	`taken_in_by` text NOT NULL,
	`intake_signature` text NOT NULL,
	`work_done` text NOT NULL,
	`search_text` text NOT NULL,
	FOREIGN KEY (`customer_id`) REFERENCES `customer`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`machine_id`) REFERENCES `machine`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`engine_id`) REFERENCES `engine`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`taken_in_by`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `job_number` ON `job` (`number`);--> statement-breakpoint
CREATE INDEX `job_customer` ON `job` (`customer_id`);--> statement-breakpoint
CREATE INDEX `job_machine` ON `job` (`machine_id`);--> statement-breakpoint
CREATE INDEX `job_state` ON `job` (`state`,`promised_for`);--> statement-breakpoint
CREATE TABLE `job_move` (
	`id` text PRIMARY KEY NOT NULL,
	`job_id` text NOT NULL,
	`to_state` text NOT NULL,
	`at` text NOT NULL,
	`by` text NOT NULL,
	`note` text NOT NULL,
	FOREIGN KEY (`job_id`) REFERENCES `job`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `job_move_job` ON `job_move` (`job_id`);--> statement-breakpoint
CREATE TABLE `machine` (
	`id` text PRIMARY KEY NOT NULL,
	`customer_id` text NOT NULL,
	`kind` text NOT NULL,
	`make` text NOT NULL,
	`model` text NOT NULL,
	`serial` text NOT NULL,
	`serial_key` text,
	`search_text` text NOT NULL,
	FOREIGN KEY (`customer_id`) REFERENCES `customer`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `machine_customer` ON `machine` (`customer_id`);--> statement-breakpoint
CREATE UNIQUE INDEX `machine_serial` ON `machine` (`serial_key`);--> statement-breakpoint
CREATE TABLE `counter_number` (
	`kind` text PRIMARY KEY NOT NULL,
	`next` integer NOT NULL
) STRICT;
--> statement-breakpoint
CREATE TABLE `issued_paper` (
	`id` text PRIMARY KEY NOT NULL,
	`kind` text NOT NULL,
	`number` text NOT NULL,
	`job_id` text NOT NULL,
	`title` text NOT NULL,
	`file_name` text NOT NULL,
	`content` text NOT NULL,
	`fingerprint` text NOT NULL,
	`pdf` blob NOT NULL,
	`pdf_sha256` text NOT NULL,
	`issued_at` text NOT NULL,
	`issued_by` text NOT NULL,
	FOREIGN KEY (`issued_by`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `issued_paper_number` ON `issued_paper` (`kind`,`number`);--> statement-breakpoint
CREATE INDEX `issued_paper_job` ON `issued_paper` (`job_id`);--> statement-breakpoint
CREATE TABLE `journal` (
	`seq` integer PRIMARY KEY NOT NULL,
	`at` text NOT NULL,
	`by` text NOT NULL,
	`what` text NOT NULL,
	`detail` text NOT NULL,
	`previous` text NOT NULL,
	`hash` text NOT NULL
) STRICT;
--> statement-breakpoint
CREATE TABLE `shop` (
	`only` integer PRIMARY KEY NOT NULL,
	`name` text NOT NULL,
	`address` text NOT NULL,
	`phone` text NOT NULL,
	`email` text NOT NULL,
	`tax_number` text NOT NULL,
	`currency` text NOT NULL,
	`locale` text NOT NULL,
	`time_zone` text NOT NULL,
	`country` text NOT NULL,
	`paper_size` text NOT NULL,
	`rounding` text NOT NULL,
	`tax_basis` text NOT NULL,
	`taxes` text NOT NULL,
	`labour_rate` integer NOT NULL,
	`both_units` integer NOT NULL,
	`warranty` text NOT NULL,
	`claim_terms` text NOT NULL,
	`estimate_terms` text NOT NULL,
	`invoice_terms` text NOT NULL,
	`demo` integer NOT NULL
) STRICT;
--> statement-breakpoint
CREATE TABLE `staff` (
	`id` text PRIMARY KEY NOT NULL,
	`name` text NOT NULL,
	`role` text NOT NULL,
	`active` integer NOT NULL
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `staff_name` ON `staff` (`name`);--> statement-breakpoint
CREATE TABLE `part` (
	`id` text PRIMARY KEY NOT NULL,
	`number` text NOT NULL,
	`number_key` text NOT NULL,
	`description` text NOT NULL,
	`bin` text NOT NULL,
	`unit` text NOT NULL,
	`price` integer NOT NULL,
	`cost` integer NOT NULL,
	`barcode` text NOT NULL,
	`supplier` text NOT NULL,
	`reorder_point` integer NOT NULL,
	`search_text` text NOT NULL
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `part_number` ON `part` (`number_key`);--> statement-breakpoint
CREATE TABLE `stock_movement` (
	`id` text PRIMARY KEY NOT NULL,
	`part_id` text NOT NULL,
	`kind` text NOT NULL,
	`quantity` integer NOT NULL,
	`job_id` text,
	`reason` text NOT NULL,
	`by` text NOT NULL,
	`at` text NOT NULL,
	FOREIGN KEY (`part_id`) REFERENCES `part`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`job_id`) REFERENCES `job`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `stock_movement_part` ON `stock_movement` (`part_id`);--> statement-breakpoint
CREATE TABLE `confirmation` (
	`id` text PRIMARY KEY NOT NULL,
	`specification_id` text NOT NULL,
	`source_id` text NOT NULL,
	`page` text NOT NULL,
	`by` text NOT NULL,
	`at` text NOT NULL,
	FOREIGN KEY (`specification_id`) REFERENCES `specification`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`source_id`) REFERENCES `source`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `confirmation_specification` ON `confirmation` (`specification_id`);--> statement-breakpoint
CREATE TABLE `engine_model` (
	`id` text PRIMARY KEY NOT NULL,
	`make` text NOT NULL,
	`model` text NOT NULL,
	`cycle` text NOT NULL,
	`cylinders` integer NOT NULL,
	`bore` real,
	`stroke` real,
	`note` text NOT NULL,
	`model_key` text NOT NULL,
	`search_text` text NOT NULL
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `engine_model_key` ON `engine_model` (`model_key`);--> statement-breakpoint
CREATE TABLE `source` (
	`id` text PRIMARY KEY NOT NULL,
	`kind` text NOT NULL,
	`title` text NOT NULL,
	`edition` text NOT NULL,
	`date` text
) STRICT;
--> statement-breakpoint
CREATE TABLE `specification` (
	`id` text PRIMARY KEY NOT NULL,
	`engine_model_id` text NOT NULL,
	`feature` text NOT NULL,
	`revision` integer NOT NULL,
	`low` text NOT NULL,
	`high` text NOT NULL,
	`aim` text NOT NULL,
	`wear_limit` text NOT NULL,
	`unit` text NOT NULL,
	`low_base` real,
	`high_base` real,
	`aim_base` real,
	`wear_limit_base` real,
	`condition` text NOT NULL,
	`source_id` text NOT NULL,
	`page` text NOT NULL,
	`fastener` text,
	`entered_by` text NOT NULL,
	`entered_at` text NOT NULL,
	FOREIGN KEY (`engine_model_id`) REFERENCES `engine_model`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`source_id`) REFERENCES `source`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`entered_by`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `specification_revision` ON `specification` (`engine_model_id`,`feature`,`revision`);--> statement-breakpoint
CREATE TABLE `approval` (
	`id` text PRIMARY KEY NOT NULL,
	`job_id` text NOT NULL,
	`estimate_id` text NOT NULL,
	`how` text NOT NULL,
	`approved_by` text NOT NULL,
	`amount` integer NOT NULL,
	`signature` text,
	`by` text NOT NULL,
	`at` text NOT NULL,
	FOREIGN KEY (`job_id`) REFERENCES `job`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`estimate_id`) REFERENCES `estimate`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `approval_job` ON `approval` (`job_id`);--> statement-breakpoint
CREATE TABLE `estimate` (
	`id` text PRIMARY KEY NOT NULL,
	`number` text NOT NULL,
	`job_id` text NOT NULL,
	`revision` integer NOT NULL,
	`lines` text NOT NULL,
	`totals` text NOT NULL,
	`total` integer NOT NULL,
	`note` text NOT NULL,
	`valid_until` text,
	`paper_id` text NOT NULL,
	`by` text NOT NULL,
	`at` text NOT NULL,
	FOREIGN KEY (`job_id`) REFERENCES `job`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`paper_id`) REFERENCES `issued_paper`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `estimate_revision` ON `estimate` (`job_id`,`revision`);--> statement-breakpoint
CREATE TABLE `invoice` (
	`id` text PRIMARY KEY NOT NULL,
	`number` integer NOT NULL,
	`job_id` text NOT NULL,
	`lines` text NOT NULL,
	`totals` text NOT NULL,
	`total` integer NOT NULL,
	`currency` text NOT NULL,
	`note` text NOT NULL,
	`paper_id` text NOT NULL,
	`by` text NOT NULL,
	`at` text NOT NULL,
	FOREIGN KEY (`job_id`) REFERENCES `job`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`paper_id`) REFERENCES `issued_paper`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `invoice_number` ON `invoice` (`number`);--> statement-breakpoint
CREATE UNIQUE INDEX `invoice_job` ON `invoice` (`job_id`);--> statement-breakpoint
CREATE TABLE `payment` (
	`id` text PRIMARY KEY NOT NULL,
	`job_id` text NOT NULL,
	`kind` text NOT NULL,
	`method` text NOT NULL,
	`amount` integer NOT NULL,
	`currency` text NOT NULL,
	`by` text NOT NULL,
	`at` text NOT NULL,
	FOREIGN KEY (`job_id`) REFERENCES `job`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `payment_job` ON `payment` (`job_id`);