/**
 * What is to be handed over, in the words of strangers; and what is filmed, shown or brought and no thing of mine.
 */
import { describe, expect, test } from 'vitest';
import { facts, lines, ONE_DAY } from './reading.ts';

const things = (words: string): string => (facts(`${ONE_DAY} ${words}\n\nThanks, Robin`).deliverables ?? []).join(' | ');

describe('things', () => {
  test.each([
    ['What the parents want is one full-length video they can download.', 'full-length video'],
    ["At the end we'd need a single edited file we can send on.", 'single edited file'],
    [
      "What we're after: a two-camera recording of all four shows, and a USB stick for each family.",
      'recording of all four shows | USB stick for each family',
    ],
    ['Wir erwarten dafür einen Film von rund drei Minuten sowie die Reden ungekürzt.', 'Film von rund drei Minuten | die Reden ungekürzt'],
    ['Ci servirebbe la registrazione integrale.', 'la registrazione integrale'],
    ['We want to have: 1x video 3 minutes, 1x video 30 seconds.', '1x video 3 minutes | 1x video 30 seconds'],
    ['To deliver: one summary video of 90 seconds and the 4 keynotes complete.', 'summary video of 90 seconds | keynotes complete'],
    ['We wish a relaxed film for our homepage.', 'relaxed film for our homepage'],
    ['Out of the material I wish for one film of four minutes and a short version for the screen.', 'film of four minutes | short version'],
    ['We want this: 90 seconds for our website, plus ten vertical clips.', '90 seconds for our website | ten vertical clips'],
    ['Three pen drives with the film are to be handed over before the break.', 'Three pen drives with the film'],
    ['One film of the whole evening is plenty.', 'film of the whole evening'],
    ['Full wedding film plus 3 reels.', 'Full wedding film | 3 reels'],
    ['We would need one clean file of the quarter-final.', 'clean file of the quarter-final'],
    ['Afterwards we would like one file per speaker.', 'file per speaker'],
    ['We want the full concert as one file.', 'full concert as one file'],
    ['Please send a two-minute film and half a dozen stills.', 'two-minute film | half a dozen stills'],
    ['We would like an online gallery afterwards.', 'online gallery'],
    ['We need 2 copies on DVD.', '2 copies on DVD'],
    ['We would like to get: a short film of ten minutes and a picture for the website.', 'short film of ten minutes | picture'],
    ['What we need out of it is a locked-off wide and one cut version.', 'locked-off wide | cut version'],
    ['Nous aimerions recevoir un film de trois minutes et les discours en entier.', 'film de trois minutes | les discours en entier'],
  ])('%s', (words, told) => expect(things(words)).toBe(told));
});

describe('no things', () => {
  const ways = lines(`
    We need a fella to film each bull.
    I need somebody to mix three cameras live into one recording.
    The estate allows only one recording, and we like it that way.
    We would film each lesson with one camera.
    You make such calm short films!
    What we're after is a relaxed day.
    We'd like a video person for the day.
    One video crew is there already.
    Please bring a USB stick for each camera.
    We give a USB stick for each guest.
    I handed out one copy on DVD last year.
    We need the forms complete.
    The interviews complete the evening.
    We need reels of cable too.
    There are 90 seconds for our website launch on stage.
    We want to record video with 3 minutes of delay.
    One film is shown at 8, then one recording of the choir is played.
    We saw a film for our website by somebody else.
    From you comes only the camera, the sound is ours.
    Wir wünschen uns einen ruhigen Kameramann.
    Il nous faudrait quelqu'un pour filmer la scène.
    Die Zeitung druckt die Reden ungekürzt.
  `);
  test.each(ways)('%s', (words) => expect(things(words)).toBe(''));
});
