-- As in 0001: what the bench decided, checked and ran is never edited or removed.
CREATE TRIGGER contradiction_no_update BEFORE UPDATE ON contradiction BEGIN SELECT RAISE(ABORT, 'append-only: contradiction'); END;
--> statement-breakpoint
CREATE TRIGGER contradiction_no_delete BEFORE DELETE ON contradiction BEGIN SELECT RAISE(ABORT, 'append-only: contradiction'); END;
--> statement-breakpoint
CREATE TRIGGER source_file_no_update BEFORE UPDATE ON source_file BEGIN SELECT RAISE(ABORT, 'append-only: source_file'); END;
--> statement-breakpoint
CREATE TRIGGER source_file_no_delete BEFORE DELETE ON source_file BEGIN SELECT RAISE(ABORT, 'append-only: source_file'); END;
--> statement-breakpoint
CREATE TRIGGER gauge_check_no_update BEFORE UPDATE ON gauge_check BEGIN SELECT RAISE(ABORT, 'append-only: gauge_check'); END;
--> statement-breakpoint
CREATE TRIGGER gauge_check_no_delete BEFORE DELETE ON gauge_check BEGIN SELECT RAISE(ABORT, 'append-only: gauge_check'); END;
--> statement-breakpoint
CREATE TRIGGER decision_no_update BEFORE UPDATE ON decision BEGIN SELECT RAISE(ABORT, 'append-only: decision'); END;
--> statement-breakpoint
CREATE TRIGGER decision_no_delete BEFORE DELETE ON decision BEGIN SELECT RAISE(ABORT, 'append-only: decision'); END;
--> statement-breakpoint
CREATE TRIGGER build_sheet_no_update BEFORE UPDATE ON build_sheet BEGIN SELECT RAISE(ABORT, 'append-only: build_sheet'); END;
--> statement-breakpoint
CREATE TRIGGER build_sheet_no_delete BEFORE DELETE ON build_sheet BEGIN SELECT RAISE(ABORT, 'append-only: build_sheet'); END;
--> statement-breakpoint
CREATE TRIGGER torque_pull_no_update BEFORE UPDATE ON torque_pull BEGIN SELECT RAISE(ABORT, 'append-only: torque_pull'); END;
--> statement-breakpoint
CREATE TRIGGER torque_pull_no_delete BEFORE DELETE ON torque_pull BEGIN SELECT RAISE(ABORT, 'append-only: torque_pull'); END;
--> statement-breakpoint
CREATE TRIGGER test_run_no_update BEFORE UPDATE ON test_run BEGIN SELECT RAISE(ABORT, 'append-only: test_run'); END;
--> statement-breakpoint
CREATE TRIGGER test_run_no_delete BEFORE DELETE ON test_run BEGIN SELECT RAISE(ABORT, 'append-only: test_run'); END;
--> statement-breakpoint
CREATE TRIGGER photo_no_update BEFORE UPDATE ON photo BEGIN SELECT RAISE(ABORT, 'append-only: photo'); END;
--> statement-breakpoint
CREATE TRIGGER photo_no_delete BEFORE DELETE ON photo BEGIN SELECT RAISE(ABORT, 'append-only: photo'); END;
