/**
 * Words of work that ask for none of it: what I do in general, what another does, whom I bring; and what is asked beside them.
 */
import { expect, test } from 'vitest';
import { facts, readAt } from './reading.ts';

const WHEN = ' December 12 in Ely, 9am to 5pm, $400.';
test.each([
  ['livestream', 'I was told you film weddings. The parish wants its carol service going out live on the web,'],
  ['audio', 'Hi, you filmed our AGM last year. This time we need the sound recorded for a podcast,'],
  ['livestream', 'All four boards must be streamed. The cameras get calibrated at 9.'],
  ['livestream', 'The readings should be livestreamed,'],
  ['shoot', 'Our usual firm does only stills, so for the moving image we come to you.'],
  ['livestream', "It's always been audio only, this year they want it live on the internet with pictures."],
  ['audio', 'No cameras. I need somebody who can mic up four people and hand me separate tracks.'],
  ['vision mixing', 'Four cameras are planned and we would confide to you the mixing of the images in live,'],
  ['vision mixing', 'Would you consider coming over to vision mix? We have three volunteer cameras.'],
  ['shoot', 'Looking for one shooter/editor who can turn around 3 vertical cuts the same night.'],
  ['second camera', "You'd be second cameraman, I'm the first. We film the fair,"],
  ['edit only', 'New one, edit only but in our bay,'],
])('%s: %s', (role, text) => expect(facts(`${text}${WHEN}`).role).toBe(role));

test.each([
  'Would you be free to give us a hand at the dinner on',
  'Are you working the ceilidh on',
  'Quick question, are you open for the graduation ceremony on',
])('an occasion alone says nothing of what: %s', (text) => expect(facts(`${text}${WHEN}`).role).toBeUndefined());

test('one of two is asked about', () => {
  const { questions } = readAt(`Two holes in my team: a second camera and the image mixer. Which one do you prefer?${WHEN}`);
  expect(questions.find(({ field }) => field === 'role')?.choices.map(({ value }) => value)).toEqual(['second camera', 'vision mixing']);
});
