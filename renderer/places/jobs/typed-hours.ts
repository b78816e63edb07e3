/** Hours as they are typed: times of day, a wrap before its call being on the next date. */
import type { Trouble } from '../../../core/contract/base.ts';
import type { Worked, WorkedFields } from '../../../core/contract/hours.ts';
import type { JobDay } from '../../../core/contract/jobs.ts';
import { parseLength } from '../../../core/money/parse.ts';
import { parseClock } from '../../../core/time/clock.ts';
import { wrapAfter } from '../../../core/time/wall.ts';
import { lengthInWords } from '../../../core/words/amounts.ts';
import { Reader } from '../../parts/reader.ts';

type OfTwo = 'first' | 'second' | null;
export type TypedHours = {
  /** "" for me. */
  handId: string;
  date: string;
  kind: WorkedFields['kind'];
  zone: string;
  call: string;
  /** Empty while it runs. */
  wrap: string;
  callIs: OfTwo;
  wrapIs: OfTwo;
  breaks: string;
  note: string;
};

export const typedHours = (worked: Worked): TypedHours => ({
  handId: worked.handId ?? '',
  date: worked.date,
  kind: worked.kind,
  zone: worked.zone,
  call: worked.call.slice(11),
  wrap: worked.wrap?.slice(11) ?? '',
  callIs: worked.callIs ?? null,
  wrapIs: worked.wrapIs ?? null,
  breaks: worked.unpaidBreakMinutes > 0 ? lengthInWords(worked.unpaidBreakMinutes) : '',
  note: worked.note,
});

/** Hours that are still to be typed, with what was planned for them. */
export const blankHours = (plan: Pick<JobDay, 'date'> & Partial<JobDay>, zone: string): TypedHours => ({
  handId: '',
  date: plan.date,
  kind: plan.kind ?? 'shoot',
  zone,
  call: plan.call?.slice(11) ?? '',
  wrap: plan.wrap?.slice(11) ?? '',
  callIs: null,
  wrapIs: null,
  breaks: '',
  note: '',
});

/** What a save takes of hours that are kept. */
export function hoursFields({ handId, kind, zone, call, wrap, callIs, wrapIs, unpaidBreakMinutes, note }: Worked): WorkedFields {
  return { handId, kind, zone, call, wrap, callIs, wrapIs, unpaidBreakMinutes, note };
}

/** The fields to save, or the trouble that names what cannot be read. */
export function readHours(typed: TypedHours): { fields: WorkedFields } | { trouble: Trouble } {
  const reader = new Reader();
  const time = (field: string, text: string): string | null => {
    const read = parseClock(text);
    if (read === undefined) reader.refuse(field, 'is not a time; write it as 14:00');
    return read ?? null;
  };
  const minutes = (): number => {
    if (typed.breaks.trim() === '') return 0;
    const read = reader.take('unpaidBreakMinutes', parseLength(typed.breaks));
    if (read && !('minutes' in read)) reader.refuse('unpaidBreakMinutes', 'are in days; write them as 45 min or 1 h');
    return read && 'minutes' in read ? read.minutes : 0;
  };
  if (typed.date === '') reader.refuse('date', 'is not given');
  const call = time('call', typed.call);
  const wrap = typed.wrap.trim() === '' ? null : time('wrap', typed.wrap);
  const unpaidBreakMinutes = minutes();
  if (reader.trouble) return { trouble: reader.trouble };
  const callWall = `${typed.date}T${call ?? ''}`;
  return {
    fields: {
      handId: typed.handId === '' ? null : typed.handId,
      kind: typed.kind,
      zone: typed.zone,
      call: callWall,
      wrap: wrap === null ? null : wrapAfter(callWall, wrap),
      ...(typed.callIs ? { callIs: typed.callIs } : {}),
      ...(typed.wrapIs ? { wrapIs: typed.wrapIs } : {}),
      unpaidBreakMinutes,
      note: typed.note,
    },
  };
}
