/**
 * Handing over: files are read for their checksums, the delivery note is written, and the originals are kept until they may go.
 */
import { moveInWords } from '../../core/deliverables/round-words.ts';
import { dateIn } from '../../core/time/wall.ts';
import { handOversOf } from '../../db/hand-overs.ts';
import { readingAsShown, readingFor } from '../files/readings.ts';
import { originalsGone, originalsThere, setOriginals, standAgain, takeBack } from './hand-over-change.ts';
import { handOverAsMet, proposedOriginals } from './hand-over-facts.ts';
import { keep } from './hand-over-keep.ts';
import { begin, progress, stop } from './hand-over-reading.ts';
import { os } from './os.ts';
import { movesOf, roundFacts } from './round-facts.ts';

const of = os.handovers.of.handler(({ input: { deliverableId }, context }) =>
  context.store.read((db) => {
    const facts = roundFacts(db, context, deliverableId);
    const reading = readingFor(context.store, deliverableId);
    return {
      handOvers: handOversOf(db, deliverableId).map((row) => handOverAsMet(db, facts, row)),
      reading: reading ? readingAsShown(reading, facts.now) : null,
      proposed: proposedOriginals(db, facts, dateIn(facts.calendars.zone, facts.now)),
      moved: movesOf(facts).map(moveInWords),
    };
  }),
);

export const handovers = { of, begin, progress, stop, keep, setOriginals, originalsGone, originalsThere, takeBack, standAgain };
