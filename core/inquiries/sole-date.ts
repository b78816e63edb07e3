/**
 * The one date that can be meant: rules take every date for something else ("my mother turns 80 on", "a deposit on an evening on"), and the weights
 * plainly take one for a day of the job.
 */
import { dateChances } from './context/chances.ts';
import { isBrief, type Page } from './learned/features.ts';
import type { Learned } from './learned/models.ts';
import { sentenceAround } from './parts/sentences.ts';
import { MOST_MENTIONS } from './settle/days-among.ts';
import { eventDays } from './settle/event.ts';
import type { DateMention, Scene } from './settle/scene.ts';

/** From these chances on a date is believed to be that of the job; the weights know whole messages and are heard less in a brief one. */
const BELIEVED = { whole: 0.96, brief: 0.98 };
/** Any other date is hardly one of the job. */
const HARDLY = 0.2;

/** What is plainly beside the work, however its words sound: "tickets go on sale on", "I am away from", "the committee meets on". */
const ELSE =
  /\b(?:away|abroad|off|out of (?:the )?office|leave|fl(?:y|ies|ying)|flights?|trains?|ferry|trip|travel\w*|holidays? (?:from|until|till)|back|return\w*|(?:on|for) sale|tickets?|committee|board|council|trustees|panel|jury|decid\w*|meets?|votes?|paid|pays?|paying|payable|payments?|invoice\w*|deposit|contract|sign(?:ed|s)?|sen[dt]\w*|print\w*|announc\w*|approv\w*|expires?|valid|phone|ring|call(?:s|ed)?|zoom|chat|sp(?:eak|oke)|talk(?:ed)?|met|coffee|visit|recce|scout\w*|apply|applications?|submi\w*|regist\w*|early bird|deadline|clos(?:es?|ing)|due|deliver\w*|edit\w*|files?|footage|upload\w*|publish\w*|online|post(?:ed)?|website|died|founded|rain|weather|reserve|back-?up|booked|busy|taken|was|were|had|last (?:year|time|month)|previous\w*|old|instead|moved|cancel\w*|not|no|without|before|after|since|until|till)\b|n['’]t\b/i;
const [LEAD, BEHIND] = [90, 40];

/** What begins another clause: "Nan was born on the leap day so on the 29th she turns 20", "and the lad who was to film it". */
const CLAUSE = /\b(?:so|but|and|because|as)\s(?=(?:we|i|you|the|our|my|on|they|she|he|it)\b)|[;:]/i;

function isOfElse(text: string, { start, end }: DateMention): boolean {
  const sentence = sentenceAround(text, start, end);
  const lead = text
    .slice(Math.max(sentence.start, start - LEAD), start)
    .split(CLAUSE)
    .at(-1);
  const behind = text.slice(end, Math.min(sentence.end, end + BEHIND)).split(CLAUSE)[0];
  return ELSE.test(lead ?? '') || ELSE.test(behind ?? '');
}

/** The scene with that date said of the event, where rules find none. */
export function withSoleDate(page: Page, learned: Learned): Scene {
  const { scene } = page;
  const { dates, choices, doubt } = eventDays(scene);
  if (dates.length > 0 || choices.length > 0 || doubt !== undefined || scene.dates.length > MOST_MENTIONS) return scene;
  const today = scene.received.toPlainDate().toString();
  const weighed = scene.dates.map((date) => ({ date, chance: dateChances(page, date, learned)['event'] ?? 0 }));
  const ahead = ({ by, past, doubt: doubted, readings }: DateMention): boolean =>
    !by && !past && doubted === undefined && readings.length === 1 && (readings[0]?.[0] ?? '') > today;
  const sole = weighed
    .filter(({ date, chance }) => ahead(date) && chance >= BELIEVED[isBrief(page) ? 'brief' : 'whole'] && !isOfElse(scene.text, date))
    .map(({ date }) => date);
  const days = sole[0]?.readings.join();
  // "Memorial Day, that's Monday the 31st": a date that is told twice is one.
  const same = ({ readings }: DateMention): boolean => readings.join() === days;
  if (days === undefined || !weighed.every(({ date, chance }) => same(date) || chance < HARDLY)) return scene;
  const said = new Map(scene.dates.map((date) => [date, same(date) && !date.by ? { ...date, said: 'event' as const, weak: false } : date]));
  return {
    ...scene,
    dates: [...said.values()],
    times: scene.times.map((time) => (time.date ? { ...time, date: said.get(time.date) ?? time.date } : time)),
  };
}
