import type { Incomparable, PreviewRow, RateCardFields } from '../../core/contract/rates.ts';
import { checkCard } from '../../core/rates/check.ts';
import { defaultCard } from '../../core/rates/defaults.ts';
import { termsPresets } from '../../core/rates/presets.ts';
import { previewRow, previewSentence, whyApart } from '../../core/rates/preview.ts';
import { epochOf } from '../../core/time/read.ts';
import { jobById } from '../../db/jobs.ts';
import { writeHistory } from '../../db/keeping.ts';
import { latestQuotes } from '../../db/quotes.ts';
import { allCards, cardById, insertCard, updateCard } from '../../db/rates.ts';
import type { WritableDb } from '../../db/store.ts';
import { deed } from './deed.ts';
import { os } from './os.ts';
import { quoteAt } from './quote-draft.ts';
import { badInput, notFound, stale } from './trouble.ts';

/** How many quotes a preview looks at. */
const PREVIEWED = 10;

const list = os.rates.list.handler(({ context }) => ({ cards: context.store.read(allCards) }));

const defaults = os.rates.defaults.handler(({ input }) => ({ fields: defaultCard(input.role, input.currency, input.validFrom) }));

const save = os.rates.save.handler(({ input, context }) => {
  checked(input.fields);
  return deed(context, 'rates.save', {}, (db) => {
    const now = context.now();
    return { card: input.id === undefined ? added(db, input.fields, now) : changed(db, input.id, input.version, input.fields, now) };
  });
});

function checked(fields: RateCardFields): void {
  const troubles = checkCard(fields);
  if (troubles.length > 0) throw badInput(troubles.map(({ field, sentence }) => ({ field: `fields.${field}`, sentence })));
}

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

const presets = os.rates.presets.handler(() => ({ presets: [...termsPresets] }));

const preview = os.rates.preview.handler(({ input, context }) => {
  checked(input.fields);
  return context.store.read((db) => {
    const card = cardById(db, input.id);
    if (!card) throw notFound('This rate card');
    const rows: PreviewRow[] = [];
    const apart: Incomparable[] = [];
    for (const { jobId, number, madeAt, currency } of latestQuotes(db, card.id, PREVIEWED)) {
      const at = epochOf(madeAt);
      const quote = { jobId, title: jobById(db, jobId, at)?.title ?? '', number };
      const why = whyApart(currency, card.currency, input.fields.currency);
      if (why) {
        apart.push({ ...quote, why });
        continue;
      }
      const before = quoteAt(db, jobId, card, at);
      const after = quoteAt(db, jobId, { ...input.fields, id: card.id, version: card.version }, at);
      rows.push(previewRow(quote, before.totals.gross, after.totals.gross));
    }
    return { rows, apart, sentence: previewSentence(rows, card.currency, apart) };
  });
});

export const rates = { list, defaults, presets, preview, save };
