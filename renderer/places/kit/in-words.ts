/**
 * Everything that is kept of a thing as words under their labels, and where its units are.
 */
import type { KitItemFields, KitUnit, Whereabouts } from '../../../core/contract/kit.ts';
import { sizeInWords, weightInWords } from '../../../core/kit/measures.ts';
import { formatMoney, formatNumber } from '../../../core/money/format.ts';
import { lengthInWords } from '../../../core/words/amounts.ts';
import { paperDate } from '../../../core/words/dates.ts';
import type { Said } from '../../parts/clash-note.tsx';

export function itemInWords(of: KitItemFields): Said[] {
  return [
    { label: 'Name', text: of.name },
    { label: 'Does', text: of.does },
    { label: 'How many', text: String(of.owned) },
    { label: 'Units', text: of.units.map(unitInWords).join('; ') },
    { label: 'Owner', text: of.owner },
    { label: 'Made ready again in', text: `${lengthInWords(of.resetMinutes)}${of.resetOnRoad ? ', also on the road' : ''}` },
    { label: 'One more to rent', text: of.subHire },
    { label: 'In service', text: of.services.map(serviceInWords).join('; ') },
    { label: 'Weight', text: of.grams === null ? '' : weightInWords(of.grams) },
    { label: 'Size', text: of.size ? sizeInWords(of.size) : '' },
    { label: 'Battery', text: of.battery === 'none' ? 'none' : [of.battery, energyInWords(of)].filter(Boolean).join(', ') },
    { label: 'Draws', text: of.drawWatts ? `${formatNumber(of.drawWatts)} W` : '' },
    { label: 'Value', text: of.value ? formatMoney(of.value, { code: true }) : '' },
    { label: 'Wear a day', text: of.wearPerDay ? formatMoney(of.wearPerDay, { code: true }) : '' },
    { label: 'Bought', text: of.bought ? paperDate(of.bought) : '' },
    { label: 'Note', text: of.note },
  ];
}

export const energyInWords = ({ wattHours }: Pick<KitItemFields, 'wattHours'>): string =>
  wattHours === null ? '' : `${formatNumber(wattHours)} Wh`;

/** "A1: in the van, in service 3 December to 8 December 2026". */
function unitInWords({ serial, place, owner, services, bought, value, note }: KitUnit): string {
  const said = [
    place,
    owner ?? '',
    ...services.map((span) => `in service ${datesInWords(span)}`),
    bought ? `bought ${paperDate(bought)}` : '',
    value ? formatMoney(value, { code: true }) : '',
    note,
  ].filter((part) => part !== '');
  return said.length > 0 ? `${serial}: ${said.join(', ')}` : serial;
}

/** Both dates, the last one included. */
export const datesInWords = ({ from, to }: { from: string; to: string }): string => `${paperDate(from)} to ${paperDate(to)}`;

export const serviceInWords = ({ from, to, count }: KitItemFields['services'][number]): string =>
  `${count} from ${datesInWords({ from, to })}`;

/** "1 at home; 2 out with Fair until Sat 12 December 18:00; 1 in service to 14 December". @param at says an instant on the clock at home */
export function whereInWords({ home, out, service, missing }: Whereabouts, at: (instant: string) => string): string {
  return [
    home > 0 || (out.length === 0 && service.length === 0) ? `${home} at home` : '',
    ...out.map(({ count, title, until }) => `${count} out with ${title} until ${at(until)}`),
    ...service.map(({ count, to }) => `${count} in service to ${paperDate(to)}`),
    ...missing.map(({ count, title }) => `${count} did not come back from ${title}`),
  ]
    .filter((part) => part !== '')
    .join('; ');
}
