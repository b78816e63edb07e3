/**
 * What was said to the price of a further round: who, when and how.
 */
import { amountOfFurther, furtherPrice } from '../../core/deliverables/further-round.ts';
import { formatMoney } from '../../core/money/format.ts';
import { epochOf, instantText } from '../../core/time/read.ts';
import { changeRound, type RoundRow } from '../../db/rounds.ts';
import type { WritableDb } from '../../db/store.ts';
import { currencyOfJob } from './agreed-terms.ts';
import { badFacts } from './job-facts.ts';
import type { RoundFacts } from './round-facts.ts';
import { stageForFurther, withoutStage } from './round-notes.ts';
import { refuseBilled } from './rounds-billed.ts';
import { refused } from './trouble.ts';

type Answer = { agreed: boolean; who: string; at?: string | undefined; how: string };

/** A yes or no to the price. A no takes its work out of the plan, unless it was begun. @returns what was said, in a sentence */
export function answered(db: WritableDb, facts: RoundFacts, row: RoundRow, { agreed, who, at, how }: Answer): string {
  const price = priceOf(row);
  if (price.state !== 'asked')
    throw refused(`It was ${price.state} by ${price.who}.`, 'Take the answer back first, if it was noted by mistake.');
  const said = at ?? instantText(facts.now);
  if (epochOf(said) > facts.now) throw badFacts([{ field: 'at', sentence: 'The answer is dated after now. Give the moment it was said.' }]);
  if (!agreed) {
    refuseBilled(db, facts, row);
    withoutStage(db, facts, row);
  }
  changeRound(db, row, { price: { ...price, state: agreed ? 'agreed' : 'declined', who, at: said, how } });
  const sum = formatMoney(amountOfFurther(price), { code: true });
  return `Notes on the ${row.what} at ${sum} were ${agreed ? 'agreed' : 'declined'} by ${who}${how === '' ? '' : `, ${how}`}.`;
}

/** Another price than the card's, or one where it has none: it is asked anew. */
export function priced(db: WritableDb, facts: RoundFacts, row: RoundRow, { hours, editHour }: { hours: string; editHour: string }): string {
  if (row.included || row.notes === '')
    throw refused(`Notes on the ${row.what} are not billed.`, 'Only rounds beyond those agreed on are, once their notes are in.');
  refuseBilled(db, facts, row);
  const gone = row.price?.state === 'declined' && row.stageId === null;
  const price = furtherPrice(hours, { editHour, currency: currencyOfJob(db, facts.job) });
  changeRound(db, row, { price, ...(gone ? { stageId: stageForFurther(db, facts) } : {}) });
  return `Notes on the ${row.what} cost ${formatMoney(amountOfFurther(price), { code: true })}.`;
}

/** The answer was noted by mistake. */
export function openAgain(db: WritableDb, facts: RoundFacts, row: RoundRow): string {
  const price = priceOf(row);
  if (price.state === 'asked') throw refused('This price is open.', 'Nothing needs taking back.');
  const gone = price.state === 'declined' && row.stageId === null;
  const stageId = gone ? stageForFurther(db, facts) : row.stageId;
  changeRound(db, row, { price: { ...price, state: 'asked', who: '', at: null, how: '' }, stageId });
  return `The answer to the price of notes on the ${row.what} was taken back; it was ${price.state} by ${price.who}.`;
}

function priceOf({ price, what }: RoundRow) {
  if (!price)
    throw refused(`Notes on the ${what} have no price.`, 'Only rounds beyond those agreed on are billed, once their notes are in.');
  return price;
}
