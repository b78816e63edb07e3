/**
 * A sentence about something else changes no day and no hour of mine: what was stated stays, or it is asked; it never becomes another.
 */
import { expect, test } from 'vitest';
import { messages } from '../../reader/corpus.ts';
import { read } from '../../reader/scores.ts';
import { waysOf } from '../../reader/ways.ts';

const sentences = waysOf('beside');

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
