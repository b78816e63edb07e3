import type { RateCardFields } from '../../core/contract/rates.ts';
import { checkCard } from '../../core/rates/check.ts';
import { defaultCard } from '../../core/rates/defaults.ts';
import { writeHistory } from '../../db/keeping.ts';
import { allCards, cardById, insertCard, updateCard } from '../../db/rates.ts';
import type { WritableDb } from '../../db/store.ts';
import { deed } from './deed.ts';
import { os } from './os.ts';
import { badInput, notFound, stale } from './trouble.ts';

const list = os.rates.list.handler(({ context }) => ({ cards: context.store.read(allCards) }));

const defaults = os.rates.defaults.handler(({ input }) => ({ fields: defaultCard(input.role, input.currency, input.validFrom) }));

const save = os.rates.save.handler(({ input, context }) => {
  const troubles = checkCard(input.fields);
  if (troubles.length > 0) throw badInput(troubles.map(({ field, sentence }) => ({ field: `fields.${field}`, sentence })));
  return deed(context, 'rates.save', {}, (db) => {
    const now = context.now();
    return { card: input.id === undefined ? added(db, input.fields, now) : changed(db, input.id, input.version, input.fields, now) };
  });
});

function added(db: WritableDb, fields: RateCardFields, now: number) {
  const card = insertCard(db, fields, now);
  writeHistory(db, {
    at: now,
    subject: 'rate card',
    subjectId: card.id,
    deed: 'rates.save',
    sentence: `Rate card "${card.name}" was made.`,
  });
  return card;
}

function changed(db: WritableDb, id: string, version: number | undefined, fields: RateCardFields, now: number) {
  const before = cardById(db, id);
  if (!before) throw notFound('This rate card');
  if (before.version !== version) throw stale(`Rate card "${before.name}"`, before, { ...fields, id, version: version ?? null });
  const card = updateCard(db, before, fields, now);
  writeHistory(db, {
    at: now,
    subject: 'rate card',
    subjectId: id,
    deed: 'rates.save',
    sentence: `Rate card "${card.name}" was changed.`,
    before,
  });
  return card;
}

export const rates = { list, defaults, save };
