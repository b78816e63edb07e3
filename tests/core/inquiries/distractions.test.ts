/**
 * A sentence about something else changes no day and no hour of mine: what was stated stays, or it is asked; it never becomes another.
 */
import { expect, test } from 'vitest';
import { messages } from '../../reader/corpus.ts';
import { read } from '../../reader/scores.ts';

const sentences = `
  Our invoice of 3 March is still open, I will chase it.
  Last year's event was on 5 May and you did a lovely job.
  The tickets go on sale on 4 April at 9am.
  I am away from 2 to 9 April, so call my colleague.
  The poster goes to the printer on 14 April at noon.
  We moved into this office on 1 February.
  My own birthday is on 29 June.
  The committee meets on 6 April at 7pm.
  Please have a look at the film from 12 October 2025 on our site.
  The florist comes at 6am.
  Our caterers load in at 5:30am.
  The hotel serves breakfast from 6am.
  The edit is due on 30 August.
  Your contract will be signed by 20 April.
  The deposit is paid on 21 April.
  A site visit could be on 8 April at 10am.
  Could we have a phone call on 7 April at 3pm about it?
  We celebrate 50 years since 9 May 1977.
  My train gets in at 6:10am.
  The museum was founded in May 1968.
  Speakers must register by 11 April.
  The drone permit is valid until 31 December.
  The band sound checks at 5am.
  You will be paid within 30 days.
  Please send your invoice by 30 September.
  The office is open from 8am to 4pm.
  We will announce it on 2 April.
  The trains run every 20 minutes until 11:40pm.
  The bar closes at 1am.
  The council approved it on 12 January.
  The programme goes online on 9 April.
  Half term is from 24 to 28 May.
  The previous date, 1 July, no longer works.
  Guests check out by 11am.
  The last bus leaves at 11:52pm.`
  .trim()
  .split(/\n\s*/);

/** The first line of prose that ends a sentence. */
const prose = (text: string): number => text.split('\n').findIndex((line) => line.length > 60 && /[.!?]\s*$/.test(line));
const asked = messages('tuned').filter((message, at) => message.isInquiry && at % 27 === 4 && prose(message.text) >= 0);

test.each(sentences)('%s', (sentence) => {
  for (const message of asked) {
    const before = read(message).fields;
    const at = prose(message.text);
    const text = message.text
      .split('\n')
      .map((line, index) => (index === at ? `${line} ${sentence}` : line))
      .join('\n');
    const after = read({ ...message, text }).fields;
    for (const field of ['start', 'end', 'firstCall', 'lastWrap'] as const) {
      if (before[field] === undefined || after[field] === undefined) continue;
      expect({ id: message.id, [field]: after[field] }).toEqual({ id: message.id, [field]: before[field] });
    }
  }
});
