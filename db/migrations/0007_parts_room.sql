CREATE TABLE `price_change` (
	`file_id` text NOT NULL,
	`item_id` text,
	`part_id` text,
	`before` text NOT NULL,
	FOREIGN KEY (`file_id`) REFERENCES `price_file`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`part_id`) REFERENCES `part`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `price_change_file` ON `price_change` (`file_id`);--> statement-breakpoint
CREATE TABLE `price_file` (
	`id` text PRIMARY KEY NOT NULL,
	`supplier_id` text NOT NULL,
	`file_name` text NOT NULL,
	`sha256` text NOT NULL,
	`state` text NOT NULL,
	`mapping` text NOT NULL,
	`lines` integer NOT NULL,
	`counts` text NOT NULL,
	`by` text NOT NULL,
	`at` text NOT NULL,
	`applied_at` text,
	`undone_at` text,
	FOREIGN KEY (`supplier_id`) REFERENCES `supplier`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `price_file_supplier` ON `price_file` (`supplier_id`,`at`);--> statement-breakpoint
CREATE TABLE `price_file_line` (
	`file_id` text NOT NULL,
	`line` integer NOT NULL,
	`problem` text NOT NULL,
	`raw` text NOT NULL,
	`number` text NOT NULL,
	`number_key` text NOT NULL,
	`description` text NOT NULL,
	`cost` integer NOT NULL,
	`list_price` integer,
	`pack_size` integer NOT NULL,
	`core_charge` integer NOT NULL,
	`superseded_by` text NOT NULL,
	FOREIGN KEY (`file_id`) REFERENCES `price_file`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `price_file_line_place` ON `price_file_line` (`file_id`,`line`);--> statement-breakpoint
CREATE TABLE `purchase_order` (
	`id` text PRIMARY KEY NOT NULL,
	`number` integer NOT NULL,
	`supplier_id` text NOT NULL,
	`note` text NOT NULL,
	`carriage` integer NOT NULL,
	`currency` text NOT NULL,
	`expected_on` text,
	`paper_id` text NOT NULL,
	`by` text NOT NULL,
	`at` text NOT NULL,
	FOREIGN KEY (`supplier_id`) REFERENCES `supplier`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`paper_id`) REFERENCES `issued_paper`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `purchase_order_number` ON `purchase_order` (`number`);--> statement-breakpoint
CREATE INDEX `purchase_order_supplier` ON `purchase_order` (`supplier_id`);--> statement-breakpoint
CREATE TABLE `purchase_order_line` (
	`id` text PRIMARY KEY NOT NULL,
	`order_id` text NOT NULL,
	`part_id` text NOT NULL,
	`supplier_number` text NOT NULL,
	`quantity` integer NOT NULL,
	`unit_cost` integer NOT NULL,
	`job_id` text,
	`expected_on` text,
	FOREIGN KEY (`order_id`) REFERENCES `purchase_order`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`part_id`) REFERENCES `part`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`job_id`) REFERENCES `job`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `purchase_order_line_order` ON `purchase_order_line` (`order_id`);--> statement-breakpoint
CREATE INDEX `purchase_order_line_part` ON `purchase_order_line` (`part_id`);--> statement-breakpoint
CREATE INDEX `purchase_order_line_job` ON `purchase_order_line` (`job_id`);--> statement-breakpoint
CREATE TABLE `supplier` (
	`id` text PRIMARY KEY NOT NULL,
	`name` text NOT NULL,
	`name_key` text NOT NULL,
	`account_number` text NOT NULL,
	`phone` text NOT NULL,
	`email` text NOT NULL,
	`address` text NOT NULL,
	`note` text NOT NULL,
	`lead_days` integer NOT NULL,
	`lead_days_spread` integer NOT NULL,
	`minimum_order` integer NOT NULL,
	`carriage` integer NOT NULL,
	`free_carriage_from` integer,
	`price_file_mapping` text NOT NULL
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `supplier_name` ON `supplier` (`name_key`);--> statement-breakpoint
CREATE TABLE `supplier_item` (
	`id` text PRIMARY KEY NOT NULL,
	`supplier_id` text NOT NULL,
	`number` text NOT NULL,
	`number_key` text NOT NULL,
	`description` text NOT NULL,
	`cost` integer NOT NULL,
	`list_price` integer,
	`pack_size` integer NOT NULL,
	`core_charge` integer NOT NULL,
	`superseded_by` text NOT NULL,
	`price_file_id` text,
	FOREIGN KEY (`supplier_id`) REFERENCES `supplier`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`price_file_id`) REFERENCES `price_file`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `supplier_item_number` ON `supplier_item` (`supplier_id`,`number_key`);--> statement-breakpoint
CREATE INDEX `supplier_item_key` ON `supplier_item` (`number_key`);--> statement-breakpoint
CREATE TABLE `kit_piece` (
	`kit_id` text NOT NULL,
	`part_id` text NOT NULL,
	`quantity` integer NOT NULL,
	PRIMARY KEY(`kit_id`, `part_id`),
	FOREIGN KEY (`kit_id`) REFERENCES `part`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`part_id`) REFERENCES `part`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE TABLE `other_number` (
	`id` text PRIMARY KEY NOT NULL,
	`part_id` text NOT NULL,
	`kind` text NOT NULL,
	`whose` text NOT NULL,
	`number` text NOT NULL,
	`number_key` text NOT NULL,
	FOREIGN KEY (`part_id`) REFERENCES `part`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `other_number_key` ON `other_number` (`number_key`);--> statement-breakpoint
CREATE INDEX `other_number_part` ON `other_number` (`part_id`);--> statement-breakpoint
CREATE TABLE `part_fit` (
	`part_id` text NOT NULL,
	`engine_model_id` text NOT NULL,
	`fitted` text NOT NULL,
	`step` real NOT NULL,
	PRIMARY KEY(`part_id`, `engine_model_id`, `fitted`, `step`),
	FOREIGN KEY (`part_id`) REFERENCES `part`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`engine_model_id`) REFERENCES `engine_model`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `part_fit_model` ON `part_fit` (`engine_model_id`);--> statement-breakpoint
CREATE TABLE `part_photo` (
	`id` text PRIMARY KEY NOT NULL,
	`part_id` text NOT NULL,
	`caption` text NOT NULL,
	`media_type` text NOT NULL,
	`bytes` blob NOT NULL,
	`sha256` text NOT NULL,
	`by` text NOT NULL,
	`at` text NOT NULL,
	FOREIGN KEY (`part_id`) REFERENCES `part`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `part_photo_part` ON `part_photo` (`part_id`);--> statement-breakpoint
CREATE TABLE `core_movement` (
	`id` text PRIMARY KEY NOT NULL,
	`part_id` text NOT NULL,
	`kind` text NOT NULL,
	`quantity` integer NOT NULL,
	`amount` integer NOT NULL,
	`job_id` text,
	`supplier_id` text,
	`note` text NOT NULL,
	`by` text NOT NULL,
	`at` text NOT NULL,
	FOREIGN KEY (`part_id`) REFERENCES `part`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`job_id`) REFERENCES `job`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`supplier_id`) REFERENCES `supplier`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`by`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `core_movement_part` ON `core_movement` (`part_id`);--> statement-breakpoint
CREATE TABLE `label_settings` (
	`only` integer PRIMARY KEY NOT NULL,
	`settings` text NOT NULL,
	`show_price` integer DEFAULT false NOT NULL
) STRICT;
--> statement-breakpoint
CREATE TABLE `stock_count` (
	`id` text PRIMARY KEY NOT NULL,
	`bin` text NOT NULL,
	`by` text NOT NULL,
	`at` text NOT NULL,
	`closed_at` text,
	FOREIGN KEY (`by`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
CREATE INDEX `stock_count_bin` ON `stock_count` (`bin`,`at`);--> statement-breakpoint
CREATE TABLE `stock_count_line` (
	`count_id` text NOT NULL,
	`part_id` text NOT NULL,
	`counted` integer NOT NULL,
	`expected` integer NOT NULL,
	`explanation` text NOT NULL,
	PRIMARY KEY(`count_id`, `part_id`),
	FOREIGN KEY (`count_id`) REFERENCES `stock_count`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`part_id`) REFERENCES `part`(`id`) ON UPDATE no action ON DELETE no action
) STRICT;
--> statement-breakpoint
DROP INDEX `stock_movement_part`;--> statement-breakpoint
ALTER TABLE `stock_movement` ADD `worth` integer DEFAULT 0 NOT NULL;--> statement-breakpoint
ALTER TABLE `stock_movement` ADD `reserved` integer DEFAULT 0 NOT NULL;--> statement-breakpoint
ALTER TABLE `stock_movement` ADD `ordered` integer DEFAULT 0 NOT NULL;--> statement-breakpoint
ALTER TABLE `stock_movement` ADD `order_line_id` text REFERENCES purchase_order_line(id);--> statement-breakpoint
ALTER TABLE `stock_movement` ADD `count_id` text REFERENCES stock_count(id);--> statement-breakpoint
CREATE INDEX `stock_movement_job` ON `stock_movement` (`job_id`);--> statement-breakpoint
CREATE INDEX `stock_movement_order_line` ON `stock_movement` (`order_line_id`);--> statement-breakpoint
CREATE INDEX `stock_movement_part` ON `stock_movement` (`part_id`,`at`);--> statement-breakpoint
ALTER TABLE `part` ADD `pack_size` integer DEFAULT 1000 NOT NULL;--> statement-breakpoint
ALTER TABLE `part` ADD `superseded_by` text REFERENCES part(id);--> statement-breakpoint
CREATE INDEX `part_superseded_by` ON `part` (`superseded_by`);