/**
 * My own time against the candidate: its stays and tickets, and the ways as they would be planned.
 */
import type { Finding } from '../contract/fit.ts';
import type { Place } from '../contract/parts.ts';
import { lengthInWords } from '../words/amounts.ts';
import { spanAt } from '../words/moments.ts';
import type { PersonalTime } from './book.ts';
import { overlaps, type LaneEntry } from './lane.ts';
import { giveUpTicket } from './lifts.ts';
import type { Move } from './moves.ts';

const MINUTE = 60_000;
type Spell = { startAt: number; endAt: number };

/** Over a stay or a ticket it counts with its hardness; a way that is only planned can be laid otherwise, so that is good to know. */
export function personalFindings(
  personal: readonly PersonalTime[],
  lane: readonly LaneEntry[],
  moves: readonly Move[],
  home: Place,
): Finding[] {
  const own = lane.filter((entry) => entry.standing === 'own');
  return personal.flatMap((time) => {
    const hit = own.filter((entry) => overlaps(entry, time));
    const overDays = hit.some((entry) => entry.kind === 'stay');
    // A ticket can be changed, so it never blocks by itself.
    const hardness = time.hardness === 'never' && overDays ? 'blocks' : 'settle';
    if (hit.length > 0) {
      const found = finding(time, hit, hardness, overDays ? 'your days take' : 'your tickets take', home);
      return [{ ...found, lifts: [...hit.filter((entry) => entry.kind === 'ticket').map(giveUpTicket), ...found.lifts] }];
    }
    const onTheWay = moves.map(({ start, end }) => ({ startAt: start, endAt: end })).filter((move) => overlaps(move, time));
    return onTheWay.length > 0 ? [finding(time, onTheWay, 'know', 'the way as it is planned takes', home)] : [];
  });
}

function finding(time: PersonalTime, hit: readonly Spell[], hardness: Finding['hardness'], what: string, home: Place): Finding {
  const overlap = Math.ceil(within(hit, time) / MINUTE);
  const firm = time.hardness === 'never' ? ', never to be given up' : '';
  const lifts =
    hardness === 'blocks'
      ? [{ kind: 'other dates', label: 'Look for the nearest dates that work' }]
      : time.id === null
        ? []
        : [{ kind: 'move personal', label: `Move ${time.title}`, tryOn: { withoutPersonal: [time.id] } }];
  return {
    kind: 'personal time',
    hardness,
    concerns: [{ jobId: null, title: time.title }],
    numbers: { overlap },
    sentence: `${time.title} is yours on ${spanAt(time.startAt, time.endAt, home, home)}${firm}; ${what} ${lengthInWords(overlap)} of it.`,
    lifts,
  };
}

/** How much of a time the spells take together, milliseconds; where two of them meet it is counted once. */
export function within(spells: readonly Spell[], time: Spell): number {
  let sum = 0;
  let from = time.startAt;
  for (const { startAt, endAt } of [...spells].sort((a, b) => a.startAt - b.startAt)) {
    const to = Math.min(endAt, time.endAt);
    sum += Math.max(0, to - Math.max(from, startAt));
    from = Math.max(from, to);
  }
  return sum;
}
