/**
 * Reading files for their checksums, in words.
 */
import type { Reading } from '../contract/handovers.ts';
import { countInWords, lengthInWords } from '../words/amounts.ts';
import { bytesInWords } from '../words/bytes.ts';

type Facts = { state: Exclude<Reading['state'], 'refused'> } & Pick<
  Reading,
  'bytes' | 'of' | 'files' | 'ofFiles' | 'seconds' | 'troubles' | 'list'
>;

/** Less than this says nothing yet about how fast a disk is. */
const TOO_SOON = 3;

/** One that was refused has a sentence of its own. "412 MB of 3.24 GB, 2 of 40 files, about 1 min to go". */
export function readingInWords(facts: Facts): string {
  const { state, of, ofFiles, troubles, list } = facts;
  const whole = `${countInWords(ofFiles, 'file')}, ${bytesInWords(of)}`;
  if (state === 'reading') return ofFiles === 0 ? 'Looking at what is there.' : `${howFar(facts)}${toGo(facts)}.`;
  if (state === 'stopped') return ofFiles === 0 ? 'Stopped. Nothing was kept.' : `Stopped after ${howFar(facts)}. Nothing was kept.`;
  if (state === 'incomplete')
    return `${countInWords(troubles.length, 'file')} of ${ofFiles + missing(facts)} could not be read. Put that right and read them again.`;
  return list.some(({ bytes }) => bytes === 0) ? `Read: ${whole}. ${emptyOnes(list)}` : `Read: ${whole}.`;
}

/** Part of the whole, from 0 to 1. */
export function readingPart({ bytes, of, state }: Pick<Reading, 'bytes' | 'of' | 'state'>): number {
  if (of > 0) return Math.min(1, bytes / of);
  return state === 'reading' ? 0 : 1;
}

function howFar({ bytes, of, files, ofFiles }: Facts): string {
  return `${bytesInWords(bytes)} of ${bytesInWords(of)}, ${files} of ${countInWords(ofFiles, 'file')}`;
}

/** By the speed so far, rounded up to whole minutes. */
function toGo({ bytes, of, seconds }: Facts): string {
  if (seconds < TOO_SOON || bytes === 0 || bytes >= of) return '';
  const left = ((of - bytes) * seconds) / bytes;
  return left < 60 ? ', less than a minute to go' : `, about ${lengthInWords(Math.ceil(left / 60))} to go`;
}

/** Folders that could not be opened are troubles without a file among those that were found. */
function missing({ troubles, list, ofFiles }: Facts): number {
  return Math.max(0, troubles.length + list.length - ofFiles);
}

function emptyOnes(list: Facts['list']): string {
  const empty = list.filter(({ bytes }) => bytes === 0);
  return empty.length === 1
    ? `${empty[0]?.name} is empty: check whether it was written to its end.`
    : `${empty.length} of them are empty: check whether they were written to their end.`;
}
