-- Records that are never edited or removed: a correction is a new row that names the old one.
CREATE TRIGGER reading_no_update BEFORE UPDATE ON reading BEGIN SELECT RAISE(ABORT, 'append-only: reading'); END;
--> statement-breakpoint
CREATE TRIGGER reading_no_delete BEFORE DELETE ON reading BEGIN SELECT RAISE(ABORT, 'append-only: reading'); END;
--> statement-breakpoint
CREATE TRIGGER approval_no_update BEFORE UPDATE ON approval BEGIN SELECT RAISE(ABORT, 'append-only: approval'); END;
--> statement-breakpoint
CREATE TRIGGER approval_no_delete BEFORE DELETE ON approval BEGIN SELECT RAISE(ABORT, 'append-only: approval'); END;
--> statement-breakpoint
CREATE TRIGGER stock_movement_no_update BEFORE UPDATE ON stock_movement BEGIN SELECT RAISE(ABORT, 'append-only: stock_movement'); END;
--> statement-breakpoint
CREATE TRIGGER stock_movement_no_delete BEFORE DELETE ON stock_movement BEGIN SELECT RAISE(ABORT, 'append-only: stock_movement'); END;
--> statement-breakpoint
CREATE TRIGGER payment_no_update BEFORE UPDATE ON payment BEGIN SELECT RAISE(ABORT, 'append-only: payment'); END;
--> statement-breakpoint
CREATE TRIGGER payment_no_delete BEFORE DELETE ON payment BEGIN SELECT RAISE(ABORT, 'append-only: payment'); END;
--> statement-breakpoint
CREATE TRIGGER issued_paper_no_update BEFORE UPDATE ON issued_paper BEGIN SELECT RAISE(ABORT, 'append-only: issued_paper'); END;
--> statement-breakpoint
CREATE TRIGGER issued_paper_no_delete BEFORE DELETE ON issued_paper BEGIN SELECT RAISE(ABORT, 'append-only: issued_paper'); END;
--> statement-breakpoint
CREATE TRIGGER journal_no_update BEFORE UPDATE ON journal BEGIN SELECT RAISE(ABORT, 'append-only: journal'); END;
--> statement-breakpoint
CREATE TRIGGER journal_no_delete BEFORE DELETE ON journal BEGIN SELECT RAISE(ABORT, 'append-only: journal'); END;
--> statement-breakpoint
CREATE TRIGGER hold_point_event_no_update BEFORE UPDATE ON hold_point_event BEGIN SELECT RAISE(ABORT, 'append-only: hold_point_event'); END;
--> statement-breakpoint
CREATE TRIGGER hold_point_event_no_delete BEFORE DELETE ON hold_point_event BEGIN SELECT RAISE(ABORT, 'append-only: hold_point_event'); END;
--> statement-breakpoint
CREATE TRIGGER job_move_no_update BEFORE UPDATE ON job_move BEGIN SELECT RAISE(ABORT, 'append-only: job_move'); END;
--> statement-breakpoint
CREATE TRIGGER job_move_no_delete BEFORE DELETE ON job_move BEGIN SELECT RAISE(ABORT, 'append-only: job_move'); END;
--> statement-breakpoint
CREATE TRIGGER specification_no_update BEFORE UPDATE ON specification BEGIN SELECT RAISE(ABORT, 'append-only: specification'); END;
--> statement-breakpoint
CREATE TRIGGER specification_no_delete BEFORE DELETE ON specification BEGIN SELECT RAISE(ABORT, 'append-only: specification'); END;
--> statement-breakpoint
CREATE TRIGGER confirmation_no_update BEFORE UPDATE ON confirmation BEGIN SELECT RAISE(ABORT, 'append-only: confirmation'); END;
--> statement-breakpoint
CREATE TRIGGER confirmation_no_delete BEFORE DELETE ON confirmation BEGIN SELECT RAISE(ABORT, 'append-only: confirmation'); END;
--> statement-breakpoint
CREATE TRIGGER estimate_no_update BEFORE UPDATE ON estimate BEGIN SELECT RAISE(ABORT, 'append-only: estimate'); END;
--> statement-breakpoint
CREATE TRIGGER estimate_no_delete BEFORE DELETE ON estimate BEGIN SELECT RAISE(ABORT, 'append-only: estimate'); END;
--> statement-breakpoint
CREATE TRIGGER invoice_no_update BEFORE UPDATE ON invoice BEGIN SELECT RAISE(ABORT, 'append-only: invoice'); END;
--> statement-breakpoint
CREATE TRIGGER invoice_no_delete BEFORE DELETE ON invoice BEGIN SELECT RAISE(ABORT, 'append-only: invoice'); END;
