CREATE TABLE `build_sheet` (
	`id` text PRIMARY KEY NOT NULL,
	`engine_model_id` text,
	`revision` integer NOT NULL,
	`steps` text NOT NULL,
	`by` text NOT NULL,
	`at` text NOT NULL,
	FOREIGN KEY (`engine_model_id`) REFERENCES `engine_model`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `build_sheet_model` ON `build_sheet` (`engine_model_id`,`revision`);--> statement-breakpoint
CREATE TABLE `decision` (
	`id` text PRIMARY KEY NOT NULL,
	`job_id` text NOT NULL,
	`subject` text NOT NULL,
	`cylinder` integer NOT NULL,
	`choice` text NOT NULL,
	`step` real,
	`machine_to_low` real,
	`machine_to_high` real,
	`reason` text NOT NULL,
	`supersedes` text,
	`by` text NOT NULL,
	`at` text NOT NULL,
	FOREIGN KEY (`job_id`) REFERENCES `job`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `decision_job` ON `decision` (`job_id`);--> statement-breakpoint
CREATE UNIQUE INDEX `decision_supersedes` ON `decision` (`supersedes`);--> statement-breakpoint
CREATE TABLE `gauge_check` (
	`id` text PRIMARY KEY NOT NULL,
	`gauge_id` text NOT NULL,
	`checked_on` text NOT NULL,
	`good` integer NOT NULL,
	`certificate` text NOT NULL,
	`due_on` text,
	`note` text NOT NULL,
	`by` text NOT NULL,
	`at` text NOT NULL,
	FOREIGN KEY (`gauge_id`) REFERENCES `gauge`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `gauge_check_gauge` ON `gauge_check` (`gauge_id`);--> statement-breakpoint
CREATE TABLE `job_build` (
	`job_id` text PRIMARY KEY NOT NULL,
	`build_sheet_id` text,
	`steps` text NOT NULL,
	`at` text NOT NULL,
	FOREIGN KEY (`job_id`) REFERENCES `job`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`build_sheet_id`) REFERENCES `build_sheet`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE TABLE `photo` (
	`id` text PRIMARY KEY NOT NULL,
	`job_id` text NOT NULL,
	`subject` text NOT NULL,
	`caption` text NOT NULL,
	`media_type` text NOT NULL,
	`bytes` blob NOT NULL,
	`sha256` text NOT NULL,
	`by` text NOT NULL,
	`at` text NOT NULL,
	FOREIGN KEY (`job_id`) REFERENCES `job`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `photo_job` ON `photo` (`job_id`);--> statement-breakpoint
CREATE TABLE `test_run` (
	`id` text PRIMARY KEY NOT NULL,
	`job_id` text NOT NULL,
	`findings` text NOT NULL,
	`passed` integer NOT NULL,
	`by` text NOT NULL,
	`at` text NOT NULL,
	FOREIGN KEY (`job_id`) REFERENCES `job`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `test_run_job` ON `test_run` (`job_id`);--> statement-breakpoint
CREATE TABLE `torque_pull` (
	`id` text PRIMARY KEY NOT NULL,
	`job_id` text NOT NULL,
	`feature` text NOT NULL,
	`round` integer NOT NULL,
	`stage` integer NOT NULL,
	`bolt` integer NOT NULL,
	`gauge_id` text,
	`setting` real NOT NULL,
	`setting_unit` text NOT NULL,
	`extension` real NOT NULL,
	`angle` real NOT NULL,
	`by` text NOT NULL,
	`at` text NOT NULL,
	FOREIGN KEY (`job_id`) REFERENCES `job`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`gauge_id`) REFERENCES `gauge`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `torque_pull_job` ON `torque_pull` (`job_id`);--> statement-breakpoint
CREATE TABLE `contradiction` (
	`id` text PRIMARY KEY NOT NULL,
	`specification_id` text NOT NULL,
	`source_id` text NOT NULL,
	`page` text NOT NULL,
	`low` text NOT NULL,
	`high` text NOT NULL,
	`unit` text NOT NULL,
	`low_base` real,
	`high_base` real,
	`by` text NOT NULL,
	`at` text NOT NULL,
	FOREIGN KEY (`specification_id`) REFERENCES `specification`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`source_id`) REFERENCES `source`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `contradiction_specification` ON `contradiction` (`specification_id`);--> statement-breakpoint
CREATE TABLE `source_file` (
	`id` text PRIMARY KEY NOT NULL,
	`source_id` text NOT NULL,
	`file_name` text NOT NULL,
	`media_type` text NOT NULL,
	`bytes` blob NOT NULL,
	`sha256` text NOT NULL,
	`by` text NOT NULL,
	`at` text NOT NULL,
	FOREIGN KEY (`source_id`) REFERENCES `source`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `source_file_source` ON `source_file` (`source_id`);--> statement-breakpoint
ALTER TABLE `hold_point_event` ADD `detail` text DEFAULT '' NOT NULL;--> statement-breakpoint
ALTER TABLE `reading` ADD `position` text;--> statement-breakpoint
ALTER TABLE `job` ADD `engine_hours` real;--> statement-breakpoint
ALTER TABLE `engine_model` ADD `variant_of` text REFERENCES engine_model(id);