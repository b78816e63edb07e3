/**
 * Calendar files that are broken, huge or made to harm: bounded time, nobody kept waiting, what can be read is kept, and it is said what not.
 */
import { spawn, spawnSync } from 'node:child_process';
import { appendFileSync, closeSync, openSync, rmSync, statSync, writeFileSync, writeSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { describe, expect, onTestFinished, test } from 'vitest';
import { readAside } from '../../electron/calendars/read-aside.ts';
import { at, calendarOf, CRLF, eventOf } from '../calendar-text.ts';
import { temporaryFolder } from '../store.ts';

const NOW = at('2026-12-01T00:00:00Z');
const HONEST = eventOf('UID:honest', 'SUMMARY:Choir', 'DTSTART:20261205T100000Z', 'DURATION:PT1H');
const when = ['DTSTART:20261205T100000Z', 'DURATION:PT1H'];

async function read(text: string | Buffer) {
  const path = join(temporaryFolder(), 'a.ics');
  writeFileSync(path, text);
  return readFile(path);
}

/** What came of it, how long it took, and the longest that this thread had to wait meanwhile, milliseconds. */
async function readFile(path: string, seconds?: number) {
  const began = performance.now();
  let last = began;
  let longest = 0;
  const beat = setInterval(() => {
    longest = Math.max(longest, performance.now() - last);
    last = performance.now();
  }, 10);
  const outcome = await readAside({ path, zone: 'America/Chicago', now: NOW }, seconds);
  clearInterval(beat);
  const took = performance.now() - began;
  if ('trouble' in outcome) return { trouble: outcome.trouble.what, busy: [], leftOut: [], took, longest };
  return { trouble: null, ...outcome.read, took, longest };
}
const titles = ({ busy }: { busy: { title: string }[] }) => [...new Set(busy.map(({ title }) => title))];

test('100 MB are read aside, the events near today are kept, and the screen is answered meanwhile', async () => {
  const path = join(temporaryFolder(), 'big.ics');
  const file = openSync(path, 'w');
  writeSync(file, ['BEGIN:VCALENDAR', 'VERSION:2.0', ''].join(CRLF));
  const note = `DESCRIPTION:${'x'.repeat(63)}${`${CRLF} ${'y'.repeat(74)}`.repeat(60)}`;
  for (let written = 0, number = 0; written < 100_000_000;) {
    const events = Array.from({ length: 200 }, () => {
      number += 1;
      const day = Temporal.PlainDate.from('2000-01-01').add({ days: number % 11_000 });
      const alarm = ['BEGIN:VALARM', 'ACTION:DISPLAY', 'TRIGGER:-PT5M', 'END:VALARM'].join(CRLF);
      return eventOf(
        `UID:${number}`,
        'SUMMARY:Old and new',
        `DTSTART;TZID=America/Chicago:${day.toString().replaceAll('-', '')}T100000`,
        'DURATION:PT1H',
        note,
        alarm,
      );
    });
    written += writeSync(file, events.join(CRLF) + CRLF);
  }
  writeSync(file, ['END:VCALENDAR', ''].join(CRLF));
  closeSync(file);
  const { busy, leftOut, took, longest } = await readFile(path);
  expect(busy.length).toBeGreaterThan(1500);
  expect(leftOut).toEqual([expect.objectContaining({ why: 'outside' })]);
  expect(took).toBeLessThan(30_000);
  expect(longest).toBeLessThan(1000);
  rmSync(path);
}, 90_000);

describe('made to harm', () => {
  test.each<[string, string, string | null]>([
    ['200,000 components one inside the other', eventOf('UID:1', ...when, 'BEGIN:X\r\n'.repeat(200_000) + 'END:X'), null],
    ['a title of 200,000 characters', eventOf('UID:1', `SUMMARY:${'x'.repeat(200_000)}`, ...when), null],
    ['a title folded a million times', eventOf('UID:1', ...when, `SUMMARY:a${`${CRLF} b`.repeat(1_000_000)}`), null],
    [
      'a start of 200,000 characters',
      eventOf('UID:1', `DTSTART;X-A=${'x'.repeat(200_000)}:20261205T100000Z`, 'DURATION:PT1H'),
      'too large',
    ],
    [
      'more lines than an event can have',
      eventOf('UID:1', ...when, ...Array.from({ length: 5_000 }, () => 'EXDATE:20261206T100000Z')),
      'too large',
    ],
    ['every second, for ever', eventOf('UID:1', 'DTSTART:20261202T000000Z', 'DURATION:PT1S', 'RRULE:FREQ=SECONDLY'), 'too often'],
    [
      'every minute since 1950, counted',
      eventOf('UID:1', 'DTSTART:19500105T100000Z', 'DURATION:PT1M', 'RRULE:FREQ=MINUTELY;COUNT=999999999'),
      'too often',
    ],
    ['a date that never is', eventOf('UID:1', ...when, 'RRULE:FREQ=YEARLY;BYMONTH=2;BYMONTHDAY=30'), null],
    ['an interval past all years', eventOf('UID:1', ...when, 'RRULE:FREQ=DAILY;INTERVAL=999999999999'), null],
    ['an interval of nothing', eventOf('UID:1', ...when, 'RRULE:FREQ=DAILY;INTERVAL=0'), 'rule'],
    ['a rule that is none', eventOf('UID:1', ...when, 'RRULE:FREQ=SOMETIMES;BYDAY=XX'), 'rule'],
    ['a length of a million years', eventOf('UID:1', 'DTSTART:20261205T100000Z', 'DURATION:P999999W'), null],
    ['an end before its start', eventOf('UID:1', 'DTSTART:20261205T100000Z', 'DTEND:20261204T100000Z'), 'no time'],
    ['a date that does not exist', eventOf('UID:1', 'DTSTART:20270230T100000Z', 'DURATION:PT1H'), 'broken'],
    ['an hour that does not exist', eventOf('UID:1', 'DTSTART:20261205T250000Z', 'DURATION:PT1H'), 'broken'],
    ['the year 9999', eventOf('UID:1', 'DTSTART:99991231T235959Z', 'DURATION:PT1H'), 'broken'],
    ['no start', eventOf('UID:1', 'SUMMARY:When?'), 'broken'],
    ['a line that is none', eventOf('UID:1', ...when, 'RDATE;VALUE=PERIOD'), 'broken'],
    ['quotes that do not end', eventOf('UID:1', 'DTSTART;TZID="America:20261205T100000', 'DURATION:PT1H'), 'broken'],
    [
      'a clock whose offset is none',
      [
        'BEGIN:VTIMEZONE',
        'TZID:Odd',
        'BEGIN:STANDARD',
        'DTSTART:20000101T000000',
        'TZOFFSETFROM:+9900',
        'TZOFFSETTO:x',
        'END:STANDARD',
        'END:VTIMEZONE',
      ].join(CRLF),
      'broken',
    ],
    [
      'a clock that changes every second',
      [
        'BEGIN:VTIMEZONE',
        'TZID:Odd',
        'BEGIN:STANDARD',
        'DTSTART:20260101T000000',
        'TZOFFSETFROM:+0000',
        'TZOFFSETTO:+0001',
        'RRULE:FREQ=SECONDLY',
        'END:STANDARD',
        'END:VTIMEZONE',
      ].join(CRLF),
      'broken',
    ],
    ['an event that does not end before the next', ['BEGIN:VEVENT', 'UID:1', ...when].join(CRLF), 'broken'],
    ['a UID that every object has', eventOf('UID:__proto__', ...when, 'RECURRENCE-ID:20261205T100000Z'), null],
  ])('%s', async (_, harmful, why) => {
    const outcome = await read(calendarOf(harmful, HONEST));
    expect(outcome.trouble).toBeNull();
    expect(titles(outcome)).toContain('Choir');
    expect(outcome.leftOut.map((left) => left.why)).toEqual(why === null ? [] : [why]);
    expect(outcome.took).toBeLessThan(15_000);
  });

  test('a clock of its own for each of 20,000 events', async () => {
    const many = Array.from({ length: 20_000 }, (_, index) =>
      eventOf(`UID:${index}`, `DTSTART;TZID=Clock ${index}:20261205T100000`, 'DURATION:PT1H'),
    );
    const outcome = await read(calendarOf(...many, HONEST));
    expect(outcome.busy).toHaveLength(20_001);
    expect(outcome.leftOut).toEqual([{ why: 'zone', count: 1000, example: 'Clock 0' }]);
    expect(outcome.took).toBeLessThan(20_000);
  }, 60_000);

  test('many of them do not take the place of what is honest', async () => {
    const seconds = Array.from({ length: 60 }, (_, index) =>
      eventOf(`UID:${index}`, 'DTSTART:20261202T000000Z', 'DURATION:PT1S', 'RRULE:FREQ=SECONDLY'),
    );
    const weekly = eventOf('UID:w', 'SUMMARY:Rowing', 'DTSTART:20201205T100000Z', 'DURATION:PT1H', 'RRULE:FREQ=WEEKLY');
    const outcome = await read(calendarOf(...seconds, weekly, HONEST));
    expect(titles(outcome)).toEqual(expect.arrayContaining(['Choir', 'Rowing']));
    expect(outcome.busy.length).toBeLessThan(60_000);
  }, 60_000);
});

describe('broken', () => {
  test.each<[string, string | Buffer]>([
    ['nothing in it', ''],
    ['a picture', Buffer.from([0xff, 0xd8, 0xff, 0xe0, 0, 16, 74, 70, 73, 70, 10, 13, 10])],
    ['a page of the web', '<!doctype html><title>Sign in</title>'],
    ['zeros', Buffer.alloc(100_000)],
    ['one line without end', 'x'.repeat(3_000_000)],
    ['an address book', ['BEGIN:VCARD', 'VERSION:4.0', 'FN:Nobody', 'END:VCARD', ''].join(CRLF)],
  ])('%s is no calendar file', async (_, bytes) => {
    expect((await read(bytes)).trouble).toBe('It is no calendar file.');
  });

  test.each<[string, string]>([
    ['a byte order mark', `\uFEFF${calendarOf(HONEST)}`],
    ['bare line feeds', calendarOf(HONEST).replaceAll('\r', '')],
    ['letters that are no UTF-8', calendarOf(HONEST, eventOf('UID:2', 'SUMMARY:\u00ff\u00fe', ...when))],
    ['two calendars in one file', calendarOf(HONEST) + calendarOf(eventOf('UID:2', 'SUMMARY:Second', ...when))],
    ['ends that belong to nothing', calendarOf('END:VEVENT', 'END:X', HONEST)],
  ])('%s is read all the same', async (_, text) => {
    expect(titles(await read(Buffer.from(text, 'utf8')))).toContain('Choir');
  });

  test('one that ends in the middle is read as far as it goes, and that is said', async () => {
    const whole = calendarOf(HONEST, eventOf('UID:2', 'SUMMARY:Second', ...when));
    const { busy, leftOut } = await read(whole.slice(0, whole.indexOf('Second')));
    expect(busy.map(({ title }) => title)).toEqual(['Choir']);
    expect(leftOut).toEqual([{ why: 'broken', count: 2, example: '' }]);
  });
});

describe('while it is read', () => {
  test('a file that is written meanwhile is read again, whole', async () => {
    const path = join(temporaryFolder(), 'a.ics');
    const whole = calendarOf(HONEST, eventOf('UID:2', 'SUMMARY:Second', ...when));
    const cut = whole.indexOf('Second');
    writeFileSync(path, whole.slice(0, cut));
    const reading = readFile(path);
    setTimeout(() => appendFileSync(path, whole.slice(cut)), 250);
    const { busy, leftOut } = await reading;
    expect(busy.map(({ title }) => title)).toEqual(['Choir', 'Second']);
    expect(leftOut).toEqual([]);
  });

  test('one that keeps changing says so, and nothing is read', async () => {
    const path = join(temporaryFolder(), 'a.ics');
    const note = `DESCRIPTION:${`${CRLF} ${'y'.repeat(74)}`.repeat(100_000)}`;
    writeFileSync(path, calendarOf(eventOf('UID:1', ...when, note), HONEST));
    const before = statSync(path).size;
    const writer = spawn('sh', ['-c', 'while :; do echo >> "$0"; done', path]);
    onTestFinished(() => void writer.kill('SIGKILL'));
    while (statSync(path).size === before) await wait(5);
    const { trouble } = await readFile(path);
    expect(trouble).toBe('It kept changing while it was read.');
  });

  test('something that is no file is not waited for', async () => {
    const path = join(temporaryFolder(), 'pipe.ics');
    spawnSync('mkfifo', [path]);
    expect((await readFile(path)).trouble).toBe('It is no calendar file.');
  });

  test('a reading that takes too long is stopped, and says so', async () => {
    const path = join(temporaryFolder(), 'slow.ics');
    const slow = Array.from({ length: 3000 }, (_, index) =>
      eventOf(`UID:${index}`, 'DTSTART:19500105T100000Z', 'DURATION:PT1M', 'RRULE:FREQ=MINUTELY;COUNT=999999999'),
    );
    writeFileSync(path, calendarOf(...slow));
    const { trouble, took } = await readFile(path, 1);
    expect(trouble).toBe('Reading it took longer than 1 second and was stopped.');
    expect(took).toBeLessThan(5000);
  });
});
