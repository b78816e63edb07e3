ALTER TABLE `jobs` ADD `inked_offer` integer;
