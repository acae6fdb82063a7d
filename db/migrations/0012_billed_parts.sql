CREATE TABLE `handover_matter` (
	`id` text PRIMARY KEY NOT NULL,
	`job_id` text NOT NULL,
	`matter` text NOT NULL,
	`says` text NOT NULL,
	`items` text NOT NULL,
	`reason` text NOT NULL,
	`by` text NOT NULL,
	`at` text NOT NULL,
	FOREIGN KEY (`job_id`) REFERENCES `job`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `handover_matter_job` ON `handover_matter` (`job_id`);--> statement-breakpoint
CREATE TABLE `part_from_elsewhere` (
	`id` text PRIMARY KEY NOT NULL,
	`job_id` text NOT NULL,
	`part_id` text NOT NULL,
	`quantity` integer NOT NULL,
	`reason` text NOT NULL,
	`by` text NOT NULL,
	`at` text NOT NULL,
	FOREIGN KEY (`job_id`) REFERENCES `job`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`part_id`) REFERENCES `part`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `part_from_elsewhere_job` ON `part_from_elsewhere` (`job_id`);--> statement-breakpoint
ALTER TABLE `job` ADD `parts_to_issue` integer DEFAULT false NOT NULL;--> statement-breakpoint
CREATE INDEX `job_parts_to_issue` ON `job` (`id`) WHERE "job"."parts_to_issue" = 1;
--> statement-breakpoint
-- Jobs that are billed and still here are looked at; those that went home before this was kept are left alone.
UPDATE job SET parts_to_issue = 1 WHERE state <> 'handed-over' AND EXISTS (
  SELECT 1 FROM invoice WHERE invoice.job_id = job.id AND invoice.sort <> 'storage'
);
--> statement-breakpoint
-- As in 0001: what was passed over and what came from elsewhere is never edited or removed.
CREATE TRIGGER handover_matter_no_update BEFORE UPDATE ON handover_matter BEGIN SELECT RAISE(ABORT, 'append-only: handover_matter'); END;
--> statement-breakpoint
CREATE TRIGGER handover_matter_no_delete BEFORE DELETE ON handover_matter BEGIN SELECT RAISE(ABORT, 'append-only: handover_matter'); END;
--> statement-breakpoint
CREATE TRIGGER part_from_elsewhere_no_update BEFORE UPDATE ON part_from_elsewhere BEGIN SELECT RAISE(ABORT, 'append-only: part_from_elsewhere'); END;
--> statement-breakpoint
CREATE TRIGGER part_from_elsewhere_no_delete BEFORE DELETE ON part_from_elsewhere BEGIN SELECT RAISE(ABORT, 'append-only: part_from_elsewhere'); END;
