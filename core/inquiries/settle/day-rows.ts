/**
 * A plan in rows, a day a line: "Mon 13 Sept  set-up from 10, your call is 1pm / Tue 14 Sept 07:00 - 18:30 / Wed 15 Sept strike, without you".
 * Each row tells of its own day whether there is work for me: travel, rest and the work of others are none.
 */
import { anyOf } from '../phrases.ts';
import { lineAround } from '../parts/sentences.ts';
import { daysSaid } from './days.ts';
import { MOST_MENTIONS, namedAmong } from './days-among.ts';
import { firstOfForm, lastOfForm } from './form-days.ts';
import { NOT_MINE } from './mark-words.ts';
import type { DateMention, EventDays, Scene, Where } from './scene.ts';
import { LINE_OF_ELSE } from './told-beside.ts';

/** The days of a plan by what their rows tell. */
type DayRows = {
  mentions: DateMention[];
  on: string[];
  off: string[];
  open: string[];
  setUp: boolean;
  called: boolean;
  start: number;
  end: number;
};

/** "- ", "2) ", "Day 1: ", "Glasgow - ", "mehndi ", "Show: " may stand before the day of a row. */
const ROW_LEAD = /^[\s*+>\u2022\u00b7|-]*(?:\(?\d{1,2}[).:]\s*)?(?:[\p{L}\d/'&-]+[,.:]?\s?){0,3}[\s,:|(\u2013\u2014-]*$/u;
/** "You can't do 7 December" */
const OF_A_SENTENCE = /\b(?:you|we|i|they|it|is|are|do|on|the|by|for|from|until|before|after|to|and|or|not)\b/i;
/** A row that is about papers, money or answers is none of the plan. */
const OFFICE =
  /\b(?:repl(?:y|ies)|answers?|rsvp|deadline|confirm\p{L}*|respon[ds]\p{L}*|due|deliver\p{L}*|invoic\p{L}*|pay(?:ment|able)?|deposit|quotes?|offers?|bids?|budget|received|submitted|sent|written|issued|expires?|holds?|rough cut|first cut|final cut|edit\p{L}*|(?:yes|y) ?(?:or|\/) ?(?:no|n)|cob|eod|antwort\p{L}*|rückmeldung|r[ée]ponse|respuesta)\b/iu;
const LONGEST_ROW = 180;
/** So many lines without a day may stand between two rows. */
const MOST_BETWEEN = 4;
const LONGEST_BETWEEN = 90;

/** There is no work for me on the day. */
const NO_WORK = anyOf(
  `
  no/nothing/not work/working/doing/needed/required/filmed/filming/video/shoot/shooting/for_you/to_do/on | day off | off | dark | rest | rest day | free | free day | free and easy | free evening | free afternoon | nil | at leisure | holiday | closed
  without you | you're/you_are not needed/off/free | {others} only | not you | we/they do it? without you/ourselves | local/in-house/house crew/team | cancelled | no play | no show | no racing
  frei | ruhetag | spielfrei | sans toi/vous | ohne dich/sie/euch | zonder jou | repos | relâche | libre | descanso | vrij | rustdag | riposo
`,
  {
    others: `contractors | suppliers | builders | riggers | crew | staff | hands | lighting | sound | staging | stagehands | locals | set | carpenters | family | members | cast | volunteers | exhibitors`,
  },
);
/** A day of travel. */
const TRAVEL = anyOf(`
  travel | travelling | traveling | travel day | fly in | fly out | fly home | flight | flights | drive | drive up | drive down | drive over | drive home | arrive | arrival | arrivals | arrives | depart | departure | departures | home | check-in | train | anreise | abreise | fahrt | reisetag | voyage | trajet | arrivée | départ | viaje | llegada | reis | reisdag | heenreis | terugreis | transfer | overnight
`);
/** What is done in a day's work. */
const WORK = anyOf(`
  call | crew call | set up | setup | set-up | build | rig | rigging | load-in | load in | get-in | get in | bump-in | bump in | prep | tech | line check | camera check | camera marks | camera test | rehearsal | rehearsals | soundcheck | show | shows | concert | conference | congress | session | sessions | ceremony | wedding | gala | dinner | awards | finals | final | heats | shoot | filming | film | interviews | match | matches | race | races | performance | premiere | your/you start/come/in/call/on | pick-ups | release | released | wrap | strike | de-rig
  aufbau | einrichten | einleuchten | probe | generalprobe | konzert | kongress | vorstellung | drehtag | dreh | abbau | montage | répétition | tournage | captation | concert | ensayo | rodaje | montaje | opbouw | repetitie | draaidag
`);
/** A day on which things are built: whether it is one of mine is not told by that. */
const SET_UP = anyOf(`
  set day | setup | set-up | set up | build | rig | rigging | install | load-in | load in | get-in | get in | bump-in | bump in | recce | aufbau | opbouw | montage | montaje
`);
const WITH_ME = anyOf(`
  you | your | show | shows | rehearsal | rehearsals | practice | heats | line check | camera* | conference | concert | performance | live | derig | de-rig | strike | finished | probe | répétition | repetitie
`);
/** It is not certain that there is. */
const UNSURE = anyOf(
  `optional | alternative | alternate | reserve | reserve day | rain day | rain date | weather day | spare | spare day | backup | back-up | standby | if needed/necessary/required/wet/it_rains/you_can/you_have/weather | maybe | perhaps | possibly | tbc | tba | tentative | provisional | option | when it rains | bei regen | ersatztermin | vielleicht`,
);

/** Words outside the rows that tell of them that only some are meant. */
const SOME_ONLY = anyOf(`
  only | just the/on/one | either | one_or_the_other | any of | which | whichever | except | apart from | one of | two of | three of | some of | part of | your part | yours | for_you | the_one | the rest | the others | not all | covered | filled | taken | yellow | bold | starred | marked | option | nur | seulement | uniquement | solo | alleen
`);

/** The rows of a plan of days; nothing where fewer than two days head lines beside each other, or where something else is told of them. */
function dayRows(scene: Scene): DayRows | undefined {
  const { text, dates } = scene;
  const rows = dates.slice(0, MOST_MENTIONS).flatMap((mention) => {
    const { start, end, readings, explicit, doubt, past, said } = mention;
    const line = lineAround(text, mention);
    const [day, ...more] = readings.length === 1 ? (readings[0] ?? []) : [];
    const lead = text.slice(line.start, start);
    const plain =
      explicit && doubt === undefined && !past && day !== undefined && more.length === 0 && said !== 'reply' && !LINE_OF_ELSE.test(lead);
    const row = text.slice(line.start, line.end);
    if (!plain || row.length > LONGEST_ROW || !ROW_LEAD.test(lead) || OF_A_SENTENCE.test(lead) || OFFICE.test(row)) return [];
    // What is between two lines of a form is told by both.
    if (firstOfForm(lead) || lastOfForm(lead)) return [];
    const rest = text.slice(end, line.end);
    // "07:30 - 17:00, then you are free": what comes after the hours is no longer of the day's work.
    const hours = scene.times.find((time) => time.start >= end && time.end <= line.end && time.to !== undefined);
    const work = works(`${lead} ${hours ? text.slice(end, hours.start) : rest}`);
    const is: Row['is'] = UNSURE.test(rest) ? 'open' : work ? 'on' : 'off';
    return [{ mention, day, line, is, setUp: is === 'on' && SET_UP.test(row) && !WITH_ME.test(row) }];
  });
  const block = longestOf(text, rows);
  if (block.length < 2) return undefined;
  const daysOf = (kind: Row['is']): string[] => block.flatMap(({ is, day }) => (is === kind ? [day] : [])).toSorted();
  const [on, off, open, setUp] = [daysOf('on'), daysOf('off'), daysOf('open'), block.some((row) => row.setUp)];
  const [first, last] = [block[0]?.line.start ?? 0, block.at(-1)?.line.end ?? 0];
  const called = block.some(({ is, mention, line }) => is === 'on' && MY_CALL.test(text.slice(mention.end, line.end)));
  return { mentions: block.map(({ mention }) => mention), on, off, open, setUp, called, start: first, end: last };
}

/** "set-up from 10, your call 1pm" */
const MY_CALL = /\b(?:your|camera|video) call\b|\bcall for you\b|\byou(?:'re|'d be| are|'ll be)? (?:in|on|called|start|there)\b/i;

const works = (said: string): boolean => !NO_WORK.test(said) && (!TRAVEL.test(said) || WORK.test(said));

/** The days of the rows on which there is work for me, where they speak for themselves and say another thing than what was settled. */
export function plannedIn(scene: Scene, settled: EventDays): EventDays | undefined {
  if (settled.dates.length === 0 && settled.doubt !== 'several' && !settled.dropped) return undefined;
  const rows = dayRows(scene);
  // What was dropped is looked at again only where a row calls me.
  if (settled.dropped && !rows?.called) return undefined;
  if (!rows || rows.on.length === 0 || rows.open.length > 0 || !speaksForItself(scene, rows)) return undefined;
  const where = rows.mentions.filter(({ readings }) => rows.on.includes(readings[0]?.[0] ?? '')).map(({ start, end }) => ({ start, end }));
  return { dates: rows.on, where, choices: [], counted: true, ...(rows.off.length > 0 ? { dropped: rows.off } : {}) };
}

/** True where nothing outside the rows speaks of some of the days alone, and no row is marked apart from the others. */
function speaksForItself({ text, dates }: Scene, rows: DayRows): boolean {
  const outside = `${text.slice(0, rows.start)}\n${text.slice(rows.end)}`;
  const ofMine = rows.mentions.filter(({ readings }) => rows.on.includes(readings[0]?.[0] ?? ''));
  const rowOf = (mention: DateMention): string => {
    const line = lineAround(text, mention);
    return text.slice(line.start, line.end);
  };
  if (SOME_ONLY.test(outside) || ofMine.some((mention) => NOT_MINE.test(rowOf(mention)) || THEIRS.test(rowOf(mention)))) return false;
  const counts = daysSaid(text).map(({ days }) => days);
  if (counts.length > 0 ? !counts.includes(rows.on.length) : rows.setUp) return false;
  const marked = ofMine.filter((mention) => TO_ME.test(rowOf(mention)));
  if (marked.length > 0 && marked.length < rows.on.length) return false;
  const all = [...rows.on, ...rows.off, ...rows.open].toSorted();
  const [from, to] = [
    Temporal.PlainDate.from(all[0] as string).subtract({ days: NEAR }),
    Temporal.PlainDate.from(all.at(-1) as string).add({ days: NEAR }),
  ];
  const near = (day: string): boolean => day >= from.toString() && day <= to.toString();
  return dates.every((mention) => {
    const { explicit, readings, past, by, said } = mention;
    if (past || by || NOT_OF_WHICH.has(said) || rows.mentions.includes(mention)) return true;
    if (explicit && readings.some((reading) => reading.some((day) => near(day) && !all.includes(day)))) return false;
    const named = namedAmong(mention, all);
    if (mention.start >= rows.start && mention.end <= rows.end) return true;
    return named.every((day) => !rows.on.includes(day)) || rows.on.every((day) => named.includes(day));
  });
}
/** A date so near to the rows belongs to them. */
const NEAR = 3;
/** What tells an hour or an answer does not tell which of the days are meant. */
const NOT_OF_WHICH: ReadonlySet<DateMention['said']> = new Set(['reply', 'delivery', 'call', 'wrap']);
/** Somebody else is there: "Fri 4 Dec - me". */
const THEIRS = /\b(?:crewed|doing|covered|filled|taken|gone to|sorted|booked|on camera|me|myself)\b/i;
const TO_ME = /\b(?:YOU|yours|video|need|open|no one|nobody|film\p{L}*|record\p{L}*|stream\p{L}*)\b|\((?:you|kit)\)/u;

type Row = { mention: DateMention; day: string; line: Where; is: 'on' | 'off' | 'open'; setUp: boolean };

/** The longest run of rows of different days with little else between them. */
function longestOf(text: string, rows: readonly Row[]): Row[] {
  let best: Row[] = [];
  let now: Row[] = [];
  for (const row of rows) {
    const last = now.at(-1);
    if (last?.line.start === row.line.start) continue;
    const between = last
      ? text
          .slice(last.line.end, row.line.start)
          .split('\n')
          .filter((line) => line.trim() !== '')
      : [];
    const joins =
      last !== undefined &&
      now.every(({ day, is }) => day !== row.day && (row.is === 'off' || is === 'off' || day < row.day)) &&
      between.length <= MOST_BETWEEN &&
      between.every((line) => line.length <= LONGEST_BETWEEN);
    now = joins ? [...now, row] : [row];
    if (now.length > best.length) best = now;
  }
  return best;
}
