CREATE TABLE `expected_change` (
	`id` text PRIMARY KEY NOT NULL,
	`line_id` text NOT NULL,
	`expected_on` text,
	`former` text,
	`reason` text NOT NULL,
	`by` text NOT NULL,
	`at` text NOT NULL,
	FOREIGN KEY (`line_id`) REFERENCES `purchase_order_line`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `expected_change_line` ON `expected_change` (`line_id`);--> statement-breakpoint
CREATE TABLE `intake_amendment` (
	`id` text PRIMARY KEY NOT NULL,
	`job_id` text NOT NULL,
	`reason` text NOT NULL,
	`former` text NOT NULL,
	`paper_id` text,
	`by` text NOT NULL,
	`at` text NOT NULL,
	FOREIGN KEY (`job_id`) REFERENCES `job`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`paper_id`) REFERENCES `issued_paper`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `intake_amendment_job` ON `intake_amendment` (`job_id`);--> statement-breakpoint
CREATE TABLE `job_promise` (
	`id` text PRIMARY KEY NOT NULL,
	`job_id` text NOT NULL,
	`promised_for` text NOT NULL,
	`former` text,
	`reason` text NOT NULL,
	`by` text NOT NULL,
	`at` text NOT NULL,
	FOREIGN KEY (`job_id`) REFERENCES `job`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `job_promise_job` ON `job_promise` (`job_id`);--> statement-breakpoint
CREATE TABLE `promise_told` (
	`id` text PRIMARY KEY NOT NULL,
	`promise_id` text NOT NULL,
	`how` text NOT NULL,
	`by` text NOT NULL,
	`at` text NOT NULL,
	FOREIGN KEY (`promise_id`) REFERENCES `job_promise`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `promise_told_promise` ON `promise_told` (`promise_id`);--> statement-breakpoint
CREATE TABLE `answered_request` (
	`key` text PRIMARY KEY NOT NULL,
	`what` text NOT NULL,
	`answer` text NOT NULL,
	`at` text NOT NULL
) STRICT;
--> statement-breakpoint
CREATE INDEX `answered_request_at` ON `answered_request` (`at`);--> statement-breakpoint
CREATE TABLE `customer_statement` (
	`paper_id` text PRIMARY KEY NOT NULL,
	`customer_id` text NOT NULL,
	`from_date` text NOT NULL,
	`to_date` text NOT NULL,
	`closing` integer NOT NULL,
	FOREIGN KEY (`paper_id`) REFERENCES `issued_paper`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`customer_id`) REFERENCES `customer`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `customer_statement_customer` ON `customer_statement` (`customer_id`);
--> statement-breakpoint
-- Statements that were issued before: the journal knows whose each is, the paper its time and its end.
INSERT OR IGNORE INTO customer_statement (paper_id, customer_id, from_date, to_date, closing)
SELECT issued_paper.id, customer.id, json_extract(issued_paper.content, '$.from'), json_extract(issued_paper.content, '$.to'),
  json_extract(issued_paper.content, '$.closing')
FROM issued_paper
JOIN journal ON journal.what = 'till.issueStatement' AND json_extract(journal.detail, '$.statement') = issued_paper.number
JOIN customer ON customer.id = json_extract(journal.detail, '$.customer')
WHERE issued_paper.kind = 'statement';
--> statement-breakpoint
-- As in 0001: what was promised, told, mended, expected and stated is never edited or removed.
CREATE TRIGGER job_promise_no_update BEFORE UPDATE ON job_promise BEGIN SELECT RAISE(ABORT, 'append-only: job_promise'); END;
--> statement-breakpoint
CREATE TRIGGER job_promise_no_delete BEFORE DELETE ON job_promise BEGIN SELECT RAISE(ABORT, 'append-only: job_promise'); END;
--> statement-breakpoint
CREATE TRIGGER promise_told_no_update BEFORE UPDATE ON promise_told BEGIN SELECT RAISE(ABORT, 'append-only: promise_told'); END;
--> statement-breakpoint
CREATE TRIGGER promise_told_no_delete BEFORE DELETE ON promise_told BEGIN SELECT RAISE(ABORT, 'append-only: promise_told'); END;
--> statement-breakpoint
CREATE TRIGGER intake_amendment_no_update BEFORE UPDATE ON intake_amendment BEGIN SELECT RAISE(ABORT, 'append-only: intake_amendment'); END;
--> statement-breakpoint
CREATE TRIGGER intake_amendment_no_delete BEFORE DELETE ON intake_amendment BEGIN SELECT RAISE(ABORT, 'append-only: intake_amendment'); END;
--> statement-breakpoint
CREATE TRIGGER expected_change_no_update BEFORE UPDATE ON expected_change BEGIN SELECT RAISE(ABORT, 'append-only: expected_change'); END;
--> statement-breakpoint
CREATE TRIGGER expected_change_no_delete BEFORE DELETE ON expected_change BEGIN SELECT RAISE(ABORT, 'append-only: expected_change'); END;
--> statement-breakpoint
CREATE TRIGGER customer_statement_no_update BEFORE UPDATE ON customer_statement BEGIN SELECT RAISE(ABORT, 'append-only: customer_statement'); END;
--> statement-breakpoint
CREATE TRIGGER customer_statement_no_delete BEFORE DELETE ON customer_statement BEGIN SELECT RAISE(ABORT, 'append-only: customer_statement'); END;
