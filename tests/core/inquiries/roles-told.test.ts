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

test.each([
  ['shoot', 'The drummer pipes us out at the end and you may go at the same time. One film of our ceilidh is plenty,'],
  ['shoot', 'Could you come and video our twins? Also do you do drone? not bothered if not. Party on'],
  ['shoot', 'A recording of our play. There is a run at 3 in which you can find your shots,'],
  ['shoot', 'We flick the switch of the new lamp at six and the mayor says get it on video,'],
  ['shoot', 'I want you on the front-of-house camera, following speakers at our conference,'],
  ['shoot', "We open our mill and would like that on film; your filming's done at 7,"],
  ['shoot', 'Single cam with a reporter for the count,'],
  ['vision mixing', 'For the live mixing of the four house cameras at our ball you receive a fee,'],
  ['vision mixing', 'Could you ensure the live mixing of the main stage, three cameras plus slides?'],
  ['vision mixing', 'We look for two people, one of them would be you, as operator of the mixer (four cameras),'],
  ['vision mixing', '¿Te encargas tú de la mesa de mezclas de vídeo? Jornadas de farmacia,'],
  ['livestream', 'It shall go live into the net. Could you take over the stream?'],
  ['livestream', 'The pupils graduate and we want to emit it live for the grandparents,'],
  ['second camera', 'I have the lead camera at a symposium and am permitted a second one. Would you?'],
  ['second camera', "Awards do: I've the first camera and the company will pay for a second."],
  ['second camera', 'We would like you as cameraman number two at our congress,'],
  ['audio', "I got your details from a soundie we both know. We're shooting panels and I'm after a location sound recordist,"],
  ['photo', 'We know you as a filmer, but we already have a film crew; what is missing is a photographer,'],
  ['other', 'Camera people are all there. What is missing is a data wrangler (DIT),'],
  ['other', 'No camera this time: I need somebody who sets the lights with me and carries,'],
])('%s is what is asked: %s', (role, text) => expect(facts(`${text}${WHEN}`).role).toBe(role));

test.each([
  ['second camera', 'We have the main camera sorted and the venue pays for a second, so we need a sound recordist,'],
  ['second camera', "I've the first camera battery and a second one, would you film our derby?"],
  ['vision mixing', 'Live mixing for a four-piece at our club, cameras will be there too but not your thing,'],
  ['livestream', 'The dancers play at the same time as the pipers; film both for us,'],
  ['shoot', 'Camera crew are all in place. We need somebody for the sound,'],
])('not %s: %s', (role, text) => expect(facts(`${text}${WHEN}`).role).not.toBe(role));
