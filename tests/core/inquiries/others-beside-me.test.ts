/**
 * Hours that look like those of others and are mine: of people who come with me or are filmed then, of a crew that is called something else; and beside
 * them those that I need not come to, and a van's.
 */
import { expect, it } from 'vitest';
import { callOf, facts, lines } from './reading.ts';

const told: [call: string, ways: string][] = [
  // whoever else comes, is filmed or is told of: these are mine
  [
    '05:45',
    `
    The minibus leaves at 6 am, please be there at 5.45 am.`,
  ],
  [
    '07:00',
    `
    Video team call is 7 am.
    Camera team call: 7 am.
    Our crew call is 7am.
    The media team call is 7 am.
    Crew team call is 7 am.`,
  ],
  [
    '08:00',
    `
    Final call is 8am for all crews.
    The lead videographer should be on site at 8 am.
    We need the team there by 8 am to set up the cameras.
    We need everyone on site at 8 am, crew included.
    We need you from 8 am. The show is at 7 pm, access an hour before.
    We'll be there from 8 am, so come any time after.
    The venue opens at 8 am for set-up.
    Our van leaves at 6 am but you come straight there for 8 am.
    We're in from 8 am, so join us then.
    We want everyone on site at 8 am.
    We need you from 8 am. Show at 7 pm, crew an hour before.`,
  ],
  [
    '08:30',
    `
    Video team briefing 8:30 am.`,
  ],
  [
    '09:00',
    `
    We need you from 9 am, just for the morning.
    We need a camera from 9 am for the speakers and the panel.
    Please be set up to film by 9 am for the speakers.
    The main camera operator should be there at 9 am.
    Coverage: bridal prep 9am through first dance 9pm.
    Bridal prep 9am (you start), ceremony 2 pm.
    Crew van leaves the shop 5:45am, but you're driving yourself so just be on set by 9. We're out by 8pm.
    The van leaves at 5:45 am, be on set by 9.
    We need you from 9 am just for the family.
    We need you from 9 am for the speakers only.
    Please come at 9 am, just for the speakers.
    Arrive at 9 am, just for the cast photo.
    Start 10am, crew an hour before.
    Truck goes at 6 am on the 13th, you can meet us there at 9.
    The van leaves the yard at 6 am and crew call on set is 9 am.
    The van leaves the yard at 6 am, call on set is 9 am.
    The van leaves the yard at 6 am. Your call is 9 am.`,
  ],
  [
    '10:00',
    `
    It's from 10 am to 4 pm and we'd want the whole of it.
    It's from 10 am to 4 pm, please come for the whole of it.
    It's from 10 am to 4 pm and we'd love you there for it all.`,
  ],
  [
    '11:00',
    `
    A wedding videographer should be there from 11 am to 9 pm.`,
  ],
  [
    '13:00',
    `
    The photographer comes an hour before the ceremony at 2 pm and so should you.
    We need you and the photographer an hour before the ceremony at 2 pm.
    We need you from 1 pm to 3 pm for the ceremony only.
    Coverage from 1 pm until 4 pm, just for the ceremony and reception.
    Coverage from 1 pm until 4 pm for the ceremony only.
    The ceremony is at 2 pm, come at 1 pm, no need for you to be there before.
    Come at 1 pm, no need for you there any earlier.
    You'd come at 1 pm, you're not needed before then.
    Please be there at 1 pm, you won't be needed until then.
    Ceremony at 2 pm. Please be there to film the kids an hour before.
    We need you and the photographer an hour before. Ceremony at 2 pm.
    The bride wants you there an hour before the ceremony at 2 pm.
    The photographer needs you there an hour before the ceremony at 2 pm.
    You and the photographer should come an hour before the ceremony at 2 pm.`,
  ],
  [
    '16:00',
    `
    We need a videographer from 4 pm for guests' drinks until 11 pm.`,
  ],
  [
    '17:00',
    `
    The cast arrive an hour before the show at 7 pm, you come at 5 pm.`,
  ],
  [
    '18:00',
    `
    Everyone arrives an hour before the show at 7 pm, including you.
    Please be there to film the kids an hour before the show at 7 pm.
    Be in the house an hour before curtain at 7 pm.
    You would be needed from 6 pm just for the performance.
    Everyone arrives an hour before the show at 7 pm, so should you.
    Our guests come an hour before the show at 7 pm, and you too please.
    The choir would like you to arrive an hour before the concert at 7 pm.`,
  ],
  [
    '18:30',
    `
    We need crew and cast an hour before curtain at 7.30 pm.`,
  ],
  [
    '19:00',
    `
    Please arrive with the band an hour before the show at 8 pm.
    We would like somebody to film from 7 pm for the band.`,
  ],
  // and these are not
  [
    '-',
    `
    Please arrive with the band an hour before the show at 8.
    Everyone arrives an hour before the show at 7, including you.
    Please arrive an hour before curtain at 8.
    The press come an hour before the show at 7 pm.
    The guests arrive an hour before the ceremony at 2 pm.
    Load-in is from 6 pm for the stage company only.
    Staff briefing 8:30 am.
    Team briefing 8:30 am.
    Our main photographer comes at 9 am.
    The wedding photographer arrives at 9 am.
    There's a rehearsal on Friday at 6 pm, no need for you there.
    There's a rehearsal on Friday at 6 pm, no need for you at that.
    There's a rehearsal on Friday at 6 pm, no need for a camera.
    There's a rehearsal on Friday at 6 pm, you're not needed.
    There's a rehearsal on Friday at 6 pm (you're not needed there).
    There's a rehearsal on Friday at 6 pm but you won't be needed for that.
    There's a rehearsal on Friday at 6 pm but we don't need you there.
    There's a rehearsal on Friday at 6 pm, but you aren't needed for it.
    The rehearsal is on Friday at 6 pm. No need for you there.
    The rehearsal is on Friday at 6 pm, not something you need to be at.
    The rehearsal is at 10 am, you don't have to be there for that.
    The rehearsal is on Friday at 6 pm; you can skip it.
    The crew van leaves at 6 am.
    From 9 am, for the family only.
    Sound check is at 4 pm, just for the band.
    Set-up is from 8 am for staff only.
    The rehearsal at 10 am is private.
    The sound check is at 4 pm for the band.
    The hall is ours from 2 pm, guests come at 7 pm.
    The hall is ours from 2 pm and the guests come after work.
    We're in from 8 am.
    The team call is 7 am.
    The final call for actors is 7 pm.
    Our crew comes at 7 am.
    We've asked everyone to be there by 8 am.
    We've asked the guests to be there by 8 am.
    We want the guests there by 8 am.
    The wedding photographer is there from 11 am.
    A main photographer should be there at 9 am.
    Our main camera operator comes at 9 am.
    The press are let in an hour before the show at 7 pm.
    Doors are an hour before the show at 7 pm.
    Everyone arrives an hour before the show at 7 pm.
    Show is at 7 pm and the cast arrive an hour before.
    The show is at 7 pm; cast and band come an hour before.
    We'll have the doors open an hour before the show at 7 pm.
    The van leaves at 6.15 am; be at the depot ten minutes before.
    Doors open at 6 pm and our staff come an hour before.`,
  ],
];

it.each(told.flatMap(([expected, ways]) => lines(ways).map((way) => [expected, way] as const)))('%s: %s', (expected, way) => {
  expect(callOf(way)).toBe(expected);
});

/** The rehearsal of the day before, and the van of the others, with days that are told elsewhere. */
it('takes no hour of what I need not come to, nor that of a van', () => {
  const ask = (told: string): string | undefined => facts(`Hi Kit,\n\n${told}\n\nRobin`).firstCall;
  expect(
    ask(
      "We're getting married and would love a film. The rehearsal is the Friday evening at 6, no need for you there. It's on Saturday 13th November 2027 in Fargo. Is there any chance? Ceremony 1.30pm, meal 4, dancing till half 12.",
    ),
  ).toBeUndefined();
  expect(
    ask(
      "We need a camera op on November 13, 2027 in Fargo. Crew van leaves the shop 5:45am on the 13th, but you're driving yourself so just be on set by 9. We're out by 8pm.",
    ),
  ).toBe('2027-11-13T09:00');
});
