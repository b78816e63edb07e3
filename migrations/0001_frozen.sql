-- What was made or sent is never changed and never taken away; history is only added to.
CREATE TRIGGER `quote_versions_no_update` BEFORE UPDATE ON `quote_versions` BEGIN
	SELECT RAISE(ABORT, 'A made quote version never changes; make a new version.');
END;
--> statement-breakpoint
CREATE TRIGGER `quote_versions_no_delete` BEFORE DELETE ON `quote_versions` BEGIN
	SELECT RAISE(ABORT, 'A made quote version is never taken away.');
END;
--> statement-breakpoint
CREATE TRIGGER `papers_no_update` BEFORE UPDATE ON `papers` BEGIN
	SELECT RAISE(ABORT, 'A written paper never changes; write a new one.');
END;
--> statement-breakpoint
CREATE TRIGGER `papers_no_delete` BEFORE DELETE ON `papers` BEGIN
	SELECT RAISE(ABORT, 'A written paper is never taken away.');
END;
--> statement-breakpoint
CREATE TRIGGER `quote_sendings_no_update` BEFORE UPDATE ON `quote_sendings` BEGIN
	SELECT RAISE(ABORT, 'The moment of sending never changes.');
END;
--> statement-breakpoint
CREATE TRIGGER `quote_sendings_no_delete` BEFORE DELETE ON `quote_sendings` BEGIN
	SELECT RAISE(ABORT, 'The moment of sending is never taken away.');
END;
--> statement-breakpoint
CREATE TRIGGER `history_no_update` BEFORE UPDATE ON `history` BEGIN
	SELECT RAISE(ABORT, 'History never changes.');
END;
--> statement-breakpoint
CREATE TRIGGER `history_no_delete` BEFORE DELETE ON `history` BEGIN
	SELECT RAISE(ABORT, 'History is never taken away.');
END;
