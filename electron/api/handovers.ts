/**
 * Handing over: files are read for their checksums, the delivery note is written, and the originals are kept until they may go.
 */
import { moveInWords } from '../../core/deliverables/round-words.ts';
import { compareLists, comparedInWords, isWhole } from '../../core/handovers/compare.ts';
import { dateIn } from '../../core/time/wall.ts';
import { handOverById, handOversOf } from '../../db/hand-overs.ts';
import { forgetReading, readingAsShown, readingFor } from '../files/readings.ts';
import { originalsGone, originalsThere, setOriginals, standAgain, takeBack } from './hand-over-change.ts';
import { handOverAsMet, proposedOriginals } from './hand-over-facts.ts';
import { keep } from './hand-over-keep.ts';
import { begin, filesOf, progress, stop } from './hand-over-reading.ts';
import { os } from './os.ts';
import { movesOf, roundFacts } from './round-facts.ts';
import { notFound } from './trouble.ts';

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

/** What was read is only looked at; nothing is kept of it. */
const compare = os.handovers.compare.handler(async ({ input: { id, from }, context }) => {
  const { store } = context;
  const row = store.read((db) => handOverById(db, id));
  if (!row) throw notFound('This hand-over');
  const { run, files } = await filesOf(context, row.deliverableId, from);
  forgetReading(store, run);
  const compared = compareLists(row.files, files);
  return { ...compared, equal: compared.equal.length, whole: isWhole(compared), sentence: comparedInWords(compared) };
});

export const handovers = { of, begin, progress, stop, keep, compare, setOriginals, originalsGone, originalsThere, takeBack, standAgain };
