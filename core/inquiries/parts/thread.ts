/**
 * A mail that its writer takes up again: few new words above, and below them the old mail that still holds but for what the new words change.
 */
import { takesMeOn } from '../agreeing.ts';
import { anyOf } from '../phrases.ts';
import { LONGEST_MARK, type Part } from './lines.ts';
import { writerOf } from './passed-on.ts';
import { only, split } from './split.ts';

/**
 * @property mail the old mail as a message of its own, without marks of quoting, as long as the end of the text from `at` on
 * @property at where it begins
 * @property words what is written above it
 * @property holds the words above say that the rest of it holds
 * @property mended they change something in it
 * @property takenUp they mend it, remind of it or answer a question about it
 */
export type Thread = { mail: string; at: number; words: string; holds: boolean; mended: boolean; takenUp: boolean };

/** Words that send the reader down to the old mail for what they do not say. */
const HOLDS = anyOf(`
  rest/remainder still? stands/holds/goes/applies/remains/stays | rest/remainder still? is/'s/are ok/okay/fine/right/correct/unchanged/good/valid/true | rest/remainder ... same/below/underneath/unchanged
  everything/all else ... stands/holds/goes/applies/remains/stays/same/below/unchanged/fine/correct/right | nothing else changes/changed/has_changed/is_changed/moves | no other changes
  same/unchanged as below/before/underneath/above_mail | as in/per my/the/our mail/e-mail/email/note/message/first/last/original/previous/earlier/old | in my/our mail/e-mail/email/message/note below/underneath/beneath
  all/details/everything/info/it/as below/underneath/beneath | see/read below/underneath/beneath | mail/email/e-mail/message/note below/underneath/beneath | date/day/time/times/place/town/venue/hours/fee/money/details ... as below | my mail/email/e-mail/message/note/one below/underneath/beneath
  time/times/date/place/town/venue/hours/fee/money ... is/are/stay/stays/remain/remains/still unchanged/same/the_same | same time/times/hours/place/venue/money/fee/deal/terms | der rest bleibt/stimmt/gilt | alles andere bleibt/stimmt/gilt | wie unten | le reste ne/est/reste | tout le reste | lo demás | el resto | il resto | de rest/overige
`);
/** What was written is mended or added to. */
const MENDS = anyOf(`
  typo | typos | typing mistake/error | wrong date/day/month/year/time/hour/number/phone/mail/email/price/fee/amount/figure/town/place/venue/weekday/monday/tuesday/wednesday/thursday/friday/saturday/sunday | date/day/time/hour/number/price/fee/amount/place/year/month ... wrong/mistaken/incorrect | gave/told/sent you ... wrong | got ... wrong | i'd/i_had/i've/i_have ... wrong | mixed up | muddled | slip of the pen/finger/fingers | fat fingers | my mistake | my bad | silly/stupid of me | i made a mistake/error/slip
  i/we meant | i/we wanted to write/say/put | i/we mistyped/misread/miscounted | should have/'ve said/written/mentioned/told/put/added/read | should say/read | forgot to say/mention/add/tell/give/put/write/include | i/we left out | i/we didn't mention/say/tell
  ignore/disregard/forget what/the/my ... sent/said/wrote/date/time/number/note/mail/message/figure/price/fee | scrap that | correction | small/slight/little/one/quick change/correction/amendment | change of plan/date/venue/time | is/has/been/have moved | moved/moves/becomes | push/pushed/move/shift/shifted/put/postpone/postponed/bring/brought ... to | forget ... date/day/old/first/what | meinte ich | tippfehler | falsch geschrieben | erreur de | me equivoqué | vergist | verkeerd*
`);
/** They remind of it, ask once more, or answer what I asked about it. */
const REMINDS = anyOf(`
  bump | bumping | floating ... | nudge | nudging | following up | follow up | follow-up | chasing ... my/this/the/you/up | circling back | resending | re-sending | sending ... again | trying again | try again | writing again | asking again | me again | second try/attempt | once more
  any news/thoughts/joy/luck/word/update/answer/decision/response/idea | did/have you ... get/see/got/seen/read/receive/received/have/had/decide/decided | heard nothing | haven't/have_not/not/never heard | heard back | no reply/answer/response yet/from/so_far | still/are_you_still interested/free/available/keen/possible/hoping/looking/need | went under | got lost | in your spam | gone astray | slipped through | in case ... missed | top of your inbox/pile/list | checking in | just checking | gentle/friendly reminder | as i/we wrote/said/asked | one more/last/other thing | ps on
  to answer your | in answer to | you asked | you were asking | you wanted to know | glad you're keen/interested/up_for_it | thanks/thank_you for ... getting/coming back/reply/answer/replying/answering | erinner* | nachhaken | nochmal | des nouvelles | relance* | nog eens | alguna novedad
`);
/** What is off, taken by somebody else, done or settled is taken up for something else than being asked. */
const OVER = anyOf(`
  called off | is/been/be/was cancelled | have/had to cancel | must cancel | no longer need/needed/happening/required | don't/do_not/won't need | won't be/happen | not/isn't going ahead | gone/going/went with | found/got/booked/hired someone/somebody/another/one | sorted now | all sorted | invoice | invoices | receipt | paid | payment | deposit | contract | bank details | iban | your film/edit/footage/video/work | the footage/edit/rushes/raw | loved | well done | looking forward to seeing | see you on/then/there/tomorrow/saturday/sunday/friday | for your records | put you down/in | you're/you_are booked/confirmed/hired | you eat | dietary | vegetarian | vegan | when ... ready/done/finished/finish/get/have/see
`);

/** Words of a mend or a reminder are few. */
const MOST_ABOVE = 700;
/** Only the last lines above are looked at for a name. */
const LINES_SIGNED = 6;

/** True when one of the last lines is signed by a name, in full or short. */
function signedBy(above: string, name: string): boolean {
  const first = name.toLowerCase();
  const lines = above
    .trim()
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '');
  return lines.slice(-LINES_SIGNED).some((line, at, last) => {
    if (line.length > LONGEST_MARK) return false;
    const words = line.toLowerCase().split(/[^\p{L}'-]+/u);
    const named = words.some((word) => word === first || (word.length > 2 && (first.startsWith(word) || word.startsWith(first))));
    // A greeting names whom it greets; a sentence, whom it is of.
    return (
      named &&
      (lines.length > 1 || last.length === 1) &&
      words.length <= 7 &&
      !/^(?:hi|hello|hey|dear|hallo|morning)\b/i.test(line) &&
      (at > 0 || lines.length > LINES_SIGNED || !/[,!]$/.test(line))
    );
  });
}
/** What I wrote myself, or somebody who was asked. */
const IS_MINE =
  /\b(?:happy|glad|delighted) to\b|\bi(?:'d| would) (?:love|be (?:happy|glad|delighted)) to (?:film|shoot|do|record|cover|help)\b|\bi (?:can|could|charge|usually|quote)\b|\bmy (?:day )?(?:rate|fee|price|quote)\b|\bi(?:'m| am) (?:free|available)\b|\bthank(?:s| you) for (?:writing|your|getting|reaching|the (?:enquiry|inquiry|message|mail))\b|\b(?:mein|unser) (?:honorar|angebot|preis|tagessatz)\b/i;
const UNSIGNED = /[.!?)]\s*$/;

/** What is written above a quoted mail, and the quoted mails below it without the lines that say who wrote them when. */
export function aboveQuoted(text: string): { above: string; below: string } {
  const parts = split(text);
  const quoted = parts.findIndex(({ kind, start, end }) => kind === 'quoted' && text.slice(start, end).trim() !== '');
  return quoted === -1
    ? { above: '', below: '' }
    : {
        above: only(text, parts.slice(0, quoted), 'own'),
        below: only(text, parts.slice(quoted), 'quoted').replace(
          /^.*wrote:.*$|^[>\s]*(?:sent|date|on|am|le|el|gesendet)\b.*\b\d{1,2}:\d\d\b.*$/gim,
          '',
        ),
      };
}

/** The old mail below new words of the same writer, or of whoever says that it still holds; nothing where mails are passed on, answered between the lines or talked over in a chat. */
export function threadOf(text: string): Thread | undefined {
  const parts = split(text);
  const told = (part: Part): boolean => text.slice(part.start, part.end).trim() !== '';
  if (parts.some((part) => (part.kind === 'forwarded' || part.kind === 'stamp') && told(part))) return undefined;
  const quoted = parts.findIndex((part) => part.kind === 'quoted' && told(part));
  if (quoted === -1) return undefined;
  let head = quoted;
  while (head > 0 && (parts[head - 1]?.kind === 'header' || parts[head - 1]?.kind === 'subject' || !told(parts[head - 1] as Part))) head--;
  const above = only(text, parts.slice(0, head), 'own', 'signature').slice(0, parts[head]?.start);
  if (above.trim() === '' || above.trim().length > MOST_ABOVE) return undefined;
  if (parts.slice(quoted).some((part) => part.kind === 'own' && told(part))) return undefined;
  const start = parts.slice(head).find(told)?.start ?? 0;
  const mail = text.slice(start).replace(/^([ \t]{0,3})>/gm, '$1 ');
  const holds = HOLDS.test(above);
  const mended = MENDS.test(above);
  const takenUp = ((holds || mended || REMINDS.test(above)) && !OVER.test(above)) || takesMeOn(above, /\d/.test(above));
  const writer = writerOf(mail);
  const same = writer !== undefined && signedBy(above, writer);
  const unnamed = takenUp && (writer === undefined || UNSIGNED.test(above)) && !IS_MINE.test(mail);
  return same || unnamed || holds ? { mail, at: start, words: above, holds, mended, takenUp } : undefined;
}
