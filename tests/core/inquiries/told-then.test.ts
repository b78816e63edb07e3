/**
 * Hours of something else at which I am told to come or to go by words that point back to them.
 */
import { describe, expect, test } from 'vitest';
import { facts, lines } from './reading.ts';

const message = (way: string): string => `Hi Kit,\nCan you film our fair on Saturday 12 December in Fargo? ${way}\nThanks,\nAnn Leverett`;

describe('to come at two in the afternoon', () => {
  const ways = lines(`
    Doors open for our helpers at 2pm and you should come then.
    The band loads in at 2pm; please arrive with them.
    Sound check is at 2pm, which would be your arrival as well.
    the bride is getting ready from 2pm and this is when you should arrive
    Caretaker unlocks at 2pm, be there then please.
    Dress rehearsal is 2pm and it'd be ideal if you came then.
    Team photo's at 2 pm so you'd be there for that
    The electrician gets there at 2pm. It would be good to have you there too.
    Tea is at 2pm, be here for tea.
    Line-up is 2pm, come for line-up, parade at 3pm.
    Get there when the gates open at 2pm.
    Please arrive as the hall opens, 2pm.
    Our stage people are in from 2pm and so are you.
    DJ sets up at 2pm, you likewise.
    The caterers come at 2pm. You could come at the same time.
    2pm is when Jo opens up, and that is when we'd want you.
    Jo has the key from 2pm, that's when she can let you in.
  `);
  test.each(ways)('%s', (way) => expect(facts(message(way)).firstCall).toBe('2026-12-12T14:00'));
});

describe('to go at six', () => {
  const ways = lines(`
    The buses leave at 6pm so you could leave then too.
    At 6pm the guests go to dinner and for you it's done.
    School's out at 6pm so that's a natural end for everyone, you included.
    The field is cleared by 6pm and everybody goes home, you too.
    Recording stops at 6pm and so does your work.
    Blessing is at 6pm, whereupon you are at liberty to depart.
    6pm would see you out.
    They finish at 6pm and so do you.
    We eat from 6pm and you're welcome to stay but the work stops then.
    The talk runs 4pm to 6pm. You'd be finished when the talk is.
    The judge is done by 6pm, and so are you then.
    Last prize at 6pm and that's the end for you.
    The security man locks up at 6pm and that'd be your finish as well.
  `);
  test.each(ways)('%s', (way) => expect(facts(message(`Be there at 2pm. ${way}`)).lastWrap).toBe('2026-12-12T18:00'));
});

describe('what I am told to leave out is no call', () => {
  const ways = lines(`
    Rehearsal is at 1pm but you need not trouble yourself with that. Please be there at 3pm.
    The dancers are dressing at 1pm, you don't need that; be there at 3pm.
    Build starts at 1pm (you can skip that bit). You'd come at 3pm.
  `);
  test.each(ways)('%s', (way) => expect(facts(message(way)).firstCall).toBe('2026-12-12T15:00'));
});

describe('nothing points back to it', () => {
  const ways = lines(`
    Doors are at 3pm and you'd get a seat near the stage too.
    The guests arrive at 3pm, you know how that goes.
    It starts at 3pm and I'd love you to film it for us too.
    The show is at 3pm. Please let us know if you can come to that.
  `);
  test.each(ways)('%s', (way) => expect(facts(message(way)).firstCall).toBeUndefined());
});
