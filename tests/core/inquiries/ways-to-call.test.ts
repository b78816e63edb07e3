/**
 * Ways of saying one thing: whatever the words, the hour of the call is found, and hours of other people are not taken for it.
 */
import { describe, expect, test } from 'vitest';
import { facts } from './reading.ts';

const lines = (list: string): string[] => list.trim().split(/\n\s*/);
const message = (way: string): string =>
  `Hi Kit,\nCan you film our annual gala on Saturday 12 December in Fargo? ${way}\nThanks,\nAnn Leverett`;

describe('first call at half past seven', () => {
  const ways = lines(`
    Call is 7:30am.
    Crew call 07:30.
    Please arrive by 7:30am.
    We'd need you on site from 7:30am.
    You can get in from 7:30am.
    Doors to the hall unlock for us at 7:30am.
    The caretaker will let you in at 7:30am.
    I'll meet you at the stage door at 7:30am.
    Be there for 7:30am.
    Aim to be with us for 7:30am.
    You should be with us by 7:30am.
    We want cameras up by 7:30am.
    Kit needs to be in by 7:30am.
    Gear in at 7:30am.
    You'd start at 7:30am.
    Your day starts at 7:30am.
    Start for crew is 7:30am.
    The working day begins at 7:30am.
    Report to reception at 7:30am.
    Report time 0730.
    Parking opens for you at 7:30am.
    Unloading from 7:30am.
    Unload at 7:30am.
    Loading dock is ours from 7:30am.
    Vendor access 7:30am.
    Supplier access from 7:30am.
    Venue access from 7.30am.
    We have the room from 7:30am.
    The room is ours from 7:30am.
    The building opens at 7:30am for us.
    Rig from 7:30am.
    Rigging starts 7:30am.
    Setup starts at 7:30am.
    Set up can begin at 7:30am.
    You can set up any time after 7:30am.
    You're needed from 7:30am.
    We'd want you from 7:30am.
    We need someone from 7:30am.
    We'd need a camera operator from 7:30am.
    Time on site: 7:30am.
    On-site time is 7:30am.
    Onsite 7:30a.
    Get-in 7:30am.
    Get in is at 07.30.
    Bump in 7:30am.
    Load in at 7:30 in the morning.
    Load-in: 0730hrs.
    In at half past seven in the morning.
    Arrival 7:30am.
    Arrivals for crew 7:30am.
    ETA for crew 7:30am.
    Expected arrival time 7:30am.
    We'll expect you at 7:30am.
    Can you be here by 7:30am?
    Could you get there by 7:30am?
    Would you be able to come at 7:30am?
    Plan to pull up at 7:30am.
    Turn up at 7:30am.
    Show up at 7:30am.
    Roll up at 7:30am.
    Rock up about 7:30am.
    Pitch up at 7:30am.
    Swing by at 7:30am to set up.
    Please come at 7:30am.
    Come along at 7:30am.
    Come by at 7:30am.
    Coming in at 7:30am would be perfect.
    7:30am arrival.
    7:30am start for you.
    7:30am crew call.
    7:30am on site.
    7:30am load-in.
    7:30am set-up.
    7:30am get-in please.
    Shift starts 7:30am.
    Your shift is from 7:30am.
    Work starts at 7:30am.
    Standby from 7:30am.
    Be ready to roll at 7:30am.
    Ready to shoot by 7:30am.
    Tech rehearsal 7:30am.
    Soundcheck at 7:30am.
    Line check 7:30am.
    Briefing for crew is at 7:30am.
    Crew briefing 7:30am.
    Safety briefing at 7:30am.
    Production meeting on site at 7:30am, then rig.
    You'll be let in at 7:30am.
    Keys from 7:30am.
    Gates open to contractors at 7:30am.
    Contractors may enter from 7:30am.
    You may enter from 7:30am.
    Access is from 7:30am.
    Access granted 7:30am.
    We can let you in from 7:30am.
    Earliest you can get in is 7:30am.
    The earliest access is 7:30am.
    First thing you do is set up at 7:30am.
    We would like you there at 7:30am.
    I'd like you here at 7:30am.
    Have you there for 7:30am if possible.
    Filming from 7:30am.
    Start: 7:30am
    Time: 7:30am to 5pm.
    Hours are 7:30am to 5pm.
    Hours: 7:30am – 5pm
    You'd be working 7:30am to 5pm.
    It's a 7:30am to 5pm day.
    The day runs 7:30am to 5pm for you.
    We'd book you 7:30am till 5pm.
    You'd cover 7:30am through 5pm.
    From 7:30am to 5pm.
    We need you between 7:30am and 5pm.
    You'd be with us 7:30am-5pm.
    Timings: 0730-1700.
    Working hours 0730 - 1700.
    In 7:30a, out 5p.
  `);
  test.each(ways)('%s', (way) => expect(facts(message(way)).firstCall).toBe('2026-12-12T07:30'));
});

describe('an hour that is no call of mine', () => {
  const ways = lines(`
    Doors open at 7:30pm.
    The show starts at 7:30pm.
    Guests arrive at 7:30pm.
    The florist loads in at 7:30am.
    The band sound checks at 7:30am.
    Caterers get in from 7:30am.
    The bride is ready at 7:30am.
    Our keynote is at 7:30am.
    The bar opens at 7:30pm.
    Registration opens at 7:30am.
    The choir rehearses at 7:30am.
    The bus for the guests leaves at 7:30am.
    Breakfast for the delegates is at 7:30am.
    I'm on the phone until 7:30am.
    Ring me before 7:30am.
    Our office opens at 7:30am.
    My train gets in at 7:30am.
    The AV company rigs from 7:30am.
    The lighting guys set up at 7:30am.
    Our own crew calls at 7:30am.
    Sunrise is at 7:30am.
    High tide is 7:30am.
    The other camera is called for 7:30am.
    Our photographer starts at 7:30am.
    The caretaker arrives at 7:30am.
    Exhibitors may set up from 7:30am.
    Stallholders are let in at 7:30am.
    Players arrive at 7:30am.
    The judges get there at 7:30am.
    Volunteers should report at 7:30am.
    Pupils come in at 7:30am.
    Parents may enter from 7:30am.
    The marquee goes up at 7:30am.
    The stage crew starts at 7:30am.
    Last year you came at 7:30am.
    Last time call was 7:30am.
    The hotel serves breakfast from 7:30am.
  `);
  test.each(ways)('%s', (way) => expect(facts(message(way)).firstCall).toBeUndefined());
});
