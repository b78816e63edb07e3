/**
 * What the standards of mail say of quotes and signatures, and dates as they give them.
 * @source IETF, RFC 3676 The Text/Plain Format and DelSp Parameters, sections 4.3 (signature line "-- ") and 4.5 (quote marks), 2004, from memory
 */
import { expect, test } from 'vitest';
import { facts } from '../../core/inquiries/reading.ts';

const asked = 'Can you film our congress in Fargo on 12 December? Call 8am.';

test('what stands below the line "-- " is the signature and no part of the message', () => {
  const { contactName, ...job } = facts(`${asked}\n\n-- \nAnn Leverett\nNext show: 3 March in Denver, call 6am`);
  expect(contactName).toBe('Ann Leverett');
  expect(job).toEqual(facts(asked));
});

test('a line that begins with ">" is quoted, also twice', () => {
  expect(facts(`${asked}\n\n> Can you film on 9 May in Oslo, call 7am?\n>> We pay 500 a day.\n`)).toEqual(facts(asked));
});
