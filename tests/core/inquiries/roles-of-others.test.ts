/**
 * What is asked of me beside work that another does, offered or is, that I made before, or that comes to me.
 */
import { expect, test } from 'vitest';
import { facts, readAt } from './reading.ts';

const BESIDE = [
  // what I made
  'Your livestream of the Tadcaster regatta was a joy.',
  'Your photos of the mill are wonderful as well.',
  'Your vision mixing at the derby was superb.',
  'We loved the second camera angle in your rugby film.',
  // what comes to me
  "I'll send you photos of the stage tomorrow.",
  // what somebody is
  'Robin used to work as a vision mixer, so be warned.',
  'As a photographer I know how long things take.',
  'I work as a producer at a photo agency.',
  // what was proposed, priced or given up
  'Someone suggested a photographer instead, but no.',
  'A second camera would be £200 more, said the last firm.',
  'We gave up on the live stream.',
  'The stream was lost halfway last year.',
  // what others do
  'We already have someone for the live stream.',
  "The university's media team will put it out live on their own page.",
  'You may run into another camera crew.',
  'The stage crew brings a mixer and two cameras for the screens.',
  'The sound hire is £350.',
  'The speeches are filmed by my nephew on his phone.',
  'A different firm filmed the first night.',
  'It is livestreamed by the church as always.',
  'The first hour is photographed by our archivist.',
  "We've hired a proper PA this time, with an engineer.",
  'You get a runner from us.',
  'The truck does the switching, you just send signal.',
  "The other firm wanted to stream everything, we don't.",
  'We prefer a film to a stream.',
  'The book is about a war photographer.',
];
test.each(BESIDE)('filming is asked beside: %s', (sentence) => {
  expect(
    facts(`Hi Kit,\n\nWe would like our gala filmed on Saturday 12 June in Ripon. ${sentence}\n\nRobin Farley`, undefined, 'leeds').role,
  ).toBe('shoot');
  expect(
    facts(
      `Job: charity dinner, filming\nDate: 12/06/2027\nPlace: Ripon\nCall: 16:00\nFee: £500 flat\n${sentence}\nRobin Farley`,
      undefined,
      'leeds',
    ).role,
  ).toBe('shoot');
});

test.each([
  ['photo', "We've booked a photographer this time but he fell ill. Could you take the photos, 12 June, Ripon?"],
  ['photo', "We'd prefer photos to a film. 12 June, Ripon. Free?"],
  ['livestream', 'The other firm wanted £2000 to stream it. Could you stream our AGM on 4 March in Leeds for less?'],
  ['edit only', "We've a mountain of clips of our trip to Skye and no clue. Would you make us a film of it by 20 January?"],
  ['shoot', 'Our film is about a photographer, and we need a camera operator in Leeds on 4 March.'],
  ['photo', 'We loved your photos of the mill. Would you photograph our gala on 12 June in Otley?'],
  ['livestream', 'My colleague suggested a livestream for our AGM on 4 March in Leeds. Can you do that?'],
  ['livestream', 'Our streamer gave up. Can you stream our AGM on 4 March in Leeds?'],
  ['livestream', 'The college will be hosting the lecture on 20 January and we need it streamed. Can you quote?'],
  ['vision mixing', 'Would you work as a vision mixer for us on 20 May in Sheffield?'],
  ['audio', 'We need someone who works as a sound recordist, 20 May, Sheffield. Are you one?'],
  ['second camera', 'A second camera would be £250 for the day, 14 August, Thirsk. Could you do it?'],
  ['second camera', 'Could you be my number two on a wedding in Whitby, 26 June?'],
  ['edit only', 'The wedding was filmed by my cousin. Could you edit it by 20 January?'],
  ['edit only', 'I have six hours of footage from our trip and need somebody to cut it to five minutes by 20 January.'],
  ['shoot', 'Our talks are always filmed by a volunteer. On 4 March he is away: can you film them in Leeds?'],
  [undefined, 'Film it and stream it: AGM, 4 March, Leeds. Can you?'],
])('%s: %s', (role, text) => expect(facts(text, undefined, 'leeds').role).toBe(role));

test.each([
  'Is it possible to broadcast our funeral service on 3 December to relatives in Australia?',
  'Do you also take stills? We need some for our dinner on 12 December.',
  'Pencil you for 4 March?',
  'We are in search of one videomaker for 4 March, Leeds.',
  'Focus puller on 5 to 7 February?',
  'The parish council invites you to quote for filming its centenary on 12 June in Otley.',
  'Checking your availability: 4 March, Leeds, camera.',
  'Could you fill in for our cameraman on 4 March in Leeds?',
  'Please send me your rate for an operator in Hull on 9 March.',
  'New enquiry via your website\nName: Mia Holt\nService: photography\nDate: 14 August 2027\nLocation: Thirsk',
])('asks for work: %s', (text) => expect(readAt(text, undefined, 'leeds').isInquiry).toBe(true));

test.each([
  'We photographed the same wedding on 14 August: may I use your clips on my site?',
  'Would you like to sponsor our gala on 12 June? A table is £600.',
  'What lens do you recommend for filming my own wedding on 14 August?',
  'Need new headshots? Our studio has slots on 15 January, from £60.',
  'Need a second shooter? We have over 200 freelancers in Yorkshire. Sign up by 4 December and save 20 %.',
  'Looking for a videographer job in Leeds, any tips?',
  "Did you get my mail about the rota? You're on tea on 6 December.",
  'Kit, are you playing on Saturday? Kick-off is 2.',
  'Do you also make Sunday roasts? We are eight on 6 December.',
])('asks for none: %s', (text) => expect(readAt(text, undefined, 'leeds').isInquiry).toBe(false));

test.each(['Our marketing manager will take care of the social clips herself.', 'The final edit is made in our office.'])(
  'nothing to hand over: %s',
  (sentence) => expect(facts(`Could you film our gala in Ripon on 12 June? ${sentence}`, undefined, 'leeds').deliverables).toBe(undefined),
);
