/**
 * Messages with dates and words of the trade that ask nobody to film, and short ones that do.
 */
import { expect, test } from 'vitest';
import { waysOf } from '../../reader/ways.ts';
import { readAt } from './reading.ts';

const nothing = waysOf('none');
test.each(nothing)('asks for none: %s', (text) => expect(readAt(text).isInquiry).toBe(false));

const work = waysOf('asks');
test.each(work)('asks for work: %s', (text) => expect(readAt(text).isInquiry).toBe(true));
