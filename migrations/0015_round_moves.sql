ALTER TABLE `rounds` ADD `moved` text;
