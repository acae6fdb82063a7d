ALTER TABLE `gauge` ADD `error_kind` text DEFAULT 'absolute' NOT NULL;--> statement-breakpoint
ALTER TABLE `gauge` ADD `repeatability` real DEFAULT 0 NOT NULL;--> statement-breakpoint
ALTER TABLE `gauge` ADD `setting_master` text DEFAULT '' NOT NULL;--> statement-breakpoint
ALTER TABLE `gauge` ADD `setting_error` real DEFAULT 0 NOT NULL;--> statement-breakpoint
ALTER TABLE `reading` ADD `slip_unit` text;--> statement-breakpoint
ALTER TABLE `reading` ADD `typed_text` text;--> statement-breakpoint
ALTER TABLE `reading` ADD `typed_unit` text;