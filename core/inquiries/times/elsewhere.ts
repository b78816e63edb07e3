/**
 * Hours as they are spoken in German, French, Spanish, Italian and Dutch: "halb acht", "huit heures et demie", "las siete y cuarto", "kwart over zes".
 */
import type { Token } from '../parts/tokens.ts';
import { numberWord } from '../words.ts';

type Tokens = readonly Token[];
/** `next` is the index after the last word. */
type Spoken = { hour: number; minute: number; next: number };

const hourWords = new Map(
  [
    'eins una',
    'zwei deux dos due twee',
    'drei trois tres tre drie',
    'vier quatre cuatro quattro vier',
    'fünf cinq cinco cinque vijf',
    'sechs six seis sei zes',
    'sieben sept siete sette zeven',
    'acht huit ocho otto acht',
    'neun neuf nueve nove negen',
    'zehn dix diez dieci tien',
    'elf onze once undici elf',
    'zwölf douze doce dodici twaalf',
  ].flatMap((words, index) => words.split(' ').map((word) => [word, index + 1] as const)),
);
/** Words before which a number in words is an hour. */
const LEADS = /^(?:um|punkt|stipt|gegen|ab|bis|à|vers|dès|las|la|alle|all'|om|rond|vanaf|tot)$/;
const ITALIAN = /^(?:una|due|tre|quattro|cinque|sei|sette|otto|nove|dieci|undici|dodici)$/;
/** Words for an hour of the clock after its number. */
export const CLOCK = /^(?:uhr|uur|heures?|horas?|ore)$/;

const hourAt = (tokens: Tokens, index: number): number | undefined => {
  const token = tokens[index];
  const hour = token?.num ?? hourWords.get(token?.lower ?? '');
  return hour !== undefined && hour >= 1 && hour <= 24 ? hour : undefined;
};
const half = (hour: number): { hour: number; minute: number } => ({ hour: hour === 1 ? 12 : hour - 1, minute: 30 });

/** A spoken hour that begins at a token; its half of the day is open. */
export function spokenElsewhere(tokens: Tokens, index: number): Spoken | undefined {
  const word = (offset: number): string => tokens[index + offset]?.lower ?? '';
  const first = word(0);
  // "halb acht", and "half acht" with a Dutch number, are half an hour before; "half eight" is read elsewhere.
  const dutch = first === 'half' && tokens[index + 1]?.num === undefined && numberWord(word(1)) === undefined && hourWords.has(word(1));
  if (first === 'halb' || dutch) {
    const hour = hourAt(tokens, index + 1);
    return hour === undefined || hour > 12 ? undefined : { ...half(hour), next: index + 2 };
  }
  // "dreiviertel neun" in the south and east of the German language: a quarter before.
  if (first === 'dreiviertel') {
    const hour = hourAt(tokens, index + 1);
    return hour === undefined || hour > 12 ? undefined : { hour: hour === 1 ? 12 : hour - 1, minute: 45, next: index + 2 };
  }
  if (first === 'viertel' || first === 'kwart') {
    const hour = hourAt(tokens, index + 2);
    if (hour === undefined || hour > 12) return undefined;
    if (/^(?:nach|over)$/.test(word(1))) return { hour, minute: 15, next: index + 3 };
    return /^(?:vor|voor)$/.test(word(1)) ? { hour: hour === 1 ? 12 : hour - 1, minute: 45, next: index + 3 } : undefined;
  }
  // "all'una" is one word
  if (/^d?all'una$/.test(first)) return { hour: 1, minute: 0, next: index + 1 };
  const hour = hourAt(tokens, index);
  if (hour === undefined) return undefined;
  const spelled = tokens[index]?.num === undefined;
  // "alle drei Tage" is no Italian hour.
  const led = LEADS.test(word(-1)) && !(spelled && word(-1) === 'alle' && !ITALIAN.test(first));
  const clock = CLOCK.test(word(1)) || (word(1) === 'h' && tokens[index + 1]?.breaks === 0) ? 1 : 0;
  if (spelled && !led && clock === 0) return undefined;
  const after = index + 1 + clock;
  const joins = /^(?:et|y|e)$/.test(word(1 + clock));
  const part = word(2 + clock);
  if (joins && /^(?:demie?|media|mezza|mezzo)$/.test(part)) return { hour, minute: 30, next: after + 2 };
  if (joins && /^(?:quart|cuarto)$/.test(part)) return { hour, minute: 15, next: after + 2 };
  if (joins && part === 'un' && word(3 + clock) === 'quarto') return { hour, minute: 15, next: after + 3 };
  if (word(1 + clock) === 'menos' && part === 'cuarto') return { hour: hour === 1 ? 12 : hour - 1, minute: 45, next: after + 2 };
  if (word(1 + clock) === 'moins' && part === 'le') return { hour: hour - 1, minute: 45, next: after + 3 };
  return spelled && (led || clock === 1) ? { hour, minute: 0, next: after } : undefined;
}
