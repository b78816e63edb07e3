/**
 * Things from a table with a head line, as spreadsheets write it: a line for each thing, or for each unit of it.
 */
import Papa from 'papaparse';
import { Battery, KitItemFields } from '../contract/kit.ts';
import { exponentOf, isCurrency } from '../money/currencies.ts';
import { amountOf } from '../money/money.ts';
import { parseAmount, parseNumber } from '../money/parse.ts';
import { TableError } from '../people/csv.ts';
import { isDate } from '../time/read.ts';
import { blankItem, blankUnit } from './blank.ts';
import { kitTroubles } from './check.ts';
import { gramsIn, sizeIn } from './measures.ts';

/** One line of the file: a thing that can be kept, or why not. */
export type KitRow = { line: number; name: string; read: { fields: KitItemFields } | { trouble: string } };

/** Head words that mean a field, folded to small letters and single spaces. */
const heads = {
  name: ['name', 'item', 'thing', 'description', 'equipment', 'gear'],
  does: ['does', 'type', 'kind', 'category', 'group'],
  owned: ['owned', 'count', 'quantity', 'qty', 'number', 'units', 'pieces'],
  serial: ['serial', 'serials', 'serial number', 'serial no', 's/n', 'sn'],
  place: ['place', 'where', 'location', 'kept at', 'holder', 'held by'],
  serviceFrom: ['service from', 'in service from', 'out of service from', 'service start'],
  serviceTo: ['service to', 'in service to', 'out of service to', 'service end'],
  weight: ['weight', 'mass'],
  grams: ['weight (g)', 'weight g', 'grams', 'g'],
  kilograms: ['weight (kg)', 'weight kg', 'kilograms', 'kg'],
  pounds: ['weight (lb)', 'weight (lbs)', 'weight lb', 'pounds', 'lb', 'lbs'],
  size: ['size', 'dimensions', 'size (cm)', 'dimensions (cm)'],
  wattHours: ['wh', 'watt-hours', 'watt hours', 'energy (wh)', 'battery (wh)', 'capacity (wh)'],
  battery: ['battery', 'battery kind', 'lithium'],
  drawWatts: ['w', 'watts', 'draw', 'draw (w)', 'power (w)'],
  owner: ['owner', 'owned by', 'ownership'],
  value: ['value', 'price', 'cost', 'purchase price', 'replacement value', 'insured value'],
  currency: ['currency'],
  origin: ['origin', 'country of origin', 'made in'],
  bought: ['bought', 'bought on', 'purchased', 'purchase date', 'date'],
  subHire: ['sub-hire', 'sub hire', 'rental price'],
  note: ['note', 'notes', 'remarks', 'comment', 'comments'],
} satisfies Record<string, readonly string[]>;
type Head = keyof typeof heads;
const isHead = (text: string): text is Head => text in heads;

/**
 * Read a CSV table. The delimiter is found by itself; unknown columns are left out.
 * @param currency of values that name none
 * @throws TableError when no column names a thing
 */
export function kitFromCsv(text: string, currency: string): KitRow[] {
  const { data } = Papa.parse<string[]>(text.replace(/^\uFEFF/, ''), { skipEmptyLines: false });
  const at = data.findIndex((row) => row.some((cell) => cell.trim() !== ''));
  const head = (data[at] ?? []).map(fold);
  const columns = new Map(
    Object.keys(heads)
      .filter(isHead)
      .map((field) => [field, head.findIndex((word) => (heads[field] as readonly string[]).includes(word))]),
  );
  if ((columns.get('name') ?? -1) < 0)
    throw new TableError(
      'No column of this file is headed Name. Give the columns a head line, such as: Name, Count, Serial, Weight (g), Wh.',
    );
  return data.slice(at + 1).flatMap((row, index) => {
    if (row.every((cell) => cell.trim() === '')) return [];
    const cell = (field: Head) => (row[columns.get(field) ?? -1] ?? '').trim();
    return [{ line: at + 2 + index, name: cell('name'), read: readRow(cell, currency) }];
  });
}

function readRow(cell: (field: Head) => string, home: string): KitRow['read'] {
  const troubles: string[] = [];
  const refuse = (sentence: string): null => {
    troubles.push(sentence);
    return null;
  };
  const number = (field: Head, what: string): string | null => {
    if (cell(field) === '') return null;
    const read = parseNumber(cell(field).replace(/\s*(wh|w)$/i, ''));
    return read.ok ? read.value : refuse(`The ${what} was not read: ${read.sentence}`);
  };
  const code = cell('currency').toUpperCase() || home;
  if (!isCurrency(code)) return { trouble: `"${cell('currency')}" is not an ISO 4217 currency; write it as USD.` };
  const amount = cell('value') === '' ? null : parseAmount(cell('value'), exponentOf(code));
  if (amount?.ok === false) refuse(`The value was not read: ${amount.sentence}`);

  const weights = (
    [
      ['weight', ''],
      ['grams', 'g'],
      ['kilograms', 'kg'],
      ['pounds', 'lb'],
    ] as const
  )
    .filter(([field]) => cell(field) !== '')
    .map(([field, unit]) => gramsIn(cell(field), unit));
  const weight = weights[0];
  if (weight?.ok === false) refuse(`The weight was not read: ${weight.sentence}`);

  const size = cell('size') === '' ? null : sizeIn(cell('size'));
  if (size?.ok === false) refuse(`The size was not read: ${size.sentence}`);

  const wattHours = number('wattHours', 'energy');
  const drawWatts = number('drawWatts', 'draw');
  const owned = number('owned', 'count');
  // A battery that says nothing more is carried loose: the stricter reading.
  const battery = Battery.safeParse(cell('battery').toLowerCase() || (wattHours === null ? 'none' : 'spare'));
  if (!battery.success) refuse(`"${cell('battery')}" is no kind of battery; write spare, in device, power bank or none.`);
  const owner = KitItemFields.shape.owner.safeParse(cell('owner').toLowerCase() || 'own');
  if (!owner.success) refuse(`"${cell('owner')}" is no owner; write own, borrowed or sub-hire.`);
  if (troubles.length > 0) return { trouble: troubles.join(' ') };

  const serials = cell('serial')
    .split(/[;,\n]/)
    .flatMap((serial) => serial.trim() || []);
  const dates = serviceDates(cell);
  if ('trouble' in dates) return dates;
  const fields = KitItemFields.safeParse({
    ...blankItem(cell('name')),
    does: cell('does'),
    owned: owned === null ? Math.max(1, serials.length) : Number(owned),
    units: serials.map((serial) => ({ ...blankUnit(serial), place: cell('place'), services: dates.services })),
    // Without serials the whole line is in service.
    services: serials.length > 0 ? [] : dates.services.map((span) => ({ ...span, count: Math.max(1, Number(owned ?? 1)) })),
    owner: owner.data,
    grams: weight?.ok ? weight.value : null,
    size: size?.ok ? size.value : null,
    battery: battery.data,
    wattHours,
    drawWatts,
    value: amount?.ok ? amountOf(amount.value, code) : null,
    origin: cell('origin').toUpperCase() || null,
    bought: cell('bought') || null,
    subHire: cell('subHire'),
    // Counted stock has no unit to say where it is kept.
    note: [cell('note'), serials.length > 0 ? '' : cell('place')].filter((part) => part !== '').join('; '),
  });
  if (!fields.success) {
    const [issue] = fields.error.issues;
    return { trouble: `The ${String(issue?.path[0] ?? 'line')} ${issue?.message ?? 'cannot be kept'}.` };
  }
  const [wrong] = kitTroubles(fields.data);
  return wrong ? { trouble: wrong.sentence } : { fields: fields.data };
}

/** Both dates of a service, or of none; one without the other cannot be read. */
function serviceDates(cell: (field: Head) => string): { services: { from: string; to: string }[] } | { trouble: string } {
  const [from, to] = [cell('serviceFrom'), cell('serviceTo')];
  if (from === '' && to === '') return { services: [] };
  const wrong = [from, to].find((date) => !isDate(date));
  if (wrong === undefined) return { services: [{ from, to }] };
  return { trouble: `The service dates are not whole: "${wrong}" is no date. Give both, as 2026-12-12.` };
}

function fold(head: string): string {
  return head.trim().toLowerCase().replaceAll('_', ' ').replace(/\s+/g, ' ');
}
