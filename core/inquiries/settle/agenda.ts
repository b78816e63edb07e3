/**
 * Hours in a list, one a line: "7:30 AM lighting", "camera 08:00 (that would be you)". Of such a list only the lines that name me are my hours;
 * where none does, those that name the cameras, the crew or a call.
 */
import { anyOf } from '../phrases.ts';
import { inlineRows, type Row } from './agenda-inline.ts';
import type { Where } from './scene.ts';

const ME = anyOf(
  `you | your | yours | you're | you'd | kit | video | videographer | vidéaste | videógrafo | videograaf | videograf | vision mixer | vision mixing | stream crew | streamer | stream op | livestream op | b-camera | b cam | cam 2 | camera 2 | be there | be here | also sie | sie | vous | video crew | kameramann | kamerafrau | caméraman | cadreur | cadreuse | cameraman | camarógrafo | operatore | videomaker`,
);
const CREW = anyOf(
  `kamera | kameras | kamerateam | caméra | caméras | cámara | cámaras | telecamera | camera | cameras | cam | cams | crew | all crew | filming | film crew | stream | streaming | photo | photographer | operator | operators | load-in | get-in | bump-in | rig | call | crew call | access | everybody | everyone | wrap`,
);
const NOT_ME = /\b(?:not you|no (?:video|filming|camera)|without (?:video|you)|ohne video|sans vidéo|sin vídeo|not filmed)\b/i;
const ENDS = anyOf(
  `released | release | wrap | wraps | out | off | done | free | depart | departs | departure | finish | finishes | finished | home | clear | cleared | de-rig | derig | strike | load-out | get-out | bump-out | pack down | packed | ends | end | go home | can go | fertig | ende | schluss | abbau | départ | fin | terminado | klaar | weg | libre | relieved | dismissed | excused | leave | leaves | away | may leave | can leave | dark | everyone gone | everybody gone | all gone`,
);
const DAY_ENDS =
  /^\W*(?:fin de la jornada|fin de journée|end of (?:the )?day|(?:latest |final |crew |last )?departure\b(?! of)|(?:get|load|bump)[- ]?out (?:complete|done)|(?:hall|venue|room|site|building) (?:clear|empty|vacated|to be (?:clear|empty|vacated))|crew wrap|wrap|all out|everybody out|ende|feierabend|einde)\b/i;
/** "14:01 <ann> are you there" */
const CHAT = /^\s?[\]>]|^\s*<[^<>\n]{1,30}>|^\s*(?:-\s)?[\p{L} ]{2,24}:\s/u;
/** "Staging crew in", "talent call" */
const OTHERS =
  /\b(?:talent|cast|band|artists?|speakers?|staging|stage|rigging|director|make-?up|catering|kitchen|sound|audio|av|lighting|photo\w*|dj)(?: (?:crew|team|call|in|out|load-? ?in|access|wrap))+\b/i;
/** In a message that asks for film the photographer of a list is another. */
const STILLS = /^\W*(?:photo|photos|photographers?)\b/i;
const SEEKS_FILM = /\b(?:film|video)/i;
const FEWEST_ROWS = 3;
const LONGEST_ROW = 150;

/** Lines that begin with their hour or end with it, each beside another such line. */
function rowsIn<T extends Where>(text: string, times: readonly T[]): Row<T>[] {
  const rows: Row<T>[] = [];
  let from = 0;
  let end = -1;
  for (const [index, time] of times.entries()) {
    // Times come in order: the line is moved along with them and each is sought once.
    const before = end;
    while (end < time.end) {
      const to = text.indexOf('\n', end + 1);
      if (end >= 0 && end < time.start) from = end + 1;
      end = to < 0 ? text.length : to;
    }
    const last = rows.at(-1);
    if (before === end && last?.end === end) last.times.push(time);
    if (before === end || end - from > LONGEST_ROW) continue;
    const [lead, rest] = [text.slice(from, time.start), text.slice(time.end, end)];
    if (CHAT.test(rest)) continue;
    const first = /^[\s\d).\u00b7\u2022*-]*$/.test(lead);
    // The hour begins its line or ends it; a form's "Call: 7:00" has a mark and is read elsewhere.
    const alone = (times[index + 1]?.start ?? Infinity) >= end;
    if (!first && (!alone || /[:=?.]/.test(lead) || !/^\s*(?:\(.*\))?\s*$/.test(rest))) continue;
    rows.push({ times: [time], label: `${lead} ${rest}`, from, end });
  }
  return rows.filter(({ from: begins, end: ends }, at) => rows[at - 1]?.end === begins - 1 || rows[at + 1]?.from === ends + 1);
}

const dayEnds = ({ label }: { label: string }): boolean => DAY_ENDS.test(label.replace(/^[\s\d).\u00b7\u2022*-]+/, ''));

/** For each hour of a list whether it is my call, my wrap or somebody else's; hours that stand in no list are left out. */
export function rowsOf<T extends Where>(text: string, times: readonly T[]): Map<T, 'call' | 'wrap' | 'show'> {
  const lines = rowsIn(text, times);
  return saidOf(lines.length < FEWEST_ROWS ? inlineRows(text, times) : lines, SEEKS_FILM.test(text));
}

function saidOf<T extends Where>(rows: readonly Row<T>[], ofFilm: boolean): Map<T, 'call' | 'wrap' | 'show'> {
  const said = new Map<T, 'call' | 'wrap' | 'show'>();
  if (rows.length < FEWEST_ROWS) return said;
  const named = ({ label }: Row<T>): boolean => ME.test(label) && !NOT_ME.test(label);
  const crews = ({ label }: Row<T>): boolean =>
    CREW.test(label) && !NOT_ME.test(label) && !OTHERS.test(label) && !(ofFilm && STILLS.test(label));
  const ends = ({ label }: Row<T>): boolean => ENDS.test(label.replace(/\([^()]*\)/g, '').trim() || label);
  const mine = rows.some((row) => named(row) && !ends(row)) ? named : (row: Row<T>): boolean => named(row) || crews(row);
  if (!rows.some((row) => mine(row) && !ends(row))) return said;
  const told = rows.some((row) => mine(row) && ends(row));
  const day = rows.some((row) => crews(row) && ends(row)) ? (row: Row<T>): boolean => crews(row) && ends(row) : dayEnds;
  for (const row of rows) {
    const [first] = row.times;
    const wraps = mine(row) ? ends(row) : !told && day(row);
    if (first) said.set(first, wraps ? 'wrap' : mine(row) ? 'call' : 'show');
  }
  return said;
}
