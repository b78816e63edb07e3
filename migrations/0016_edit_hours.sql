ALTER TABLE `deliverables` ADD `edit_hours` text;
