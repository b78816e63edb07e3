/**
 * The messages on which the reader is tried, as data: invented senders of many kinds, each with what a careful person would read from it.
 *
 * A message begins with `## id home received`, its truth with `>`. Facts that are not listed must be absent; `*fact` is left open;
 * `ask` names the fields that must be asked about. `on` gives start, end and days at once.
 */
import { readFileSync, readdirSync } from 'node:fs';
import type { FactName, InquiryFields } from '../../core/contract/inquiries.ts';
import type { Place } from '../../core/contract/parts.ts';
import { readGazetteer, type Gazetteer } from '../../core/places/gazetteer.ts';

/**
 * Messages that the reader was tuned by, those of harder hands that it was mended by in part, those that people read and mended by but from which no weights
 * were learned, and those held out.
 */
export type Half = 'tuned' | 'opened' | 'seen' | 'held';
export type Message = {
  id: string;
  half: Half;
  text: string;
  receivedAt: string;
  homeZone: string;
  homePlace: Place;
  isInquiry: boolean;
  fields: InquiryFields;
  open: ReadonlySet<FactName>;
  asked: FactName[];
};

const here = new URL('.', import.meta.url);
export const gazetteer: Gazetteer = readGazetteer(readFileSync(new URL('../../assets/places/places.tsv', here), 'utf8'));

const homes: Record<string, [name: string, region: string]> = {
  duluth: ['Duluth', 'Minnesota'],
  toronto: ['Toronto', 'Ontario'],
  leeds: ['Leeds', 'England'],
  london: ['London', 'England'],
  sydney: ['Sydney', 'New South Wales'],
  berlin: ['Berlin', 'Berlin'],
  nyc: ['New York City', 'New York'],
  auckland: ['Auckland', ''],
  vancouver: ['Vancouver', 'British Columbia'],
  dublin: ['Dublin', ''],
  paris: ['Paris', ''],
  delhi: ['Delhi', ''],
  halifax: ['Halifax', 'Nova Scotia'],
  zurich: ['Zürich', ''],
  vienna: ['Vienna', 'Vienna'],
  amsterdam: ['Amsterdam', ''],
  madrid: ['Madrid', ''],
  edinburgh: ['Edinburgh', 'Scotland'],
  denver: ['Denver', 'Colorado'],
  losangeles: ['Los Angeles', 'California'],
  melbourne: ['Melbourne', 'Victoria'],
  singapore: ['Singapore', ''],
  capetown: ['Cape Town', ''],
};

export function homeOf(name: string): Place {
  const [town, region] = homes[name] ?? [];
  const found = gazetteer.find((place) => place.name === town && (region === '' || place.region === region));
  if (!found) throw new RangeError(`${name} is no home of the corpus`);
  const { key, country, lat, lon, zone } = found;
  return { key, name: found.name, region: found.region, country, lat, lon, zone };
}

const short: Record<string, FactName> = {
  call: 'firstCall',
  wrap: 'lastWrap',
  reply: 'replyBy',
  name: 'contactName',
  email: 'contactEmail',
  phone: 'contactPhone',
  org: 'organisation',
  things: 'deliverables',
};
const factOf = (word: string): FactName => short[word] ?? (word as FactName);

/** Dates such as `2026-12-05,06,12` and `2026-12-30..2027-01-02`. */
function datesOf(written: string): string[] {
  const [from, to] = written.split('..');
  if (from !== undefined && to !== undefined) {
    const first = Temporal.PlainDate.from(from);
    const last = Temporal.PlainDate.from(to.length === 2 ? from.slice(0, 8) + to : to);
    return Array.from({ length: first.until(last).days + 1 }, (_, days) => first.add({ days }).toString());
  }
  const parts = written.split(',');
  return parts.map((part) => (part.length === 2 ? (parts[0] ?? '').slice(0, 8) + part : part));
}

function truthOf(line: string): Pick<Message, 'isInquiry' | 'fields' | 'open' | 'asked'> {
  const fields: InquiryFields = {};
  const open = new Set<FactName>();
  const asked: FactName[] = [];
  if (line.trim() === 'none') return { isInquiry: false, fields, open, asked };
  for (const entry of line.split(';').map((part) => part.trim())) {
    const [word = '', ...rest] = entry.split(' ');
    const value = rest.join(' ');
    if (word === 'ask') asked.push(...value.split(',').map((name) => factOf(name.trim())));
    else if (word === '*ask') continue;
    else if (word.startsWith('*')) open.add(factOf(word.slice(1)));
    else if (word === 'on') {
      const dates = datesOf(value);
      fields.start = dates[0] ?? '';
      fields.end = dates.at(-1) ?? '';
      fields.days = dates.length;
    } else if (word === 'days') fields.days = Number(value);
    else if (word === 'budget') {
      const [amount, currency, per] = value.split(' ');
      fields.budget = {
        amount: Number(amount),
        ...(currency && currency !== '-' ? { currency } : {}),
        ...(per && per !== '-' ? { per: per as 'day' } : {}),
      };
    } else if (word === 'things') fields.deliverables = value.split('|').map((thing) => thing.trim());
    else if (value !== '-') Object.assign(fields, { [factOf(word)]: value });
  }
  return { isInquiry: true, fields, open, asked };
}

function messagesIn(file: string): Message[] {
  const text = readFileSync(new URL(`messages/${file}`, here), 'utf8');
  return text
    .split(/^## /m)
    .slice(1)
    .map((block) => {
      const [head = '', ...lines] = block.trimEnd().split('\n');
      const [id = '', home = '', received = ''] = head.split(' ');
      const truth = lines.pop() ?? '';
      if (!truth.startsWith('> ')) throw new RangeError(`${id} has no truth`);
      const homePlace = homeOf(home);
      return {
        id,
        half: (file.split('-')[0] ?? '') as Half,
        text: lines.join('\n'),
        receivedAt: Temporal.PlainDateTime.from(received).toZonedDateTime(homePlace.zone).toString(),
        homeZone: homePlace.zone,
        homePlace,
        ...truthOf(truth.slice(2)),
      };
    });
}

/** Every message of one part, or of all. */
export function messages(half?: Half): Message[] {
  return readdirSync(new URL('messages/', here))
    .filter((file) => file.endsWith('.txt') && (half === undefined || file.startsWith(half)))
    .sort()
    .flatMap(messagesIn);
}
