/**
 * Why a calendar cannot be read, or the file of one's own dates not be written: what happened, what was kept, what to do.
 */
import type { CalendarTrouble } from '../../core/contract/calendars.ts';
import { countInWords } from '../../core/words/amounts.ts';

const KEPT = 'What was read of it before still counts.';
const CHANGE = 'or change where it lies in Setup.';
const trouble = (what: string, todo: string, kept = KEPT): CalendarTrouble => ({ what, kept, todo });

export const goneTrouble = () => trouble('There is no file or folder at its path.', `Put it back, ${CHANGE}`);
export const damagedPath = (code: string) =>
  ['EACCES', 'EPERM'].includes(code)
    ? trouble('It may not be read by this user.', `Give yourself the right to read it, ${CHANGE}`)
    : trouble(`The system refused to read it (${code}).`, `Check whether it can be opened elsewhere, ${CHANGE}`);
export const noCalendarIn = (what: 'file' | 'folder') =>
  what === 'file'
    ? trouble('It is no calendar file.', `Save it as iCalendar (.ics) in the program that it comes from, ${CHANGE}`)
    : trouble('The folder holds no calendar file (.ics).', `Save one there, ${CHANGE}`);
export const tooManyFiles = (most: number) =>
  trouble(`The folder holds more than ${most} calendar files.`, `Save it as one file, ${CHANGE}`);
export const tooLarge = (megabytes: number) =>
  trouble(`It is larger than ${megabytes} MB.`, 'Save fewer years of it, or switch it off in Setup.');
export const keepsChanging = () => trouble('It kept changing while it was read.', 'It is read again by itself in a minute.');
export const tookTooLong = (seconds: number) =>
  trouble(
    `Reading it took longer than ${countInWords(seconds, 'second')} and was stopped.`,
    'Save fewer years of it, or switch it off in Setup.',
  );
export const tooMuch = () =>
  trouble('Reading it needed more memory than it may take.', 'Save fewer years of it, or switch it off in Setup.');

const OUT_KEPT = 'Your dates are safe in the store; other programs see them as they were written last.';
export const folderGone = () => trouble('The folder to write to is not there.', 'Make it again, or choose another in Setup.', OUT_KEPT);
export const folderRefused = (code: string) =>
  trouble(
    `The folder to write to refused the file (${code}).`,
    'Make room or give yourself the right to write there, or choose another in Setup.',
    OUT_KEPT,
  );
export const notOurs = (name: string) =>
  trouble(`A file ${name} lies there that Kitbound did not write.`, 'Move it away, or choose another folder in Setup.', OUT_KEPT);
export const portTaken = (port: number) =>
  trouble(
    `Port ${port} is taken by another program.`,
    'Close that program, or switch the feed off and on in Setup for another port.',
    'The file itself is written.',
  );
