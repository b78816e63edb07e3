/**
 * Lines, folds and escapes.
 * @source Internet Engineering Task Force, RFC 5545 (iCalendar), 3.1 Content Lines, 3.2 and 3.3.11 Text, 2009
 */
import { test as lawTest, fc } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import { escaped, folded } from '../../../core/calendars/write.ts';
import { calendarOf, CRLF, eventOf, readOctets, readText } from '../../calendar-text.ts';

const START = 'DTSTART:20261205T100000Z';
const titles = (text: string) => readText(text).busy.map(({ title }) => title);

describe('3.1', () => {
  const LONG = 'This is a long description that exists on a long line.';
  test.each([
    ['in the middle of a word', `SUMMARY:This is a lo${CRLF} ng description${CRLF}  that exists on a long line.`],
    ['with a tab', `SUMMARY:This is a lo${CRLF}\tng description${CRLF}\t that exists on a long line.`],
    ['with bare line feeds', 'SUMMARY:This is a lo\n ng description\n  that exists on a long line.'],
    ['in the name of the property', `SUM${CRLF} MARY:${LONG}`],
  ])('a line folded %s is one line', (_, line) => {
    expect(titles(calendarOf(eventOf('UID:1', START, 'DURATION:PT1H', line)))).toEqual([LONG]);
  });

  test('a fold between two octets of one letter', () => {
    const [first = '', second = ''] = Buffer.from('é', 'utf8').toString('latin1');
    const octets = Buffer.from(`SUMMARY:Caf${first}${CRLF} ${second}`, 'latin1');
    // As octets: read as UTF-8 text it would be broken before it is unfolded.
    const before = Buffer.from(['BEGIN:VCALENDAR', 'BEGIN:VEVENT', 'UID:1', START, 'DURATION:PT1H', ''].join(CRLF));
    const after = Buffer.from([CRLF + 'END:VEVENT', 'END:VCALENDAR', ''].join(CRLF));
    expect(readOctets(Buffer.concat([before, octets, after]).toString('latin1')).busy.map(({ title }) => title)).toEqual(['Café']);
  });

  test('lines are cut at 75 octets, and never inside of a letter', () => {
    const pieces = folded(`DESCRIPTION:${'å'.repeat(100)}${'𝄞'.repeat(30)}`).split(CRLF);
    for (const piece of pieces) expect(Buffer.byteLength(piece)).toBeLessThanOrEqual(75);
    expect(pieces.every((piece) => piece.isWellFormed())).toBe(true);
    expect(Buffer.byteLength(pieces[0] ?? '')).toBeGreaterThanOrEqual(72);
    expect(folded('x'.repeat(75))).toBe('x'.repeat(75));
    expect(folded('x'.repeat(76))).toBe(`${'x'.repeat(75)}${CRLF} x`);
  });

  lawTest.prop([fc.string({ unit: 'binary', maxLength: 400 })])('whatever is folded is unfolded to the same', (text) => {
    const line = `X:${text.replaceAll(/[\r\n]/g, '').toWellFormed()}`;
    const cut = folded(line);
    expect(cut.replaceAll(`${CRLF} `, '')).toBe(line);
    for (const piece of cut.split(CRLF)) expect(Buffer.byteLength(piece)).toBeLessThanOrEqual(75);
  });
});

describe('3.2 and 3.3.11', () => {
  test('the example of three lines', () => {
    expect(escaped('Project XYZ Final Review\nConference Room - 3B\nCome Prepared.')).toBe(
      String.raw`Project XYZ Final Review\nConference Room - 3B\nCome Prepared.`,
    );
  });

  test.each([
    ['a comma, a semicolon and a backslash', String.raw`Conference Room - F123\, Bldg. 002\; \\`, 'Conference Room - F123, Bldg. 002; \\'],
    ['a colon needs none', 'Call: dock 2', 'Call: dock 2'],
    ['a line end, small or large', String.raw`one\ntwo\Nthree`, 'one two three'],
  ])('%s', (_, written, meant) => {
    expect(titles(calendarOf(eventOf('UID:1', START, 'DURATION:PT1H', `SUMMARY:${written}`)))).toEqual([meant]);
  });

  test('a parameter in quotes may hold what would end it', () => {
    const event = eventOf(
      'UID:1',
      'DTSTART;X-NOTE="a;b:c,d";TZID="America/New_York":20261205T100000',
      'DURATION:PT1H',
      'SUMMARY;LANGUAGE=en:Yes',
    );
    const { busy } = readText(calendarOf(event));
    expect(busy.map(({ title, startAt }) => [title, startAt])).toEqual([['Yes', Date.parse('2026-12-05T15:00Z')]]);
  });

  test('names say the same in small letters', () => {
    const small = [
      'begin:vcalendar',
      'begin:vevent',
      'uid:1',
      'dtstart:20261205T100000Z',
      'duration:PT1H',
      'summary:Small',
      'end:vevent',
      'end:vcalendar',
      '',
    ];
    expect(titles(small.join(CRLF))).toEqual(['Small']);
  });
});
