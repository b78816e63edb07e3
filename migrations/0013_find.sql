-- What the find box looks through: an entry for each job, person, thing, preset, paper and rate card, kept by triggers on their tables.
-- A trigger on a table names only that table and find_entries, so that a table can be rebuilt; its triggers must be made again then.
CREATE TABLE `find_entries` (
	`id` integer PRIMARY KEY NOT NULL,
	`kind` text NOT NULL,
	`subject_id` text NOT NULL,
	`job_id` text,
	`title` text NOT NULL,
	`names` text NOT NULL,
	`body` text NOT NULL,
	`away` integer NOT NULL,
	`at` integer NOT NULL
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `find_entries_subject` ON `find_entries` (`kind`,`subject_id`);
--> statement-breakpoint
CREATE INDEX `find_entries_papers` ON `find_entries` (`job_id`) WHERE "kind" = 'paper';
--> statement-breakpoint
CREATE VIRTUAL TABLE `find_words` USING fts5(title, names, body, content='find_entries', content_rowid='id', tokenize='unicode61 remove_diacritics 2', prefix='1 2 3');
--> statement-breakpoint
CREATE VIRTUAL TABLE `find_parts` USING fts5(title, names, content='find_entries', content_rowid='id', tokenize='trigram remove_diacritics 1', detail=none);
--> statement-breakpoint
CREATE VIRTUAL TABLE `find_vocabulary` USING fts5vocab('find_words', 'row');
--> statement-breakpoint
CREATE TRIGGER `find_entries_insert` AFTER INSERT ON `find_entries` BEGIN
	INSERT INTO find_words (rowid, title, names, body) VALUES (new.id, new.title, new.names, new.body);
	INSERT INTO find_parts (rowid, title, names) VALUES (new.id, new.title, new.names);
END;
--> statement-breakpoint
CREATE TRIGGER `find_entries_delete` AFTER DELETE ON `find_entries` BEGIN
	INSERT INTO find_words (find_words, rowid, title, names, body) VALUES ('delete', old.id, old.title, old.names, old.body);
	INSERT INTO find_parts (find_parts, rowid, title, names) VALUES ('delete', old.id, old.title, old.names);
END;
--> statement-breakpoint
CREATE TRIGGER `find_entries_update` AFTER UPDATE ON `find_entries` WHEN old.title <> new.title OR old.names <> new.names OR old.body <> new.body BEGIN
	INSERT INTO find_words (find_words, rowid, title, names, body) VALUES ('delete', old.id, old.title, old.names, old.body);
	INSERT INTO find_parts (find_parts, rowid, title, names) VALUES ('delete', old.id, old.title, old.names);
	INSERT INTO find_words (rowid, title, names, body) VALUES (new.id, new.title, new.names, new.body);
	INSERT INTO find_parts (rowid, title, names) VALUES (new.id, new.title, new.names);
END;
--> statement-breakpoint
CREATE TRIGGER `find_jobs_insert` AFTER INSERT ON `jobs` BEGIN
	INSERT INTO find_entries (kind, subject_id, job_id, title, names, body, away, at)
	VALUES ('job', new.id, new.id,
		new.title,
		coalesce(new.organisation, '') || ' ' || coalesce(new.contact_name, '') || ' ' || coalesce(new.contact_email, '') || ' ' || coalesce(new.contact_phone, '') || ' ' || coalesce(json_extract(new.place, '$.name'), '') || ' ' || coalesce(json_extract(new.place, '$.region'), ''),
		coalesce(new.message, '') || ' ' || coalesce(new.notes, '') || ' ' || coalesce((select group_concat(atom, ' ') from json_tree(case when json_valid(new.deliverables) then new.deliverables end) where type = 'text'), '') || ' ' || coalesce((select group_concat(atom, ' ') from json_tree(case when json_valid(new.knows) then new.knows end) where type = 'text'), ''),
		0,
		new.updated_at);
END;
--> statement-breakpoint
CREATE TRIGGER `find_jobs_update` AFTER UPDATE ON `jobs` BEGIN
	UPDATE find_entries SET subject_id = new.id, job_id = new.id,
		title = new.title,
		names = coalesce(new.organisation, '') || ' ' || coalesce(new.contact_name, '') || ' ' || coalesce(new.contact_email, '') || ' ' || coalesce(new.contact_phone, '') || ' ' || coalesce(json_extract(new.place, '$.name'), '') || ' ' || coalesce(json_extract(new.place, '$.region'), ''),
		body = coalesce(new.message, '') || ' ' || coalesce(new.notes, '') || ' ' || coalesce((select group_concat(atom, ' ') from json_tree(case when json_valid(new.deliverables) then new.deliverables end) where type = 'text'), '') || ' ' || coalesce((select group_concat(atom, ' ') from json_tree(case when json_valid(new.knows) then new.knows end) where type = 'text'), ''),
		away = 0,
		at = new.updated_at
	WHERE kind = 'job' AND subject_id = old.id;
	UPDATE find_entries SET names = (SELECT job.title || ' ' || job.names FROM find_entries AS job WHERE job.kind = 'job' AND job.subject_id = new.id)
	WHERE kind = 'paper' AND job_id = new.id;
END;
--> statement-breakpoint
CREATE TRIGGER `find_jobs_delete` AFTER DELETE ON `jobs` BEGIN
	DELETE FROM find_entries WHERE kind = 'job' AND subject_id = old.id;
END;
--> statement-breakpoint
CREATE TRIGGER `find_clients_insert` AFTER INSERT ON `clients` BEGIN
	INSERT INTO find_entries (kind, subject_id, job_id, title, names, body, away, at)
	VALUES ('client', new.id, null,
		new.name,
		coalesce((select group_concat(atom, ' ') from json_tree(new.fields, '$.contacts') where type = 'text'), '') || ' ' || coalesce(json_extract(new.fields, '$.billing.name'), '') || ' ' || coalesce(json_extract(new.fields, '$.billing.email'), '') || ' ' || coalesce(json_extract(new.fields, '$.taxId'), ''),
		coalesce(json_extract(new.fields, '$.billing.address'), '') || ' ' || coalesce(json_extract(new.fields, '$.notes'), ''),
		new.away_at is not null,
		new.updated_at);
END;
--> statement-breakpoint
CREATE TRIGGER `find_clients_update` AFTER UPDATE ON `clients` BEGIN
	UPDATE find_entries SET subject_id = new.id,
		title = new.name,
		names = coalesce((select group_concat(atom, ' ') from json_tree(new.fields, '$.contacts') where type = 'text'), '') || ' ' || coalesce(json_extract(new.fields, '$.billing.name'), '') || ' ' || coalesce(json_extract(new.fields, '$.billing.email'), '') || ' ' || coalesce(json_extract(new.fields, '$.taxId'), ''),
		body = coalesce(json_extract(new.fields, '$.billing.address'), '') || ' ' || coalesce(json_extract(new.fields, '$.notes'), ''),
		away = new.away_at is not null,
		at = new.updated_at
	WHERE kind = 'client' AND subject_id = old.id;
END;
--> statement-breakpoint
CREATE TRIGGER `find_clients_delete` AFTER DELETE ON `clients` BEGIN
	DELETE FROM find_entries WHERE kind = 'client' AND subject_id = old.id;
END;
--> statement-breakpoint
CREATE TRIGGER `find_hands_insert` AFTER INSERT ON `hands` BEGIN
	INSERT INTO find_entries (kind, subject_id, job_id, title, names, body, away, at)
	VALUES ('hand', new.id, null,
		new.name,
		coalesce(json_extract(new.fields, '$.email'), '') || ' ' || coalesce(json_extract(new.fields, '$.phone'), '') || ' ' || coalesce(json_extract(new.fields, '$.home.name'), '') || ' ' || coalesce((select group_concat(atom, ' ') from json_tree(new.fields, '$.rates') where key = 'role'), ''),
		coalesce(json_extract(new.fields, '$.ownKit'), '') || ' ' || coalesce(json_extract(new.fields, '$.notes'), ''),
		new.away_at is not null,
		new.updated_at);
END;
--> statement-breakpoint
CREATE TRIGGER `find_hands_update` AFTER UPDATE ON `hands` BEGIN
	UPDATE find_entries SET subject_id = new.id,
		title = new.name,
		names = coalesce(json_extract(new.fields, '$.email'), '') || ' ' || coalesce(json_extract(new.fields, '$.phone'), '') || ' ' || coalesce(json_extract(new.fields, '$.home.name'), '') || ' ' || coalesce((select group_concat(atom, ' ') from json_tree(new.fields, '$.rates') where key = 'role'), ''),
		body = coalesce(json_extract(new.fields, '$.ownKit'), '') || ' ' || coalesce(json_extract(new.fields, '$.notes'), ''),
		away = new.away_at is not null,
		at = new.updated_at
	WHERE kind = 'hand' AND subject_id = old.id;
END;
--> statement-breakpoint
CREATE TRIGGER `find_hands_delete` AFTER DELETE ON `hands` BEGIN
	DELETE FROM find_entries WHERE kind = 'hand' AND subject_id = old.id;
END;
--> statement-breakpoint
CREATE TRIGGER `find_kit_items_insert` AFTER INSERT ON `kit_items` BEGIN
	INSERT INTO find_entries (kind, subject_id, job_id, title, names, body, away, at)
	VALUES ('thing', new.id, null,
		new.name,
		coalesce(json_extract(new.fields, '$.does'), '') || ' ' || coalesce((select group_concat(atom, ' ') from json_tree(new.fields) where type = 'text' and (key = 'serial' or path = '$.serials')), ''),
		coalesce(json_extract(new.fields, '$.note'), ''),
		0,
		new.updated_at);
END;
--> statement-breakpoint
CREATE TRIGGER `find_kit_items_update` AFTER UPDATE ON `kit_items` BEGIN
	UPDATE find_entries SET subject_id = new.id,
		title = new.name,
		names = coalesce(json_extract(new.fields, '$.does'), '') || ' ' || coalesce((select group_concat(atom, ' ') from json_tree(new.fields) where type = 'text' and (key = 'serial' or path = '$.serials')), ''),
		body = coalesce(json_extract(new.fields, '$.note'), ''),
		away = 0,
		at = new.updated_at
	WHERE kind = 'thing' AND subject_id = old.id;
END;
--> statement-breakpoint
CREATE TRIGGER `find_kit_items_delete` AFTER DELETE ON `kit_items` BEGIN
	DELETE FROM find_entries WHERE kind = 'thing' AND subject_id = old.id;
END;
--> statement-breakpoint
CREATE TRIGGER `find_kit_presets_insert` AFTER INSERT ON `kit_presets` BEGIN
	INSERT INTO find_entries (kind, subject_id, job_id, title, names, body, away, at)
	VALUES ('preset', new.id, null,
		new.name,
		'',
		'',
		0,
		new.updated_at);
END;
--> statement-breakpoint
CREATE TRIGGER `find_kit_presets_update` AFTER UPDATE ON `kit_presets` BEGIN
	UPDATE find_entries SET subject_id = new.id,
		title = new.name,
		names = '',
		body = '',
		away = 0,
		at = new.updated_at
	WHERE kind = 'preset' AND subject_id = old.id;
END;
--> statement-breakpoint
CREATE TRIGGER `find_kit_presets_delete` AFTER DELETE ON `kit_presets` BEGIN
	DELETE FROM find_entries WHERE kind = 'preset' AND subject_id = old.id;
END;
--> statement-breakpoint
CREATE TRIGGER `find_rate_cards_insert` AFTER INSERT ON `rate_cards` BEGIN
	INSERT INTO find_entries (kind, subject_id, job_id, title, names, body, away, at)
	VALUES ('rate card', new.id, null,
		new.name,
		coalesce(new.role, '') || ' ' || coalesce(new.currency, ''),
		'',
		0,
		new.updated_at);
END;
--> statement-breakpoint
CREATE TRIGGER `find_rate_cards_update` AFTER UPDATE ON `rate_cards` BEGIN
	UPDATE find_entries SET subject_id = new.id,
		title = new.name,
		names = coalesce(new.role, '') || ' ' || coalesce(new.currency, ''),
		body = '',
		away = 0,
		at = new.updated_at
	WHERE kind = 'rate card' AND subject_id = old.id;
END;
--> statement-breakpoint
CREATE TRIGGER `find_rate_cards_delete` AFTER DELETE ON `rate_cards` BEGIN
	DELETE FROM find_entries WHERE kind = 'rate card' AND subject_id = old.id;
END;
--> statement-breakpoint
CREATE TRIGGER `find_papers_insert` AFTER INSERT ON `papers` BEGIN
	INSERT INTO find_entries (kind, subject_id, job_id, title, names, body, away, at)
	VALUES ('paper', new.id, new.job_id,
		new.name,
		coalesce((select title || ' ' || names from find_entries where kind = 'job' and subject_id = new.job_id), ''),
		'',
		0,
		new.made_at);
END;
--> statement-breakpoint
CREATE TRIGGER `find_papers_delete` AFTER DELETE ON `papers` BEGIN
	DELETE FROM find_entries WHERE kind = 'paper' AND subject_id = old.id;
END;
--> statement-breakpoint
INSERT INTO find_entries (kind, subject_id, job_id, title, names, body, away, at)
	SELECT 'job', id, jobs.id,
		jobs.title,
		coalesce(jobs.organisation, '') || ' ' || coalesce(jobs.contact_name, '') || ' ' || coalesce(jobs.contact_email, '') || ' ' || coalesce(jobs.contact_phone, '') || ' ' || coalesce(json_extract(jobs.place, '$.name'), '') || ' ' || coalesce(json_extract(jobs.place, '$.region'), ''),
		coalesce(jobs.message, '') || ' ' || coalesce(jobs.notes, '') || ' ' || coalesce((select group_concat(atom, ' ') from json_tree(case when json_valid(jobs.deliverables) then jobs.deliverables end) where type = 'text'), '') || ' ' || coalesce((select group_concat(atom, ' ') from json_tree(case when json_valid(jobs.knows) then jobs.knows end) where type = 'text'), ''),
		0,
		jobs.updated_at FROM jobs;
--> statement-breakpoint
INSERT INTO find_entries (kind, subject_id, job_id, title, names, body, away, at)
	SELECT 'client', id, null,
		clients.name,
		coalesce((select group_concat(atom, ' ') from json_tree(clients.fields, '$.contacts') where type = 'text'), '') || ' ' || coalesce(json_extract(clients.fields, '$.billing.name'), '') || ' ' || coalesce(json_extract(clients.fields, '$.billing.email'), '') || ' ' || coalesce(json_extract(clients.fields, '$.taxId'), ''),
		coalesce(json_extract(clients.fields, '$.billing.address'), '') || ' ' || coalesce(json_extract(clients.fields, '$.notes'), ''),
		clients.away_at is not null,
		clients.updated_at FROM clients;
--> statement-breakpoint
INSERT INTO find_entries (kind, subject_id, job_id, title, names, body, away, at)
	SELECT 'hand', id, null,
		hands.name,
		coalesce(json_extract(hands.fields, '$.email'), '') || ' ' || coalesce(json_extract(hands.fields, '$.phone'), '') || ' ' || coalesce(json_extract(hands.fields, '$.home.name'), '') || ' ' || coalesce((select group_concat(atom, ' ') from json_tree(hands.fields, '$.rates') where key = 'role'), ''),
		coalesce(json_extract(hands.fields, '$.ownKit'), '') || ' ' || coalesce(json_extract(hands.fields, '$.notes'), ''),
		hands.away_at is not null,
		hands.updated_at FROM hands;
--> statement-breakpoint
INSERT INTO find_entries (kind, subject_id, job_id, title, names, body, away, at)
	SELECT 'thing', id, null,
		kit_items.name,
		coalesce(json_extract(kit_items.fields, '$.does'), '') || ' ' || coalesce((select group_concat(atom, ' ') from json_tree(kit_items.fields) where type = 'text' and (key = 'serial' or path = '$.serials')), ''),
		coalesce(json_extract(kit_items.fields, '$.note'), ''),
		0,
		kit_items.updated_at FROM kit_items;
--> statement-breakpoint
INSERT INTO find_entries (kind, subject_id, job_id, title, names, body, away, at)
	SELECT 'preset', id, null,
		kit_presets.name,
		'',
		'',
		0,
		kit_presets.updated_at FROM kit_presets;
--> statement-breakpoint
INSERT INTO find_entries (kind, subject_id, job_id, title, names, body, away, at)
	SELECT 'rate card', id, null,
		rate_cards.name,
		coalesce(rate_cards.role, '') || ' ' || coalesce(rate_cards.currency, ''),
		'',
		0,
		rate_cards.updated_at FROM rate_cards;
--> statement-breakpoint
INSERT INTO find_entries (kind, subject_id, job_id, title, names, body, away, at)
	SELECT 'paper', id, papers.job_id,
		papers.name,
		coalesce((select title || ' ' || names from find_entries where kind = 'job' and subject_id = papers.job_id), ''),
		'',
		0,
		papers.made_at FROM papers;
