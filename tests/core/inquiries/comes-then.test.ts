/**
 * The hour at which I am to be there where neither a word for a call nor an hour of my own stands beside it: told by what points back to it, by
 * what was taken back, by whoever speaks of me as somebody else.
 */
import { describe, expect, test } from 'vitest';
import { facts, lines } from './reading.ts';

const message = (way: string): string => `Hi Kit,\nCan you film our party on Saturday 12 December in Fargo? ${way}\nThanks,\nAnn Leverett`;
const called = (way: string): unknown => facts(message(way)).firstCall;

describe('there at nine in the morning', () => {
  const ways = lines(`
    Doors are at noon. The harpist tunes at 9am and you could set up while she does.
    The choir files in at 9am and it is then that we want you there.
    The porter opens the gate at 9am, at which point you can come in.
    The judges arrive at 9am, lunch is at 1pm. Please come with the judges.
    The caterers get in at 9am and guests at noon; I would like you there with the caterers.
    Volunteers turn up at 9am so you do too.
    The bus leaves the school at 9am and you ride along, so be here for that please.
    Keys are handed over at 9am and you need to be at the barn by then.
    The band plays at 8pm and that is when I will propose, but hide earlier, get yourself behind the bar by 9am.
    Møt oss ved bussen kl. 09:00.
    Call is 7am, no wait, the boss just wrote, 9am at the west door.
    You needn't come at 7am as I said on the phone but at 9am.
    Press call is at 11am, ribbon at noon. You on the quay by 9am for the briefing.
    You're called at 9am, sound check 2pm.
    We'd see you at 9am by the fountain.
    I'd meet you 9am outside the registry office.
    If you arrived at 9am I'd let you in myself.
    If you're in the hall by 9am the manager will show you the sockets.
    9am would be ideal for you to be there.
    Please plan on 9am to get wired in.
    - You: at the church hall 9am, cakes from noon
    Meet at the ferry terminal 9am, do not be late.
    Please be at the casino by 9am.
    Stage door at 9am please, doors are at noon.
    Our regular guy is ill. 9am at the loading dock, all done by 5pm.
    Arrive together with the brass band at 9am.
    I'd want you there from when the make-up starts, which is 9am.
    Get here by 9am, you're free after the cake.
    We want our own videographer on the wharf at 9am.
    Te necesitamos a las 09:00 para la reunión de equipo.
  `);
  test.each(ways)('%s', (way) => expect(called(way)).toBe('2026-12-12T09:00'));
});

describe('no hour of mine', () => {
  const ways = lines(`
    The speaker walks in at 7pm with her family.
    Press call is at 11am.
    Guests arrive at 3pm and the mayor comes with the guests.
    The bus leaves at 10pm and you can go with the others.
    6pm would be ideal for the cake.
  `);
  test.each(ways)('%s', (way) => expect(called(way)).toBeUndefined());
});
