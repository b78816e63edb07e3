/**
 * An answer within so many hours or days of now, or by the end of a day without its name: "let me know within 24 hours", "by close of play".
 */
import { sentenceAround } from '../parts/sentences.ts';
import { numberWord } from '../words.ts';
import type { ReplyBy, Scene } from './scene.ts';
import { wallOf } from './walls.ts';

const WITHIN =
  /\b(?:within|in|over) (?:the )?(?:next )?(\d{1,3}|(?<=next |the )(?=hour)|an?|one|two|three|four|five|six|seven|ten|twelve|twenty-four|couple of|half an) ?(?:-)?(hours?|hrs?|h|minutes?|mins?|days?|weeks?)\b/gi;
const MORE_WORDS: Record<string, number> = { an: 1, 'twenty-four': 24, 'couple of': 2, 'half an': 0.5 };
const REPLY_NEAR =
  /\b(?:let (?:me|us) know|tell (?:me|us)|get back|hear (?:back )?from|repl(?:y|ies)|respond|response|answer|confirm|rsvp|decide|decision|quote|yes or no|need to know|know|come back to|book someone|lock)\b/i;
/** What asks for an answer right before "in two days". */
export const JUST_ASKED =
  /\b(?:let (?:me|us) know|tell (?:me|us)|(?:get|come) back to (?:me|us)|repl(?:y|ies)|respond|response|answer|decide|confirm|(?:need|want|like|love|have|must|good|help|helpful)(?: to)? (?:know|hear(?: from you)?|have (?:an answer|your answer|a yes or no)))(?: back)?(?: please)? $/i;
const END_OF_DAY = /\b(?:eod|end of (?:the )?(?:day|play)|tonight|this evening|end of today)\b/i;

/** Half past five, when offices close, is no rule: it is asked. */
export const OFFICE_CLOSES = 17 * 60;

/** The wall time at home so many minutes from now. */
export const later = (scene: Scene, minutes: number): string =>
  scene.received.add({ minutes }).toPlainDateTime().toString({ smallestUnit: 'minute', roundingMode: 'floor' });

/** "let me know within 24 hours", "by end of day", "by tonight" */
export function withinOf(scene: Scene): ReplyBy | undefined {
  for (const match of scene.text.matchAll(WITHIN)) {
    const { start, end } = sentenceAround(scene.text, match.index, match.index + match[0].length);
    if (!REPLY_NEAR.test(scene.text.slice(Math.max(start, match.index - 90), Math.min(end, match.index + match[0].length + 40)))) continue;
    const said = (match[1] ?? '').toLowerCase();
    const count = MORE_WORDS[said === '' ? 'an' : said] ?? numberWord(said) ?? Number(said);
    const unit = (match[2] ?? '').toLowerCase();
    if (!Number.isFinite(count)) continue;
    const where = [{ start: match.index, end: match.index + match[0].length }];
    if (/^[dw]/.test(unit)) {
      // "in two days" is when the job is, but for right behind the words for an answer.
      if (!/^within/i.test(match[0]) && !JUST_ASKED.test(scene.text.slice(Math.max(start, match.index - 40), match.index))) continue;
      const on = scene.received.toPlainDate().add({ days: count * (unit.startsWith('w') ? 7 : 1) });
      const wall = wallOf(on, 23 * 60 + 59);
      // A couple is two or a few.
      return said === 'couple of' ? { where, choices: [wall] } : { wall, where, choices: [] };
    }
    return { wall: later(scene, unit.startsWith('m') ? count : count * 60), where, choices: [] };
  }
  const match =
    /\b(?:by|before|until)\s(?:the\s)?(eod|end of (?:the )?day|end of play|cob|close of (?:business|play)|end of business)\b(?!\s+(?:on\s)?(?:mon|tue|wed|thu|fri|sat|sun|tom|\d))/i.exec(
      scene.text.slice(0, 20_000),
    );
  if (match && REPLY_NEAR.test(scene.text.slice(Math.max(0, match.index - 90), match.index + match[0].length + 40))) {
    const today = scene.received.toPlainDate();
    const where = [{ start: match.index, end: match.index + match[0].length }];
    if (END_OF_DAY.test(match[0])) return { wall: wallOf(today, 23 * 60 + 59), where, choices: [] };
    return { where, choices: [wallOf(today, OFFICE_CLOSES), wallOf(today, 23 * 60 + 59)] };
  }
  return undefined;
}
