/**
 * Two dates that are one night: "the night of Friday to Saturday", "31 December into 1 January".
 */
import type { Resolved } from '../dates/from-today.ts';
import type { Sequence } from '../dates/sequences.ts';
import type { Where } from './scene.ts';

/** "in der Nacht von Freitag auf Samstag": one night that runs over midnight. */
const NIGHT_OF =
  /(?<!\p{L})(?:night|overnight|nuit|nacht|noche|notte)(?!\p{L}),?\s(?:of|from|on|du|de|del|vom|von|van|tra|between|zum)?(?:\s?(?:the|el|dem|den|le))?\s?$/iu;
/** "Friday 31 December into Saturday 1 January": one night, said by how it passes into the next day. */
const RUNS_INTO = /\s(?:running |going |straight )?into\s/i;
const INTO = /\s(?:to|into|going into|au|auf(?: den)?|al|op|on)\s|[-\u2013/]/i;

/** The first day of a night that runs into the next one, in every reading. */
export function overnight(
  text: string,
  { resolved, sequence, start, end }: Where & { sequence: Sequence; resolved: Resolved },
): string[][] | undefined {
  const two = sequence.items.length === 2 && sequence.items[1]?.join === 'range' && resolved.readings.every(({ length }) => length === 2);
  const night = NIGHT_OF.test(text.slice(Math.max(0, start - 30), start)) && INTO.test(text.slice(start, end));
  return two && (night || RUNS_INTO.test(text.slice(start, end))) ? resolved.readings.map((days) => days.slice(0, 1)) : undefined;
}
