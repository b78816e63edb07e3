/**
 * Which days of several are mine by what is said beside each of them: rows with "(video)" and "(no video)", "YOU", "filmed by a dad",
 * "we only need you on", "£450 for the Sunday". Where the marks do not agree the days are asked about.
 */
import { lineStart, sentenceAround } from '../parts/sentences.ts';
import { anyOf } from '../phrases.ts';
import { consecutive } from './pointed.ts';
import type { DateMention, EventDays, Scene, Where } from './scene.ts';

const MOST_MENTIONS = 60;
const LONGEST_ROW = 200;
/** A row begins with its date, or with so few characters before it. */
const ROW_LEAD = 32;

/** Nobody films that day, or somebody else does. */
const NOT_MINE = new RegExp(
  [
    anyOf(`
  no video/filming/camera/cameras/recording/film/footage/coverage | not filmed/recorded/needed/required/wanted/yours/covered/streamed/you | not be/to_be/being filmed/recorded/needed/required/covered/streamed | nil | nothing for_you/to_film | nobody wants ... filmed
  isn't/aren't/is_not/are_not/won't/needn't to? be? filmed/recorded/covered/needed/required/yours/streamed | don't/do_not/won't/needn't/wouldn't/wouldn't_be need/want/require/needed/wanted it/that/this/you/video/filming/filmed/a_camera/anything | you don't/won't/needn't need/have to? come/film/do | not need/want/require filmed
  which ... don't/do_not need/want | filmed/recorded/covered/done/shot/handled/streamed by the/our/a/an/another/their/his/her/its/somebody/someone/staff | has/have his/her/its/their own camera/crew/team/gopro/photographer/film* | own crew/team/media/photographer/press | on a/the/her/his phone | a crew from
  audio/photo/photos/stills/photographer only | only photo/photos/audio/stills | rain/reserve/backup date | off, you're released | you rest | see gord | is a maybe | is off | are off | been taken | taken by | we've got ... camera/crew/team/operator | we have ... crew
  no ... allowed | is/was/were private | closed to_us | different crew
  kein/keine/ohne film/video/kamera/medien/foto/aufnahme/aufzeichnung | nur foto | nichts für sie/dich | frei für sie/dich | nicht gefilmt | sans/pas_de captation/vidéo/tournage/caméra | no hace falta | sin vídeo/grabación/cámara | la graba nuestro/nuestra/la/el | geen video/opname/camera
`).source,
    String.raw`:\s?(?:none|nil|no|blank|nothing|off)\b|\bno cameras?\b|[(|,\u2013-]\s?no(?:ne)?\s?(?:[,|)]|$)|\bV: blank|\bnot you\b|\bNo (?:Kits?|video)\b|"blank"`,
  ].join('|'),
  'im',
);
const REFUSAL = new RegExp(`(?:${NOT_MINE.source})[^.;,\\n]{0,24}`, 'gim');
/** A row that begins with one of these is nobody's filming. */
const OF_THE_DAY =
  /^\s?[\s|:,.\u2013-]*(?:(?:a )?(?:free|rest|travel|day off|off|nil|arrivals?|departure)(?: day)?\b|(?:set|stage|stg|stand) (?:build|bld)|set-?up, (?:in-house|volunteers)|strike\b|bump-?out|get-?out|dismantl\w+|clean-?up|pack-?down|fly home|recce|cancelled|released|(?:rain|spare) date|aufbau(?: b\p{L}+)?|abbau|rückbau|bühnenbau|d[ée]montage|montage|montaje|desmontaje|opbouw|afbouw)(?![^\n]{0,40}\b(?:video|camera|you|call)\b)/iu;
/** The camera is wanted: words of a row. */
const MINE =
  /\(video\)|\bvideo\b(?!\s(?:by|is with))|\bYOU\b|\(you\)|\(yours\)|\byes\b|\bfilmed\b|\bfilm it\b|\bFILM\b|\blivestream\w*\b|\brecorded?\b|\brecord\b|\bcameras?\b|\bfilming\b|\boperator\b|\byou(?:'d|'ll|'re)?\b|\byours\b|\battend\b|\bvid[ée]\w*|\bgefilmt\b|\bkamera\b|\bbuscamos\b|\bcaptation\b|\bcrew (?:in|ready|access|call)\b|\bK\s*$/im;
/** The same in a sentence, where "yes" and "you" say less. */
const MINE_SAID =
  /\b(?:would|could|can) you (?:film|record|cover|shoot|stream|photograph)\b|\b(?:you'd|you'll|you would|you will|you're|you are) (?:be |need to be |come|film|record|cover|shoot|start|arrive)|\b(?:film|filmed|record|recorded|camera|livestream\w*|video) (?:please|it)\b|\bwe(?:'d| would) (?:like|love)\b|\bwe (?:want|need)\b/i;
/** The camera is wanted, without doubt. */
const STRONG =
  /\(video\)|\bvideo\s?(?:please|call)|\bYOU\b|\(you\)|\(yours\)|\(FILM\)|[|:]\s?yes\b|\bYES\b|\brecord it\b|\*\s*$|\bvideo: ?\(?(?:you|yes|kit)\b|\bVIDEO\b|\(open\)|\bOPEN\b/m;
/** "(yours)" stands anywhere. */
const BRACKETED = /\((?:yours|you|video|FILM)\)/;
/** "not the Friday" */
const NOT_THE = /\bnot (?:on |for )?(?:the )?$/i;
/** What counts beside a refusal: not that I am spoken to. */
const STILL_MINE = /\(video\)|\bYOU\b|\bfilmed\b|\brecord it\b|\bvideo (?:please|call)\b|\bVIDEO\b|\bYES\b/;
/** What says "only" before a day, and of whom or what. */
const ONLY_LEAD =
  /(?<!\bnot )\b(?:only|just|solely|merely|nur|lediglich|uniquement|seulement|s[oó]lo|solamente|únicamente|alleen|enkel|namely)\b[^.;:!?\n]{0,70}$/iu;
const ONLY_OF_ME =
  /\b(?:you|you'd|yours|we|video|camera|film\w*|record\w*|need\w*|want\w*|sie|dich|brauchen|gebraucht|vidé\w+|cherchons|necesitamos|videógrafo|jij|kit|room|dinner|for us)\b|^\s*(?:and |so |but )?(?:it's |that's |makes it )?(?:only|just|nur|solo|alleen)\b/iu;
const ONLY_AFTER =
  /^\)?,?\s?(?:(?:the|am|le|el)\s)?(?:\p{L}+\s){0,2}?(?:only|alone|uniquement|seulement|solamente|alleen)\b(?! (?:on |for |the )*(?:mon|tue|wed|thu|fri|sat|sun|\d))(?! (?:with|if|when|because|to|from)\b)|^\.? only that\b/iu;
/** "£450 for the Sunday" */
const FEE_FOR =
  /(?:[£$€₹]|\b(?:R|Rs\.?|CHF|EUR|USD|NZD|AUD|CAD)\s?)\d[\d\s.,']{0,9}(?:k\b)?(?:\s(?:flat|fixed|total|all in|altogether))?\s(?:for|pour|für|por|voor)\s(?:(?:the|le|la|den|el|de)\s)?$|\d\s?(?:€|euros?|francs?|Franken|pounds|dollars)\s(?:for|pour|für|por|voor)\s(?:(?:the|le|la|den|el|de)\s)?$/iu;
/** "Your days:", "Video required:", "Dates (video):" */
const LABEL =
  /(?:^|\n|[.;:]\s)[\s*+-]*(?:your (?:days?|dates?|part|shifts?)(?: (?:is|are|would be|will be))?|what (?:we|i|they) need (?:from|of) you|video(?: is)?(?: required| needed| wanted| days?| dates?)?(?: on| for)?|(?:dates?|days?) \(video\)|for video|to be filmed|which of these is filmed|needed|you|you,? kit|for you)\s?(?::|-|\u2013|\s{2,})?\s*(?:the [\p{L}\s]{2,24}, )?$/iu;
/** "so it's the Saturday", "what's left for us is Sunday 19 March", "The part that's for you is" */
const LEFT =
  /\b(?:as of (?:now|today|yesterday|last night|this morning),? it(?:'s| is)|(?:so|and so),? (?:for you )?(?:it's|it is|that's|one shooting day,? on)|(?:what's|what is|that|part that's|bit that's|all that's|the one) (?:left |still open |open |for you|yours|for us)[^.;]{0,16}\bis|makes it|leaves(?: us)?(?: with)?|you(?:'d|'ll) be (?:filming|with us|needed)(?: on| for)?|you're with us(?: on| for)?|(?:the )?(?:moment|part|bit|day|one|event|thing)s? (?:that's )?to be (?:filmed|recorded|covered)(?: is| are)|(?:filmed|recorded|on video|captured|covered) is|has chosen|have chosen|settled on|only runs on|only in use on)\s(?:only |just )?(?:on )?(?:(?:the|[\p{L}\s]{3,30} on) )?$/iu;
const LEAD_WANTED =
  /\b(?:what|which|all|bit|part)\b[^.;!?\n]{0,50}\b(?:filmed|recorded|film|record|on video|captured|cover)\b[^.;!?\n]{0,12}\bis\b[^.;!?\n]{0,60}$/iu;
/** "that's where you come in", "is the one with" */
const TAIL_WANTED =
  /^["')]?,?\s?(?:[-\u2013]\s)?(?:(?:and )?that(?:'s| is) (?:the one|where you|what we|yours|you)\b|is (?:the one|yours|where you|what we)\b|(?:and )?that we'd (?:love|like)|is (?:the one )?(?:what |that )?(?:we|i)(?:'d| would) (?:like|love|want)\b(?! to)|, then\.)/i;
/** "for Wednesday 12 April we need" */
const FOR_DAY = /(?:^|[.;:!?,\n]\s?|\bso )for (?:the )?$/i;
const WE_NEED = /^[^.;!?\n]{0,16}\b(?:we|i|they) (?:need|want|require|seek|look|'d|would)|^ i'd\b|^ we'd\b/i;
/** "except the Wednesday" */
const EXCEPT =
  /(?<!\p{L})(?:except|excluding|apart from|other than|minus|but not|bar|außer|sauf|excepto|salvo|behalve)\s(?:for\s)?(?:on\s)?(?:(?:the|am|le|el|op)\s)?$/iu;
const NEITHER = /\bneither\b|\bnone of (?:them|these|those)\b/i;
const BOTH = /\bboth (?:days|dates|nights|evenings|together|of (?:them|those))\b/i;
const ALL_OF = /\b(?:both|all (?:two|three|four|five|of them)|the pair|the (?:two|three|four))\b/i;

/** What joins a day to the one before it in the same breath. */
const JOINS =
  /^\)?(?:\s\p{L}{2,9})?\s?(?:\([^()\n]{0,30}\))?(?:,[^.;,\n]{0,14};)?\s?(?:,|;|and|&|\+|und|et|y|en|e|og)\s(?:on )?(?:(?:the|am|le|el) )?(?:\p{L}{4,12} \()?$/iu;
const COUNTED =
  /\b(two|three|four|five|six|[2-6])\s(?:(?:[\p{L}]+ )?days|mornings|afternoons|evenings|nights|dates|shows?|sessions|hearings|events|things|of them|of these)\b/giu;
const LAST_OF = /\bthe (first|last) (two|three|one) (?:are|is) (?:yours|for you|open|what)\b/i;
/** "on day 2 and day 3 only", "only on day two", "for you it's day 1 alone" */
const DAY_NUMBERS =
  /\bdays? (\d|one|two|three)(?:(?:,| and| &|\+)\s?(?:on )?(?:day )?(\d|one|two|three))?,? (?:only|alone)\b|\b(?:only|just) (?:on |for |need you (?:on |for )?|want you (?:on |for )?)?days? (\d|one|two|three)(?:(?:,| and| &|\+)\s?(?:day )?(\d|one|two|three))?\b/i;
const dayNumbers = (text: string): number[] =>
  (DAY_NUMBERS.exec(text)?.slice(1) ?? []).flatMap((word) => (word === undefined ? [] : [numberOf(word)]));
const STARRED = /\b(?:starred|asterisk(?:ed)?|with an? star)\b/i;
const numbers = ['', 'one', 'two', 'three', 'four', 'five', 'six'];
const numberOf = (word: string): number => (/\d/.test(word) ? Number(word) : numbers.indexOf(word.toLowerCase()));

type Marks = {
  /** Told with "only". */
  only: Set<string>;
  /** Told to be wanted. */
  told: Set<string>;
  no: Set<string>;
  /** Told with "except". */
  except: Set<string>;
  yes: Set<string>;
  strong: Set<string>;
  /** Days of rows of which nothing is told. */
  quiet: Set<string>;
  /** Days of rows, in their order. */
  rows: Set<string>;
};

/** The days that a mention means among the known ones: by its date, by its number or by its weekday, where that is of one day. */
function meant({ sequence, readings, explicit, doubt }: DateMention, known: readonly string[]): string[] {
  if (explicit && !doubt) return known.filter((date) => readings.length === 1 && (readings[0] ?? []).includes(date));
  const found = sequence.items.map(({ atom }) =>
    known.filter((date) => {
      const plain = Temporal.PlainDate.from(date);
      return atom.day === undefined ? atom.weekday === plain.dayOfWeek && !atom.relative : atom.day === plain.day;
    }),
  );
  if (found.some((days) => days.length > 1)) return [];
  const [first, last] = [found[0]?.[0], found.at(-1)?.[0]];
  return sequence.items.some(({ join }) => join === 'range')
    ? known.filter((date) => first !== undefined && last !== undefined && date >= first && date <= last)
    : known.filter((date) => found.some(([day]) => day === date));
}

const lineOf = (text: string, { start, end }: Where): Where => {
  const to = text.indexOf('\n', end);
  return { start: lineStart(text, start), end: to < 0 ? text.length : to };
};

/** What is said beside a day: the rest of its row, the lines under it where it is a heading, else its clause. */
function beside(text: string, mention: Where, previous: Where | undefined, next: Where | undefined): { said: string; row: boolean } {
  const line = lineOf(text, mention);
  const lead = text.slice(line.start, mention.start);
  const until = next && next.start < line.end ? next.start : line.end;
  const table = /[|\t]/.test(text.slice(line.start, line.end));
  if (
    line.end - line.start <= LONGEST_ROW &&
    ((lead.length <= ROW_LEAD && !lead.includes(':')) || table) &&
    !/[.!?;]\s*\p{L}|[a-z]\sthe\s$|\p{L}\s(?:on|is|from|for|of|in|by|at|until|and)\s$/u.test(lead)
  ) {
    const rest = text.slice(mention.end, until);
    if (rest.replace(/[^\p{L}]/gu, '').length <= 10 && next && next.start > line.end) {
      const blank = text.indexOf('\n\n', line.end);
      const under = text.slice(line.end, Math.min(lineOf(text, next).start, blank < 0 ? text.length : blank, line.end + 400));
      if (under.trim() !== '') return { said: `${lead}${rest}${under}`, row: true };
    }
    return { said: `${previous && previous.start >= line.start ? '' : lead} ${rest}`, row: true };
  }
  const sentence = sentenceAround(text, mention.start, mention.end);
  const from = Math.max(sentence.start, previous?.end ?? 0);
  const to = Math.min(sentence.end, next?.start ?? text.length);
  return { said: `${text.slice(from, mention.start)} ${text.slice(mention.end, to)}`, row: false };
}

/** Days that a place in a text names. */
type Named = Where & { days: string[] };

/** Days that are named by their place in the run: "the second night is private", "Day 2 we need you". */
function byPlace(text: string, mentions: readonly Where[], known: readonly string[]): Named[] {
  if (known.length < 2 || known.length > MOST_PLACED) return [];
  return [...text.matchAll(PLACED)].slice(0, MOST_MENTIONS).flatMap(({ index, 0: words, 1: number, 2: place, 3: several }) => {
    const end = index + words.length;
    // "Day 2, Wednesday 7 June": the date says it.
    if (
      mentions.some(
        (mention) =>
          mention.start < end + BESIDE_DATE &&
          mention.end > index - BESIDE_DATE &&
          !/[.;!?\n]/.test(text.slice(Math.min(mention.end, index), index)),
      )
    )
      return [];
    const count = several ? numberOf(several) : 1;
    const from = number ? numberOf(number) - 1 : places.indexOf((place ?? '').toLowerCase());
    const days =
      from >= 0
        ? known.slice(from, from + count)
        : /middle/i.test(place ?? '')
          ? known.length === 3
            ? known.slice(1, 2)
            : []
          : known.slice(-count);
    return days.length === count ? [{ start: index, end, days }] : [];
  });
}
const PLACED =
  /\b(?:day (\d|one|two|three)\b|the (first|second|third|fourth|last|final|middle)(?: (two|three))?(?: (?:nights?|days?|evenings?|ones?|shows?|dates?|performances?|sessions?|hearings?|concerts?|afternoons?|mornings?)\b|(?='s\b|[,.;:!?]| (?:is|are|was|would|should|on)\b)))/gi;
const places = ['first', 'second', 'third', 'fourth'];
const MOST_PLACED = 6;
const BESIDE_DATE = 12;

function marksOf(scene: Scene, mentions: readonly Named[], known: readonly string[]): Marks {
  const { text } = scene;
  const marks: Marks = {
    only: new Set(),
    told: new Set(),
    no: new Set(),
    except: new Set(),
    yes: new Set(),
    strong: new Set(),
    quiet: new Set(),
    rows: new Set(),
  };
  let before: Set<string> | undefined;
  for (const [at, mention] of mentions.entries()) {
    const { days } = mention;
    const previous = mentions[at - 1];
    const between = text.slice(previous?.end ?? mention.start, mention.start);
    const under = before === marks.told && /^[^\n]{0,160}\n\s*$/.test(between);
    const joined = previous && before && (under || (between.length <= 60 && JOINS.test(between)));
    const comma =
      !/\p{L}|[&+]/u.test(between) && !/^\s?(?:[,;.)(&+?!]|and\b|und\b|et\b|y\b|$)/iu.test(text.slice(mention.end, mention.end + 8));
    const inherited = joined && (under || !comma) ? before : undefined;
    before = undefined;
    if (days.length === 0 || days.length === known.length) continue;
    const sentence = sentenceAround(text, mention.start, mention.end);
    const lead = text.slice(Math.max(sentence.start, mention.start - 120, previous?.end ?? 0), mention.start);
    const tail = text.slice(mention.end, Math.min(text.length, mention.end + 60));
    const { said, row } = beside(text, mention, previous, mentions[at + 1]);
    const refused = NOT_MINE.test(said) || (row && OF_THE_DAY.test(text.slice(mention.end, mention.end + 80)));
    const rest = refused ? said.replace(REFUSAL, ' ') : said;
    const denied = /\b(?:not|no)\b[^.;]{0,20}$/i.test(lead);
    const only = (ONLY_LEAD.test(lead) && ONLY_OF_ME.test(lead)) || ONLY_AFTER.test(tail);
    const told =
      FEE_FOR.test(lead) ||
      LABEL.test(text.slice(Math.max(0, mention.start - 60), mention.start)) ||
      LEFT.test(lead) ||
      LEAD_WANTED.test(lead) ||
      TAIL_WANTED.test(tail) ||
      (FOR_DAY.test(lead) && WE_NEED.test(tail));
    const add = (set: Set<string>): void => {
      for (const day of days) set.add(day);
    };
    if (row) add(marks.rows);
    // "day 2 and day 3 only"
    if (ONLY_AFTER.test(tail) && joined && previous) for (const day of previous.days) marks.only.add(day);
    if (EXCEPT.test(lead)) add(marks.except);
    else if (NOT_THE.test(lead)) add(marks.no);
    else if (only && !denied) add((before = marks.only));
    else if (told && !denied) add((before = marks.told));
    else if (inherited) add((before = inherited));
    else if (NEITHER.test(text.slice(sentence.start, sentence.end))) add(marks.no);
    else if (row ? STRONG.test(rest) : BRACKETED.test(rest)) add(marks.strong);
    else if (refused) add(STILL_MINE.test(rest) ? marks.yes : marks.no);
    else if ((row ? MINE : MINE_SAID).test(rest)) add(marks.yes);
    else if (row) add(marks.quiet);
  }
  return marks;
}

/** The days narrowed to those that are marked as mine; asked where the marks do not agree; nothing where there are none. */
export function markedOf(scene: Scene, settled: EventDays, candidates: readonly DateMention[]): EventDays | undefined {
  const several = settled.doubt === 'several';
  if (settled.dates.length < 2 && !several) return undefined;
  const { text } = scene;
  const ofRows = scene.dates.filter(
    ({ explicit, said, past, start }) =>
      explicit &&
      !past &&
      (said === 'call' || said === 'wrap') &&
      /^[\s*+-]*(?:\p{L}{2,9},? )?$/u.test(text.slice(lineOf(text, { start, end: start }).start, start)),
  );
  const all = [...candidates, ...ofRows].filter(({ readings, doubt, explicit }) => explicit && readings.length === 1 && !doubt);
  const known = [...new Set([...settled.dates, ...all.flatMap(({ readings }) => readings[0] ?? [])])].sort();
  const mentions = scene.dates.slice(0, MOST_MENTIONS).filter(({ said, by }) => said !== 'reply' && (!by || said === 'wrap'));
  const dated = mentions.map((mention) => ({ start: mention.start, end: mention.end, days: meant(mention, known) }));
  const run = settled.dates.length > 1 ? settled.dates : settled.choices.find(({ length }) => length > 1);
  const placed = byPlace(text, mentions, run ?? (consecutive(known) ? known : []));
  const { only, told, no, except, yes, strong, quiet, rows } = marksOf(
    scene,
    [...dated, ...placed].toSorted((a, b) => a.start - b.start),
    known,
  );
  const decide = (days: Iterable<string>): EventDays | undefined => {
    const dates = [...days].sort();
    const dropped = known.filter((day) => !dates.includes(day));
    return dates.length === 0 || dropped.length === 0 ? undefined : { dates, where: settled.where, choices: [], dropped };
  };
  const open = (): EventDays => ({
    dates: [],
    where: settled.where,
    choices: known.slice(0, 4).map((day) => [day]),
    doubt: 'several',
    dropped: [],
  });
  const wanted = new Set([...strong, ...told, ...yes]);
  const refused = [...no].filter((day) => !wanted.has(day) && !only.has(day) && !quiet.has(day));
  if (except.size > 0 && !several && consecutive(settled.dates)) return decide(known.filter((day) => !except.has(day)));
  const counts = dayNumbers(text).flatMap((number) => settled.dates[number - 1] ?? []);
  if (counts.length > 0) return decide(counts);
  if (only.size > 0 && told.size > 0) return decide(new Set([...only, ...told]));
  if (only.size > 0) return [...strong].every((day) => only.has(day)) ? decide(only) : open();
  if (told.size > 0) return [...strong, ...yes].every((day) => told.has(day)) ? decide(told) : open();
  if (strong.size > 0 && rows.size > strong.size && [...yes].every((day) => strong.has(day))) return decide(strong);
  if (STARRED.test(text) && rows.size > 1 && strong.size === 0 && !/^\s*\*/m.test(text)) return open();
  const last = LAST_OF.exec(text);
  if (last && rows.size > 1) {
    const count = numberOf(last[2] ?? '');
    const mine = mentions.filter((mention) => meant(mention, [...rows]).length === 1);
    const some = last[1]?.toLowerCase() === 'last' ? mine.slice(-count) : mine.slice(0, count);
    return decide(new Set(some.flatMap((mention) => meant(mention, [...rows]))));
  }
  const counted = [...text.matchAll(COUNTED)].some(([, count]) => numberOf(count ?? '') === rows.size);
  if (rows.size > 1 && rows.size < known.length && counted && refused.length === 0) return decide(rows);
  if (refused.length > 0) {
    const rest = known.filter(
      (day) => !refused.includes(day) && (rows.size < 2 || rows.has(day)) && (several || settled.dates.includes(day) || wanted.has(day)),
    );
    const silent = rest.filter((day) => !wanted.has(day));
    return rest.length > 0 && (silent.length === 0 || (!several && silent.length === rest.length && rest.every((day) => rows.has(day))))
      ? decide(rest)
      : open();
  }
  if (strong.size > 0 && rows.size > strong.size) return decide(strong);
  if (several && rows.size > 1 && [...rows].every((day) => wanted.has(day)) && ALL_OF.test(text))
    return { dates: [...rows].sort(), where: settled.where, choices: [], dropped: [] };
  if ((several || !consecutive(settled.dates)) && rows.size > 2 && wanted.size > 1 && wanted.size < known.length)
    return wanted.size === 2 && BOTH.test(text) ? decide(wanted) : open();
  return undefined;
}
