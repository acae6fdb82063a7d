ALTER TABLE `gauge` ADD `length` real;--> statement-breakpoint
ALTER TABLE `torque_pull` ADD `wrench_length` real;