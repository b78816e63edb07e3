/**
 * Deliverables from the quote that was agreed on: one for each thing promised, and one for each line of editing that was written by hand.
 * Numbers come from the template that its words name; hours and dates that were said stand in their place.
 */
import type { JobFacts } from '../contract/jobs.ts';
import type { QuoteLine } from '../contract/quotes.ts';
import type { EditNumbers, Template } from '../contract/templates.ts';
import { editsOf } from '../jobs/edits.ts';
import { decimalText, exact, type Exact } from '../money/exact.ts';
import { pricedEdits } from '../quotes/editing.ts';
import { isOwnLine, slug, withOwnIds } from '../quotes/line.ts';
import type { HolidayDates } from '../time/business.ts';
import { dueBy, internalBy } from './due.ts';

/** What was agreed on. Dates are YYYY-MM-DD on the clock of home. */
export type Agreed = {
  job: Pick<JobFacts, 'deliverables' | 'edits'>;
  lines: readonly Pick<QuoteLine, 'id' | 'section' | 'what' | 'quantity' | 'unit'>[];
  /** Rounds of notes that the terms include. */
  rounds: number;
  templates: readonly Template[];
  lastWrap: string | null;
  /** Public ones at home and the client's own. */
  holidays: HolidayDates;
};

export type FromQuote = EditNumbers & {
  name: string;
  /** Stable name of what it was made from. */
  madeFrom: string;
  templateId: string | null;
  editHours: string | null;
  due: string | null;
  internalDate: string | null;
};

/** Where no template says so: the client's window and the internal date. Common practice. */
const WINDOW_DAYS = 3;
const INTERNAL_DAYS = 1;

const NO_FORMAT: EditNumbers['format'] = { width: null, height: null, rate: '', codec: '', loudness: '', captions: '', other: '' };

export function fromQuote(agreed: Agreed): FromQuote[] {
  const { job, lines } = agreed;
  const priced = pricedEdits(job);
  const promised = editsOf(job).map((edit) => {
    const id = priced.find((each) => each.edit === edit || each.edit.what === edit.what)?.id;
    const line = lines.find((each) => each.id === id);
    return { words: edit.what, hours: line ? exact(line.quantity) : edit.hours === null ? null : exact(edit.hours), due: edit.due };
  });
  const names = withOwnIds(promised.map(({ words }) => ({ id: `promised/${slug(words) || 'deliverable'}` })));
  const ownLines = lines
    .filter(({ id, section, unit }) => section === 'editing' && isOwnLine(id) && /^hours?$/.test(unit))
    .map(({ id, what, quantity }) => ({ id, words: what, hours: exact(quantity), due: null }));
  return [...promised.map((each, order) => ({ ...each, id: names[order]?.id ?? '' })), ...ownLines].map((each) => made(each, agreed));
}

type Promised = { id: string; words: string; hours: Exact | null; due: string | null };

function made({ id, words, hours, due }: Promised, { templates, rounds, lastWrap, holidays }: Agreed): FromQuote {
  const template = templateFor(words, templates);
  const numbers = numbersSaid(words, template ? numbersOf(template) : numbersWithout(hours, rounds));
  const byRule = template && lastWrap ? dueBy(template.due, lastWrap, holidays) : null;
  const date = due ?? (numbers.sameDay ? lastWrap : byRule);
  return {
    ...numbers,
    name: words.slice(0, 120).trim(),
    madeFrom: id,
    templateId: template?.id ?? null,
    editHours: hours === null ? null : decimalText(atLeastZero(hours.sub(besideTheCut(numbers)))),
    due: date,
    internalDate: date === null ? null : internalBy(date, numbers.internalDays, holidays),
  };
}

/** The template that words name, and the numbers of what they promise; null where they name none. */
export function numbersNamed(words: string, templates: readonly Template[]): { template: Template; numbers: EditNumbers } | null {
  const template = templateFor(words, templates);
  return template && { template, numbers: numbersSaid(words, numbersOf(template)) };
}

/** A finished length that the words say stands in the place of the usual one. */
function numbersSaid(words: string, numbers: EditNumbers): EditNumbers {
  return { ...onSite(words, numbers), finishedMinutes: minutesIn(words) ?? numbers.finishedMinutes };
}

/** What is promised for the same day is cut on site, where nobody waits for notes. */
function onSite(words: string, numbers: EditNumbers): EditNumbers {
  return /\bsame[\s-]day\b/i.test(words) ? { ...numbers, rounds: 0, internalDays: 0, sameDay: true } : numbers;
}

/** Hours that were quoted for the whole edit hold its ingest and its rounds too. */
function besideTheCut({ ingestHours, rounds, hoursPerRound, sameDay }: EditNumbers): Exact {
  return exact(ingestHours).add(sameDay ? 0n : exact(hoursPerRound).mul(BigInt(rounds)));
}

const atLeastZero = (hours: Exact): Exact => (hours.lt(0n) ? exact(0) : hours);

export function numbersOf({
  finishedMinutes,
  editHoursPerMinute,
  ingestHours,
  rounds,
  hoursPerRound,
  windowDays,
  internalDays,
  format,
  sameDay,
}: EditNumbers): EditNumbers {
  return { finishedMinutes, editHoursPerMinute, ingestHours, rounds, hoursPerRound, windowDays, internalDays, format, sameDay };
}

/** Without a template a round takes a tenth of the hours that were quoted, by started half hour; common practice. */
export function numbersWithout(hours: Exact | null, rounds: number): EditNumbers {
  const perRound = hours === null ? exact(0) : exact(hours.div(5n).ceil()).div(2n);
  return {
    finishedMinutes: '0',
    editHoursPerMinute: '0',
    ingestHours: '0',
    rounds,
    hoursPerRound: decimalText(perRound),
    windowDays: WINDOW_DAYS,
    internalDays: INTERNAL_DAYS,
    format: NO_FORMAT,
    sameDay: false,
  };
}

/** The template whose name stands whole in the words, the longest of them; null where none does. */
export function templateFor(words: string, templates: readonly Template[]): Template | null {
  const said = ` ${folded(words)} `;
  const found = templates.filter(({ name }) => folded(name) !== '' && said.includes(` ${folded(name)} `));
  return found.toSorted((a, b) => b.name.length - a.name.length)[0] ?? null;
}

/** Letters and figures, each word in the singular. */
function folded(text: string): string {
  const words =
    text
      .toLowerCase()
      .normalize('NFKD')
      .replace(/\p{M}/gu, '')
      .match(/[\p{L}\p{N}]+/gu) ?? [];
  return words.map((word) => word.replace(/(?<=\p{L}{3})s$/u, '')).join(' ');
}

const COUNTS = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve'];
const TENS: Readonly<Record<string, number>> = { fifteen: 15, twenty: 20, thirty: 30, forty: 40, fifty: 50, sixty: 60, ninety: 90 };

/** The length that is said: "a three-minute highlight", "90 seconds", "2.5 min"; null where none is, or a span. */
function minutesIn(words: string): string | null {
  const found = /(?<![\d.,:-])(\d{1,3}(?:\.\d+)?|[a-z]+)[\s-]*(min(?:ute)?s?|sec(?:ond)?s?)\b/i.exec(words);
  if (!found || /\d\s*(?:-|–|to)\s*\d/.test(words)) return null;
  const said = (found[1] ?? '').toLowerCase();
  const count = /^\d/.test(said) ? said : String(TENS[said] ?? COUNTS.indexOf(said) + 1);
  if (count === '0') return null;
  return (found[2] ?? '').toLowerCase().startsWith('sec') ? decimalText(exact(count).div(60n)) : count;
}
