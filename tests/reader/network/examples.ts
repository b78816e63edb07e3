/**
 * What labelled messages teach the network: of each inquiry its words, and what each date and hour in it is.
 */
import { CLASSES } from '../../../core/inquiries/context/network.ts';
import { sequenceOf } from '../../../core/inquiries/context/sequence.ts';
import { lookAt } from '../../../core/inquiries/look.ts';
import { dateIs, lengthIs, timeIs } from '../cases.ts';
import { gazetteer, type Message } from '../corpus.ts';
import type { Example } from './slopes.ts';

const indexIn = (classes: readonly string[], is: string | undefined): number | undefined =>
  is === undefined ? undefined : classes.indexOf(is);

/**
 * The examples of these messages.
 * @param from what stands before this offset teaches nothing
 */
export function examplesIn(messages: readonly Message[], from = 0): Example[] {
  return messages
    .filter(({ isInquiry }) => isInquiry)
    .map((message) => {
      const { text, receivedAt, homeZone, homePlace } = message;
      const { scene, phones } = lookAt({ text, receivedAt, homeZone, homePlace, gazetteer });
      const sequence = sequenceOf(scene, phones);
      const { dates, times, numbers } = scene;
      const is = sequence.mentions.map(({ kind, start }) => {
        if (start < from) return undefined;
        if (kind === 'date') return indexIn(CLASSES.date, dateIs(message, dates.find((date) => date.start === start) as (typeof dates)[0]));
        const time = [...times, ...numbers].find((one) => one.start === start) as (typeof times)[0];
        return indexIn(CLASSES.time, timeIs(message, time, time === times[0]));
      });
      return { sequence, is, length: from > 0 ? undefined : indexIn(CLASSES.length, lengthIs(message)) };
    });
}
