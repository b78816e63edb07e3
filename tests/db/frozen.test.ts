import { expect, test } from 'vitest';
import { temporaryStore } from '../store.ts';

const rows = `
  insert into jobs (id, title, stage, role, questions, spans, received_at, received_zone, deliverables, created_at, updated_at)
    values ('j', 'Curling', 'quoted', 'shoot', '[]', '[]', 1, 'America/Chicago', '[]', 1, 1);
  insert into papers (id, job_id, kind, name, type, hash, bytes, made_at) values ('p', 'j', 'quote', 'Quote 1', 'application/pdf', '${'a'.repeat(64)}', 9, 1);
  insert into quote_versions (id, job_id, number, made_at, currency, gross_minor, valid_until_at, draft, reply_subject, reply_text, paper_id)
    values ('v', 'j', 1, 1, 'USD', 100, 2, '{}', 's', 't', 'p');
  insert into quote_sendings (version_id, sent_at) values ('v', 3);
  insert into history (id, at, subject, subject_id, deed, sentence) values ('h', 1, 'job', 'j', 'take', 'Taken.');
`;

test.each([
  ['quote_versions', 'update quote_versions set gross_minor = 99', 'A made quote version never changes; make a new version.'],
  ['quote_versions', 'delete from quote_versions', 'A made quote version is never taken away.'],
  ['quote_versions', `insert or replace into quote_versions select * from quote_versions`, 'A made quote version is never taken away.'],
  ['papers', "update papers set name = 'x'", 'A written paper never changes; write a new one.'],
  ['papers', 'delete from papers', 'A written paper is never taken away.'],
  ['quote_sendings', 'update quote_sendings set sent_at = 9', 'The moment of sending never changes.'],
  ['quote_sendings', 'delete from quote_sendings', 'The moment of sending is never taken away.'],
  ['history', "update history set sentence = 'x'", 'History never changes.'],
  ['history', 'delete from history', 'History is never taken away.'],
  ['the job of a made version', 'delete from jobs', 'FOREIGN KEY constraint failed'],
])('%s: "%s" is refused', async (_, sql, sentence) => {
  const store = await temporaryStore();
  store.write((db) => db.$client.exec(rows));
  expect(() => store.write((db) => db.$client.exec(sql))).toThrow(sentence);
});
