-- Money that was paid on an invoiced job was set against its invoice; until now nobody wrote that down.
INSERT INTO application (id, job_id, invoice_id, amount, by, at)
SELECT i.id, i.job_id, i.id, min(i.total, p.paid), i.by, i.at
FROM invoice i
JOIN (
  SELECT job_id, sum(CASE WHEN kind = 'refund' THEN -amount ELSE amount END) AS paid
  FROM payment GROUP BY job_id
) p ON p.job_id = i.job_id
WHERE p.paid > 0 AND i.total > 0;
--> statement-breakpoint
-- As in 0001: money that moved is never edited or removed.
CREATE TRIGGER limit_override_no_update BEFORE UPDATE ON limit_override BEGIN SELECT RAISE(ABORT, 'append-only: limit_override'); END;
--> statement-breakpoint
CREATE TRIGGER limit_override_no_delete BEFORE DELETE ON limit_override BEGIN SELECT RAISE(ABORT, 'append-only: limit_override'); END;
--> statement-breakpoint
CREATE TRIGGER credit_note_no_update BEFORE UPDATE ON credit_note BEGIN SELECT RAISE(ABORT, 'append-only: credit_note'); END;
--> statement-breakpoint
CREATE TRIGGER credit_note_no_delete BEFORE DELETE ON credit_note BEGIN SELECT RAISE(ABORT, 'append-only: credit_note'); END;
--> statement-breakpoint
CREATE TRIGGER receipt_no_update BEFORE UPDATE ON receipt BEGIN SELECT RAISE(ABORT, 'append-only: receipt'); END;
--> statement-breakpoint
CREATE TRIGGER receipt_no_delete BEFORE DELETE ON receipt BEGIN SELECT RAISE(ABORT, 'append-only: receipt'); END;
--> statement-breakpoint
CREATE TRIGGER application_no_update BEFORE UPDATE ON application BEGIN SELECT RAISE(ABORT, 'append-only: application'); END;
--> statement-breakpoint
CREATE TRIGGER application_no_delete BEFORE DELETE ON application BEGIN SELECT RAISE(ABORT, 'append-only: application'); END;
--> statement-breakpoint
CREATE TRIGGER clock_event_no_update BEFORE UPDATE ON clock_event BEGIN SELECT RAISE(ABORT, 'append-only: clock_event'); END;
--> statement-breakpoint
CREATE TRIGGER clock_event_no_delete BEFORE DELETE ON clock_event BEGIN SELECT RAISE(ABORT, 'append-only: clock_event'); END;
--> statement-breakpoint
CREATE TRIGGER cash_up_no_update BEFORE UPDATE ON cash_up BEGIN SELECT RAISE(ABORT, 'append-only: cash_up'); END;
--> statement-breakpoint
CREATE TRIGGER cash_up_no_delete BEFORE DELETE ON cash_up BEGIN SELECT RAISE(ABORT, 'append-only: cash_up'); END;
