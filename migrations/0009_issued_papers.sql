-- What was issued, paid or agreed is never changed and never taken away.
CREATE TRIGGER `invoices_no_update` BEFORE UPDATE ON `invoices` BEGIN
	SELECT RAISE(ABORT, 'An issued invoice never changes; credit it and issue another.');
END;
--> statement-breakpoint
CREATE TRIGGER `invoices_no_delete` BEFORE DELETE ON `invoices` BEGIN
	SELECT RAISE(ABORT, 'An issued invoice is never taken away.');
END;
--> statement-breakpoint
CREATE TRIGGER `invoice_notes_no_update` BEFORE UPDATE ON `invoice_notes` BEGIN
	SELECT RAISE(ABORT, 'What happened to an invoice never changes.');
END;
--> statement-breakpoint
CREATE TRIGGER `invoice_notes_no_delete` BEFORE DELETE ON `invoice_notes` BEGIN
	SELECT RAISE(ABORT, 'What happened to an invoice is never taken away.');
END;
--> statement-breakpoint
CREATE TRIGGER `payments_no_update` BEFORE UPDATE ON `payments` BEGIN
	SELECT RAISE(ABORT, 'A payment never changes; reverse it and record another.');
END;
--> statement-breakpoint
CREATE TRIGGER `payments_no_delete` BEFORE DELETE ON `payments` BEGIN
	SELECT RAISE(ABORT, 'A payment is never taken away.');
END;
--> statement-breakpoint
CREATE TRIGGER `payment_parts_no_update` BEFORE UPDATE ON `payment_parts` BEGIN
	SELECT RAISE(ABORT, 'What a payment was for never changes; reverse the payment.');
END;
--> statement-breakpoint
CREATE TRIGGER `payment_parts_no_delete` BEFORE DELETE ON `payment_parts` BEGIN
	SELECT RAISE(ABORT, 'What a payment was for is never taken away.');
END;
--> statement-breakpoint
CREATE TRIGGER `hand_payments_no_update` BEFORE UPDATE ON `hand_payments` BEGIN
	SELECT RAISE(ABORT, 'A payment to a hand never changes; record the other way what was wrong.');
END;
--> statement-breakpoint
CREATE TRIGGER `hand_payments_no_delete` BEFORE DELETE ON `hand_payments` BEGIN
	SELECT RAISE(ABORT, 'A payment to a hand is never taken away.');
END;
--> statement-breakpoint
CREATE TRIGGER `amendments_no_update` BEFORE UPDATE ON `amendments` BEGIN
	SELECT RAISE(ABORT, 'An amendment never changes; make another.');
END;
--> statement-breakpoint
CREATE TRIGGER `amendments_no_delete` BEFORE DELETE ON `amendments` BEGIN
	SELECT RAISE(ABORT, 'An amendment is never taken away.');
END;
