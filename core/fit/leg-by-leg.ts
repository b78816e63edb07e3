/**
 * The chain walked leg by leg: from each fixed point to the next where one of the two is a ticket and one is the candidate's. It holds
 * also before the first stay and after the last, where there is no neighbour to reach.
 */
import type { Finding } from '../contract/fit.ts';
import { ticketSentence } from './between.ts';
import { concerning } from './findings.ts';
import type { LaneEntry } from './lane.ts';
import { giveUpTicket } from './lifts.ts';
import { gapBetween, type ReachInput } from './reach.ts';

/** A ticket is changed or given up, so none of these blocks. Pencils may go and are passed over. */
export function legByLegFindings(lane: readonly LaneEntry[], input: ReachInput): Finding[] {
  const standing = lane.filter((entry) => entry.standing === 'ink' || entry.standing === 'own');
  return standing.flatMap((to) => {
    const from = lastBefore(to, standing);
    return from && concernsATicket(from, to) ? gapFinding(from, to, input) : [];
  });
}

function lastBefore(to: LaneEntry, lane: readonly LaneEntry[]): LaneEntry | undefined {
  return lane.reduce<LaneEntry | undefined>(
    (last, entry) => (entry !== to && entry.endAt <= to.startAt && (!last || entry.endAt >= last.endAt) ? entry : last),
    undefined,
  );
}

function concernsATicket(from: LaneEntry, to: LaneEntry): boolean {
  return (from.kind === 'ticket' || to.kind === 'ticket') && (from.standing === 'own' || to.standing === 'own');
}

function gapFinding(from: LaneEntry, to: LaneEntry, input: ReachInput): Finding[] {
  const { have, verdict, route, slack, slackShort } = gapBetween(from, to, input);
  if (verdict === 'fits') return [];
  const other = from.standing === 'own' ? to : from;
  return [
    {
      kind: 'ticket',
      hardness: 'settle',
      concerns: concerning(other.job),
      numbers: {
        have,
        way: route.long,
        wayShort: route.short,
        slack,
        slackShort,
        source: route.known ? 'typed' : 'estimated',
        by: route.byHome ? 'home' : 'direct',
      },
      sentence: ticketSentence(from, to, have, route, input.home),
      lifts: [from, to].filter((entry) => entry.kind === 'ticket').map(giveUpTicket),
    },
  ];
}
