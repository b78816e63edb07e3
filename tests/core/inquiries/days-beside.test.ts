/**
 * Days that stand for others, that end what begins in the same sentence, that lie beside the days of the job or around them; answers by a day that hardly asks for one.
 */
import { describe, expect, test } from 'vitest';
import { facts } from './reading.ts';

const at = (text: string, receivedAt?: string): string => {
  const { start, end, days } = facts(text, receivedAt);
  return `${start ?? '-'} ${end ?? '-'} ${days ?? '-'}`;
};

describe('days that hold no more', () => {
  test.each([
    [
      'We talked about Saturday the 16th of January but the hall is taken that day, so can you film the 23rd instead?',
      '2027-01-23 2027-01-23 1',
    ],
    ['The gala was going to be 14 January. Can you film it on the 16th instead?', '2027-01-16 2027-01-16 1'],
    ['We were on for 17 January but it is now the 3rd, can you still film it?', '- - -'],
    ['The wedding has gone from 15 to 16 January, so can you still film it?', '2027-01-16 2027-01-16 1'],
  ])('%s', (text, want) => expect(at(text)).toBe(want));
});

describe('what begins and ends in one sentence', () => {
  test.each([
    ['The fair opens Tuesday 12 January and ends on Thursday. Could you film all of it?', '2027-01-12 2027-01-14 3'],
    ['The congress starts on Sunday 10 January and runs until Wednesday 13th. Can you film it?', '2027-01-10 2027-01-13 4'],
    ['Can you film our gala on Tuesday 12 January? Voting closes on Thursday.', '2027-01-12 2027-01-12 1'],
    [
      'It leaves Duluth on Friday 8 January, crew at the platform for 8:45 am. It comes back either that Sunday or the Monday. Can you film it?',
      '- - -',
    ],
    ['Need a vision mixer from 5 January for four nights.', '2027-01-05 2027-01-08 4'],
  ])('%s', (text, want) => expect(at(text)).toBe(want));
});

describe('weekends, weeks and pairs', () => {
  test.each([
    ['Kannst du am Wochenende vom 9. Januar filmen?', '2027-01-09 2027-01-10 2'],
    ['Pouvez-vous filmer le week-end du 9 janvier ?', '2027-01-09 2027-01-10 2'],
    ['¿Puedes grabar el fin de semana del 9 de enero?', '2027-01-09 2027-01-10 2'],
    ['Can you film Sat and Sun the 9th and 10th January?', '2027-01-09 2027-01-10 2'],
    ['Could you film the w/e 9 January?', '- - -'],
    ['Filming mid-January in Duluth, a Tuesday probably. Are you free?', '- - -'],
    ['Could you film 12 and 13 or 19 and 20 January?', '- - 2'],
    ['Graduation runs 4-15 January (weekdays only). Could you run the stream for all of it?', '2027-01-04 2027-01-15 10'],
    ['Shoot is two days out of 11-15 January, to be fixed. Can you pencil them?', '- - 2'],
    ['Filming on 1 & 2 February plus a pick-up day on the 9th. Are you free for all three?', '2027-02-01 2027-02-09 3'],
  ])('%s', (text, want) => expect(at(text)).toBe(want));
});

describe('a day beside the job', () => {
  test.each([
    ['Wedding, Saturday 9 January, but the dinner on Friday evening should be filmed as well. Can you do both?', '- - -'],
    ['Our jubilee is on Saturday 9 January. You would be needed to film from six on Friday 8 January.', '- - -'],
    ['Conference 12-14 January in Duluth, we rig on the 11th from 2pm. We need a camera operator.', '2027-01-12 2027-01-14 3'],
  ])('%s', (text, want) => expect(at(text)).toBe(want));
});

describe('an answer', () => {
  test.each([
    ['Can you film our gala on 9 January? Pls sms by 2moro 10am', '2026-11-26T10:00'],
    ['¿Puedes grabar el 9 de enero? Contéstame antes de mañana a las 14:00.', '2026-11-26T14:00'],
  ])('%s', (text, want) => expect(facts(text).replyBy).toBe(want));
});
