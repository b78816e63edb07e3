ALTER TABLE `quote_versions` ADD `inputs` text;
