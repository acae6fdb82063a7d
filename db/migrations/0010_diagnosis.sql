CREATE TABLE `finding` (
	`id` text PRIMARY KEY NOT NULL,
	`job_id` text NOT NULL,
	`checked` text NOT NULL,
	`found` text NOT NULL,
	`figures` text NOT NULL,
	`words` text NOT NULL,
	`work` text NOT NULL,
	`supersedes` text,
	`by` text NOT NULL,
	`at` text NOT NULL,
	FOREIGN KEY (`job_id`) REFERENCES `job`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `finding_job` ON `finding` (`job_id`);--> statement-breakpoint
CREATE UNIQUE INDEX `finding_supersedes` ON `finding` (`supersedes`);
--> statement-breakpoint
-- As in 0001: what was found is never edited or removed.
CREATE TRIGGER finding_no_update BEFORE UPDATE ON finding BEGIN SELECT RAISE(ABORT, 'append-only: finding'); END;
--> statement-breakpoint
CREATE TRIGGER finding_no_delete BEFORE DELETE ON finding BEGIN SELECT RAISE(ABORT, 'append-only: finding'); END;
