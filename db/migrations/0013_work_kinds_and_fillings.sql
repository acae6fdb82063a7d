ALTER TABLE `job_build` ADD `work` text;--> statement-breakpoint
ALTER TABLE `job_build` ADD `touched` text DEFAULT '[]' NOT NULL;--> statement-breakpoint
ALTER TABLE `job_build` ADD `work_reason` text DEFAULT '' NOT NULL;--> statement-breakpoint
ALTER TABLE `job` ADD `do_not_run` text DEFAULT '' NOT NULL;--> statement-breakpoint
ALTER TABLE `engine_model` ADD `valves` text;--> statement-breakpoint
ALTER TABLE `engine_model` ADD `oil_amount` real;--> statement-breakpoint
ALTER TABLE `engine_model` ADD `oil_grade` text DEFAULT '' NOT NULL;--> statement-breakpoint
ALTER TABLE `engine_model` ADD `fuel_ratio` real;--> statement-breakpoint
ALTER TABLE `engine_model` ADD `plug` text DEFAULT '' NOT NULL;