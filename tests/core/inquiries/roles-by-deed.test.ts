/**
 * What is asked of me where it has no name: told by what is done, by what comes of it, or by what is not wanted.
 */
import { describe, expect, test } from 'vitest';
import { roleAsked } from '../../../core/inquiries/work/role.ts';
import { workTold } from '../../../core/inquiries/work/told-work.ts';

const done: Record<string, string[]> = {
  livestream: [
    "Grandad is in hospital and can't leave the ward, so we'd like him to see the vows on his tablet as they are being said.",
    'Our sister lives in Adelaide. Could she somehow watch the naming at the very moment it happens?',
    "Half the choir's parents are not able to come. They want to follow the carols live from home.",
    'The old members are housebound and we hope to bring the service to them while it is going on.',
    'My brother cannot fly. Is there a way to get the ceremony to him there and then?',
    "Uncle Ned is stuck on a rig. He'd love to hear the speeches in real time.",
  ],
  'vision mixing': [
    'Three cameras are manned. We want a person who chooses which shot goes up on the big screen.',
    "You'd sit at the desk and pick the picture, nothing else; the lads have the cameras.",
    'Somebody has to decide whose face the hall sees.',
    'Somebody should sit at the desk and choose the pictures for the stream, as our regular hand is away.',
    "You'd select the pictures for the screens from four cameras.",
    'There are four feeds, and your part is selecting the angle that goes out.',
    'Could you be the one deciding what comes up on the screens?',
    'Please sit in the van and choose between our five cameras for the wall, with the console.',
  ],
  'second camera': [
    "I'm lead on a wedding in May. I want you roaming for the guests while I stay with the couple.",
    "I have the stage. You'd take the balcony side.",
    'Orsolya is filming the ball. We want you up in the gallery with the wide.',
    "Would you mind being the other angle? I've sold them two angles.",
    "You'd get whatever I'm not pointing at.",
    "I'm behind the main one. You'd have the aisle.",
  ],
  'edit only': [
    'The tapes of our tour are lying in the cupboard. Could you sit down with them and make a film? Nothing is left to be filmed.',
    'It was all filmed by my two uncles at the harbour. Please make something with it, twelve minutes or so.',
    'Everything has been filmed. We need someone to cut it.',
    'Abbiamo già girato tutto e cerchiamo qualcuno per il solo montaggio.',
    'Drehen müssen Sie nichts mehr, wir suchen jemanden, der daraus einen Film schneidet.',
    'Not shooting, cutting. Two evenings in the truck, turning the clips into a package.',
  ],
  audio: [
    "I'd like my mother's voice kept properly, with a good microphone. There is to be no camera.",
    'We want the sound of the organ. A camera would be useless in the dark.',
    'Please record the readings for sound.',
    'Two microphones in the nave and a clean mix; no pictures of any kind.',
  ],
  other: [
    'I need a person at the back who copies the cards and labels them.',
    "We're looking for a lamp person to follow the bride about.",
    'Somebody who backs up the drives is wanted.',
  ],
  shoot: [
    'DAY PLAYER: CAM OP\nNot needed: stills, drone',
    "We'd like a videographer for the fair.\nWe don't need: photos, streaming",
    'The gala stream fell through, but the same people have a ribbon cutting: solo camera.',
    'Could you do a video of the dances? We had a man but he is only doing photos now.',
    'Kit my son, take whichever day you can shoot.',
    'Your scope: camera. Simple switching of slides is not needed.',
  ],
};

/** What sounds near it and is told of other things. */
const notTold = [
  "My aunt can't come, so we'd like a film to send to her.",
  'The band is live from eight and our cousins live in Ghent.',
  'We will choose which pictures go in the album.',
  'Have you time for our summer fair? You would be at the gate at nine.',
  'No cameras during the vows, please. After that you are free to roam.',
  'Somebody will copy the keys for you.',
];

describe('a role is told by what is done', () => {
  test.each(Object.entries(done).flatMap(([role, texts]) => texts.map((text) => [role, text] as const)))('%s: %s', (role, text) => {
    expect([...new Set(roleAsked(text).map((hit) => hit.role))]).toStrictEqual([role]);
  });
});

describe('nothing is made of words that only sound like it', () => {
  test.each(notTold)('%s', (text) => {
    expect(workTold(text)).toStrictEqual([]);
  });
});
