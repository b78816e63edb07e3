/**
 * What a job knows as words under their labels, in five groups; what is empty is left out.
 */
import type { z } from 'zod';
import type { AskedPaper, Knows } from '../../../core/contract/knows.ts';
import { documentInWords } from '../../../core/documents/words.ts';
import { formatMoney } from '../../../core/money/format.ts';
import { dateInWords } from '../../../core/words/dates.ts';
import type { Said } from '../../parts/clash-note.tsx';

export type KnownGroup = { title: string; said: Said[] };

const said = (...parts: string[]): string => parts.filter((part) => part !== '').join(', ');

function paper({ asked, due, sentOn, detail }: z.infer<typeof AskedPaper>): string {
  const state = said(
    asked ? 'asked for' : '',
    due ? `due ${dateInWords(due)}` : '',
    sentOn ? `sent ${dateInWords(sentOn)}` : asked ? 'not sent yet' : '',
  );
  return [state, detail.trim()].filter((part) => part !== '').join('\n');
}

function certificate(insurance: Knows['insurance']): string {
  const { named, limit, askedOn } = insurance;
  const more = said(
    named ? `names ${named}` : '',
    limit ? `limit at least ${formatMoney(limit, { code: true })}` : '',
    askedOn ? `insurer asked ${dateInWords(askedOn)}` : '',
  );
  return [paper(insurance), more].filter((part) => part !== '').join('\n');
}

function secrecy({ mayShow, until, detail }: Knows['confidentiality']): string {
  const state = mayShow === null ? '' : mayShow ? 'may be shown' : 'may not be shown';
  return [said(state, until ? `until ${dateInWords(until)}` : ''), detail.trim()].filter((part) => part !== '').join('\n');
}

const order = ({ required, number }: Knows['purchaseOrder']): string => number.trim() || (required ? 'required, number not known yet' : '');

/** Every group with every label, filled or not. */
export function knowsInWords(knows: Knows): KnownGroup[] {
  return [
    {
      title: 'Who pays, and papers',
      said: [
        { label: 'Who pays', text: knows.payer },
        { label: 'Billing address', text: knows.billingAddress },
        { label: 'Purchase order', text: order(knows.purchaseOrder) },
        { label: 'Tax form', text: paper(knows.taxForm) },
        { label: 'Insurance certificate', text: certificate(knows.insurance) },
        { label: 'Needs', text: knows.needs.map((kind) => documentInWords(kind, null)).join(', ') },
        { label: 'Confidentiality', text: secrecy(knows.confidentiality) },
      ],
    },
    {
      title: 'On site',
      said: [
        { label: 'People', text: knows.onSite.map((one) => said(one.name, one.what, one.phone)).join('\n') },
        { label: 'Approves overtime', text: knows.overtimeApprover },
        { label: 'Dress', text: knows.dress },
        { label: 'Meals', text: knows.meals },
      ],
    },
    {
      title: 'The place',
      said: [
        { label: 'Dock and parking', text: knows.dock },
        { label: 'Access and badges', text: knows.access },
        { label: 'Power', text: knows.power },
        { label: 'Network', text: knows.network },
        { label: 'In wet weather', text: knows.wetWeather },
      ],
    },
    {
      title: 'What must be filmed',
      said: [
        { label: 'Sessions', text: knows.sessions },
        { label: 'Must have', text: knows.mustHave },
        { label: 'Names to spell', text: knows.names },
      ],
    },
    {
      title: 'Rights and approval',
      said: [
        { label: 'Music licence', text: knows.music },
        { label: 'Usage', text: knows.usage },
        { label: 'Originals', text: knows.originals },
        { label: 'Approves cuts', text: knows.cutsApprover },
      ],
    },
  ];
}

/** Only what is filled; nothing at all for a job of which nothing is known. */
export const filled = (groups: readonly KnownGroup[]): KnownGroup[] =>
  groups.map((group) => ({ ...group, said: group.said.filter(({ text }) => text.trim() !== '') })).filter((group) => group.said.length > 0);
