/**
 * Hours that look like my call and are not: of people who come then, of parts of the day, of a place that is open or theirs; hours told from others,
 * hours that take the place of one told before, and in which half of the day doors open. None of them is a call, and one that is told beside them is.
 */
import { expect, it } from 'vitest';
import { callOf, facts, lines } from './reading.ts';

const told: [call: string, ways: string][] = [
  // people who are not me, and what is brought
  [
    '-',
    `
    The bride arrives at the church at 1:55 pm.
    Cast call is 5:30 pm.
    Our team call is at 9 am every Monday.
    The DJ sets up from 4 pm.
    The photographer is booked from noon to 8 pm.
    We have a photographer from noon to 8 pm.
    Crew from the staging company arrive at 7 am to build.
    Someone from our team will be at the door from 8 am.
    Our crew is called for 7 am.
    Our team will be on site from 7 am.
    All hands are on deck from 7 am.
    A second camera arrives at noon.
    The drone operator comes at 3 pm.
    The hall's technician is in from 9 am.
    Our event coordinator Dana will be there from 7 am.
    The flowers come at 8 am.
    The coach wants the team there by 10 am.
    We have told everyone to be there for 6.30.
    Our guests come by coach. They arrive at 5 pm.
    We let people in from 6:30 pm.
    Attendees can register from 8:30 am.
    Parking opens at 7 am.
    Please keep the phone on from 8 am.
    Ring the caretaker at 8 am to be let in.`,
  ],
  // parts of the day
  [
    '-',
    `
    Gates 9am, first act 11am, headline 9pm.
    Schedule: 9am registration, 10am talks, 5pm close.
    Timeline: 10 am first look, 2 pm ceremony, 6 pm reception.
    We begin at 10 am and finish by 4 pm.
    We open the doors half an hour before the 7 pm start.
    People tend to arrive an hour before it starts at 10 am.
    Staff briefing 8:30, doors 9:30, head's talk 10 and 11:30, close 1 pm.
    Race village opens 6:30 am, bag drop from 7 am, start gun 9 am, prizes at noon.
    Graduates line up at 9:15 am, procession 9:45 am, ceremony 10 am.
    It's 7 pm for a 7:30 pm start.`,
  ],
  // what is only for others
  [
    '-',
    `
    Tech run is at 3 pm, just for the cast.
    The rehearsal is at 10 am, no need for you to be there.
    Friday's tech run at 5 pm is internal.
    Load-in is Friday from 6 pm for the stage company only.`,
  ],
  // nobody says that I come then
  [
    '-',
    `
    The hall is ours from 2 pm.
    We have the hall from 2 pm.
    We are in from 8 am.
    We'll be setting up from 8 am.
    We arrive at 9 am.
    We gather from 9 am with coffee.
    I'm arriving at 9 am.
    The building opens at 7 am and closes at 10 pm.
    The loading dock is open from 6 am to 4 pm.
    It's from 10 am until 4 pm.
    Our set is from 9 pm to 10 pm.
    We rehearse from 4 pm, the doors open at 6:30 pm and the concert starts at 7 pm.`,
  ],
  // but I do
  [
    '14:00',
    `
    The hall is ours from 2 pm, so come then.
    The hall is ours from 2 pm, you can load in from then.
    We have the hall from 2 pm, which is when you can set up.
    The hall is ours from 2 pm, and we would like the gear rigged then.
    Volunteers arrive from 2 pm and so should you.
    Our photographer comes at noon, you at 2 pm.
    The flowers come at 8 am and you at 2 pm.
    The photographer has the rings from noon, video from 2 pm.
    Tech run is at 11 am, just for the cast, and you come at 2 pm.
    Rehearsal at 11 am, no need for you to be there; be in by 2 pm.
    Talent call 1 pm, crew call 2 pm.
    The film crew should be there at 2 pm.
    All suppliers must be on site by 2 pm.
    The building opens at 2 pm for suppliers.
    It's from 3 pm to 6 pm, please be there an hour before.
    We meet at 2 pm at the clubhouse.`,
  ],
  // told from another hour
  [
    '09:00',
    `
    Start is 10 am, arrival one hour prior.
    Start 10 am, crew an hour before.
    Start 10am (crew 1 hr earlier).
    Gates 10am, arrive an hour before.
    Coverage from one hour before the 10 am ceremony.`,
  ],
  [
    '-',
    `
    You'd come an hour before the start, which is 10 am.
    Show at 8 pm, doors an hour before, and you an hour before doors.
    Doors are at 7 and you should be there an hour before.`,
  ],
  [
    '17:30',
    `
    Doors are at 6 and you should be there half an hour before.
    Doors open at 6, please be there half an hour before.
    Guests arrive at 6 and you should be there half an hour before them.`,
  ],
  // the breakfast is in the morning
  ['05:00', `We need you from 5. It's a breakfast event.`],
  // taken back
  [
    '09:00',
    `
    We originally said you should come at 8, it's now 9.
    We had said you'd arrive at 8 am but it has moved to 9 am, so be there at 9 am.
    Your call moves an hour later, from 8 am to 9 am.`,
  ],
  ['08:30', `Please come at 8. P.S. Make it 8:30, the caretaker is late.`],
];

it.each(told.flatMap(([expected, ways]) => lines(ways).map((way) => [expected, way] as const)))('%s: %s', (expected, way) => {
  expect(callOf(way)).toBe(expected);
});

/** The first call where the hours of a list are of others. */
it('takes no hour of others in a list', () => {
  const list = (rows: string): string => callOf(`Plan for the day:\n${rows}\n`);
  expect(list('07:00 Staging load in\n09:00 Lighting focus\n11:00 Band sound check\n18:00 Doors\n19:00 Show')).toBe('-');
  expect(list('Caterer arrives 1pm\nPhotographer arrives 2pm\nCeremony 4:30pm')).toBe('-');
  expect(list('Photographer 2pm-10pm\nDJ 6pm-11pm\nBand 7pm-9pm')).toBe('-');
  expect(list('Cast call: 5:00 pm\nHalf hour call: 6:55 pm\nCurtain: 7:30 pm')).toBe('-');
  expect(list('07:00 Staging load in\n09:00 Lighting focus\n11:00 Video\n18:00 Doors')).toBe('11:00');
});

/** A rehearsal before a wedding is the couple's, that of a congress the crew's as well. */
it('tells the rehearsal of a wedding from that of a congress', () => {
  const ask = (told: string): string | undefined => facts(`Hi Kit,\n\n${told} What would you charge?\n\nRobin`).firstCall;
  expect(ask('Could you film our wedding in Fargo on Saturday 13 November 2027? Rehearsal Friday 5 pm, wedding 2 pm.')).toBeUndefined();
  expect(ask('Could you mix our congress in Fargo on Saturday 13 November 2027? Rehearsal is Friday, November 12 at 5 p.m.')).toBe(
    '2027-11-12T17:00',
  );
});

/** Of several days an hour that names none is that of the day of which its sentence speaks. */
it('takes no hour of a later day for the first call', () => {
  const first = (told: string): string | undefined =>
    facts(
      `Hi Kit,\n\nCould you film our trade fair in Fargo on 12 and 13 November 2027? ${told} Let me know what you would charge.\n\nRobin`,
    ).firstCall;
  expect(first("The race on Saturday is at 9 am and you'd be there from 7 am.")).toBeUndefined();
  expect(first('Day 1: 10-6\nDay 2: 9-4\n')).not.toBe('2027-11-12T09:00');
  expect(first("You'd be there from 7 am on both days, the race on Saturday is at 9 am.")).toBe('2027-11-12T07:00');
  expect(first('Call is 8 am on Friday and 7 am on Saturday.')).toBe('2027-11-12T08:00');
});
