-- What moved before the shelf's worth was kept is worth what its part costs.
DROP TRIGGER stock_movement_no_update;
--> statement-breakpoint
UPDATE stock_movement SET worth = (
  SELECT CAST(round(stock_movement.quantity * part.cost / 1000.0) AS INTEGER) FROM part WHERE part.id = stock_movement.part_id
);
--> statement-breakpoint
CREATE TRIGGER stock_movement_no_update BEFORE UPDATE ON stock_movement BEGIN SELECT RAISE(ABORT, 'append-only: stock_movement'); END;
--> statement-breakpoint
-- Suppliers were a word on a part; each word becomes one supplier, with a random id.
INSERT INTO supplier (id, name, name_key, account_number, phone, email, address, note, lead_days, lead_days_spread,
  minimum_order, carriage, free_carriage_from, price_file_mapping)
SELECT lower(hex(randomblob(4)) || '-' || hex(randomblob(2)) || '-4' || substr(hex(randomblob(2)), 2) || '-8' ||
  substr(hex(randomblob(2)), 2) || '-' || hex(randomblob(6))), min(supplier), lower(trim(supplier)), '', '', '', '', '', 7, 0, 0, 0, NULL, ''
FROM part WHERE trim(supplier) <> '' GROUP BY lower(trim(supplier));
--> statement-breakpoint
-- As in 0001: what was ordered and what came back is never edited or removed.
CREATE TRIGGER part_photo_no_update BEFORE UPDATE ON part_photo BEGIN SELECT RAISE(ABORT, 'append-only: part_photo'); END;
--> statement-breakpoint
CREATE TRIGGER part_photo_no_delete BEFORE DELETE ON part_photo BEGIN SELECT RAISE(ABORT, 'append-only: part_photo'); END;
--> statement-breakpoint
CREATE TRIGGER core_movement_no_update BEFORE UPDATE ON core_movement BEGIN SELECT RAISE(ABORT, 'append-only: core_movement'); END;
--> statement-breakpoint
CREATE TRIGGER core_movement_no_delete BEFORE DELETE ON core_movement BEGIN SELECT RAISE(ABORT, 'append-only: core_movement'); END;
--> statement-breakpoint
CREATE TRIGGER purchase_order_no_update BEFORE UPDATE ON purchase_order BEGIN SELECT RAISE(ABORT, 'append-only: purchase_order'); END;
--> statement-breakpoint
CREATE TRIGGER purchase_order_no_delete BEFORE DELETE ON purchase_order BEGIN SELECT RAISE(ABORT, 'append-only: purchase_order'); END;
--> statement-breakpoint
CREATE TRIGGER purchase_order_line_no_update BEFORE UPDATE ON purchase_order_line BEGIN SELECT RAISE(ABORT, 'append-only: purchase_order_line'); END;
--> statement-breakpoint
CREATE TRIGGER purchase_order_line_no_delete BEFORE DELETE ON purchase_order_line BEGIN SELECT RAISE(ABORT, 'append-only: purchase_order_line'); END;
