/**
 * What a heading or a sentence says is to be handed over, whatever it is called, and what only looks like such a list.
 */
import { describe, expect, test } from 'vitest';
import { handedOver } from '../../../core/inquiries/work/handed-over.ts';

const things = (text: string): string[] => handedOver(text).map(({ start, end }) => text.slice(start, end));

describe('headings', () => {
  test.each([
    ['Output: a short reel; the speeches, uncut.\nBest, Ann', ['a short reel', 'the speeches, uncut']],
    [
      "You'd send us:\n- one long version\n- all the songs apart\nYou'd not send us:\n- photos",
      ['one long version', 'all the songs apart'],
    ],
    ['Hand over: camera cards, at wrap', ['camera cards, at wrap']],
    ['Delivery: 1 report of 2 minutes; 1 version without speech.', ['1 report of 2 minutes', '1 version without speech']],
    ['Gewünscht: ein Film in voller Länge sowie ein Kurzclip.', ['ein Film in voller Länge', 'ein Kurzclip']],
    ['Wat we willen hebben: een aftermovie en losse clips voor onze socials.', ['een aftermovie', 'losse clips']],
  ])('%s', (text, found) => expect(things(text)).toEqual(found));
});

describe('sentences', () => {
  test.each([
    [
      "What we'd hope to end up with is a minute or so for the site and something longer for the AGM.",
      ['a minute or so for the site', 'something longer for the AGM'],
    ],
    ['All he wants afterwards is the sermon, start to finish, on a stick.', ['the sermon, start to finish, on a stick']],
    ["In return we'd like to receive every toast in full, plus a two-minute clip.", ['every toast in full', 'a two-minute clip']],
    ["We'd want three things back: a two-minute piece, a folder of frames.", ['a two-minute piece', 'a folder of frames']],
  ])('%s', (text, found) => expect(things(text)).toEqual(found));
});

describe('no things', () => {
  test.each([
    'We would like to have a reply by Friday.',
    "We'd like to have you there at 9.",
    'We need a videographer and a sound man.',
    "I'd like to receive your quote.",
    "We'd want one person with two cameras.",
    "We don't need an edit.",
    'No delivery: photos, podcast.',
    "We'd like a film of the evening.",
    'We want the boats on video leaving the harbour.',
    "We'd want to know by Friday whether you can.",
    'We need 2 video, 1 photo.',
  ])('%s', (text) => expect(things(text)).toEqual([]));
});
