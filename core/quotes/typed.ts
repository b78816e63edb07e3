/**
 * Every text on a quote's paper that somebody typed, with the words that name its field, so that a letter that cannot be drawn is found before drawing.
 */
import { typedBySender } from '../papers/content.ts';
import type { TypedText } from '../words/letters.ts';
import { billedTo, organisationOf } from './billed.ts';
import type { QuotePaperInput } from './paper.ts';

/** Typed texts in the order in which they stand on the paper. */
export function typedTexts({ setup, job, client, draft }: QuotePaperInput): TypedText[] {
  const { terms } = draft;
  const billed = billedTo(job, client);
  return [
    ...typedBySender(setup),
    { field: "the client's organisation", text: organisationOf(job, client) },
    { field: "the contact's name", text: job.contact.name },
    { field: "the contact's email", text: job.contact.email },
    { field: "the contact's phone", text: job.contact.phone },
    { field: 'the billing name', text: billed.name },
    { field: 'the billing address', text: billed.address },
    { field: "the client's tax id", text: billed.taxId },
    { field: "the client's order number", text: billed.order },
    { field: "the job's title", text: job.title },
    { field: "the job's place", text: job.place ? `${job.place.name} ${job.place.region}` : '' },
    ...job.deliverables.map((text) => ({ field: "the job's deliverables", text })),
    ...[draft, ...draft.offers].flatMap(({ lines }) =>
      lines.map((line, index) => ({ field: `line ${index + 1} of the quote`, text: `${line.what} ${line.unit}` })),
    ),
    ...draft.offers.map(({ number, name }) => ({ field: `the name of offer ${number}`, text: name })),
    ...draft.totals.taxes.map((group) => ({ field: 'a tax and its note', text: `${group.name} ${group.note}` })),
    { field: 'the deposit', text: draft.deposit ? `${draft.deposit.due} ${draft.deposit.note}` : '' },
    { field: 'the terms on overtime', text: terms.overtimeApprover },
    { field: 'the terms on illness', text: terms.illness },
    { field: 'the terms on weather', text: terms.weather },
    { field: 'the terms on usage', text: terms.usage },
    { field: 'the terms on originals', text: terms.originals },
    { field: 'the terms on postponement', text: terms.postponement },
  ];
}
