/**
 * What was paid to hands. Rows never change; a mistake is taken back by one of the other sign.
 */
import { paidInAll } from '../../core/hours/dues.ts';
import { formatMoney } from '../../core/money/format.ts';
import { negate } from '../../core/money/money.ts';
import { dateIn } from '../../core/time/wall.ts';
import { addHandPayment, handPaymentsOf, workedOf } from '../../db/hours.ts';
import { writeHistory } from '../../db/keeping.ts';
import { handById } from '../../db/people.ts';
import { agreedTerms } from './agreed-terms.ts';
import { deed } from './deed.ts';
import { duesOf } from './hours-of.ts';
import { whole } from './job-deed.ts';
import { badFacts, homeZone } from './job-facts.ts';
import { os } from './os.ts';
import { notFound, refused } from './trouble.ts';

export const handPaid = os.hours.handPaid.handler(({ input, context }) =>
  deed(context, 'hours.handPaid', input, (db) => {
    const { jobId, handId, amount, on, how } = input;
    const now = context.now();
    const job = whole(db, jobId, now);
    const hand = handById(db, handId);
    if (!hand) throw notFound('This hand');
    if (amount.minor === 0) throw badFacts([{ field: 'amount', sentence: 'Nothing was paid; give the amount.' }]);
    if (on > dateIn(homeZone(db, context), now))
      throw badFacts([{ field: 'on', sentence: 'The payment is dated after today. Note it once it is made.' }]);
    const before = paidInAll(handPaymentsOf(db, jobId), handId, amount.currency);
    if (before.minor + amount.minor < 0)
      throw refused(
        `${formatMoney(negate(amount), { code: true })} is more than the ${formatMoney(before, { code: true })} that was paid to ${hand.name}.`,
        'Take back what was noted, no more.',
      );
    addHandPayment(db, jobId, { handId, amount, on, how }, now);
    const said =
      amount.minor > 0
        ? `${formatMoney(amount, { code: true })} paid to ${hand.name}`
        : `${formatMoney(negate(amount), { code: true })} of what was paid to ${hand.name} taken back`;
    writeHistory(db, {
      at: now,
      subject: 'job',
      subjectId: jobId,
      deed: 'hours.handPaid',
      sentence: `${said}${how === '' ? '' : `, ${how}`}.`,
    });
    return { owed: duesOf(db, job, workedOf(db, jobId), agreedTerms(db, job)) };
  }),
);
