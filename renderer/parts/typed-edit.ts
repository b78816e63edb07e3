/**
 * The numbers of an edit as they are typed.
 */
import type { EditNumbers } from '../../core/contract/templates.ts';
import { frameSizeText, parseFrameSize } from '../../core/deliverables/frame-size.ts';
import { parseNumber } from '../../core/money/parse.ts';
import type { Reader } from './reader.ts';

export type TypedEdit = {
  finishedMinutes: string;
  editHoursPerMinute: string;
  ingestHours: string;
  rounds: string;
  hoursPerRound: string;
  windowDays: string;
  internalDays: string;
  sameDay: boolean;
  size: string;
  rate: string;
  codec: string;
  loudness: string;
  captions: string;
  other: string;
};

export function typedEdit(numbers: EditNumbers): TypedEdit {
  const { finishedMinutes, editHoursPerMinute, ingestHours, rounds, hoursPerRound, windowDays, internalDays, sameDay, format } = numbers;
  const { rate, codec, loudness, captions, other } = format;
  return {
    finishedMinutes,
    editHoursPerMinute,
    ingestHours,
    rounds: String(rounds),
    hoursPerRound,
    windowDays: String(windowDays),
    internalDays: String(internalDays),
    sameDay,
    size: frameSizeText(format),
    rate,
    codec,
    loudness,
    captions,
    other,
  };
}

/** What was typed, with what could not be read noted in the reader. An edit on the same day has no rounds. */
export function editNumbers(typed: TypedEdit, reader: Reader): EditNumbers {
  const decimal = (key: 'finishedMinutes' | 'editHoursPerMinute' | 'ingestHours' | 'hoursPerRound'): string =>
    reader.take(key, parseNumber(typed[key])) ?? '0';
  const count = (key: 'rounds' | 'windowDays' | 'internalDays'): number => Number(reader.take(key, parseNumber(typed[key])) ?? '0');
  const size = reader.take('size', parseFrameSize(typed.size)) ?? { width: null, height: null };
  const { sameDay, rate, codec, loudness, captions, other } = typed;
  return {
    finishedMinutes: decimal('finishedMinutes'),
    editHoursPerMinute: decimal('editHoursPerMinute'),
    ingestHours: decimal('ingestHours'),
    rounds: sameDay ? 0 : count('rounds'),
    hoursPerRound: decimal('hoursPerRound'),
    windowDays: count('windowDays'),
    internalDays: count('internalDays'),
    sameDay,
    format: { ...size, rate, codec, loudness, captions, other },
  };
}
