/**
 * Cuts a calendar file into its parts while it is read, so that a file of any size and any malice takes little memory: lines are
 * unfolded as octets (RFC 5545 3.1: a fold may stand inside a letter), only the properties that say when are kept, and what is inside
 * of an event (alarms) is counted, never descended into.
 */

/** One event, or one zone definition, as unfolded lines. */
export type Part = { kind: 'VEVENT' | 'VTIMEZONE'; lines: string[]; trouble: 'too large' | 'not closed' | null };
/** What the file said of itself. */
export type FileFacts = {
  /** It is a calendar at all. */
  isCalendar: boolean;
  /** It does not end in the middle. */
  isWhole: boolean;
};

/** Longest line, and most lines, that are kept of one part. Real events have a few hundred octets; long lists of exceptions some thousands. */
const LONGEST_LINE = 65_536;
const MOST_LINES = 2_000;
const LARGEST_PART = 262_144;

const OF_EVENTS = new Set([
  'UID',
  'DTSTART',
  'DTEND',
  'DURATION',
  'RRULE',
  'RDATE',
  'EXDATE',
  'RECURRENCE-ID',
  'SEQUENCE',
  'STATUS',
  'TRANSP',
  'SUMMARY',
  'X-MICROSOFT-CDO-BUSYSTATUS',
]);
const BEGIN_OR_END = /^(BEGIN|END):\s*([A-Z-]{1,40})\s*$/i;
/** Of UTF-8, as octets. */
const BYTE_ORDER_MARK = '\u00ef\u00bb\u00bf';
/** A name that was folded before its end. */
const BEGUN_NAME = /^[A-Z-]{1,40}$/i;
const NAME = /^[A-Z0-9-]{1,40}(?=[:;])/i;

export class CalendarCutter {
  readonly #decode: (octets: string) => string;
  /** What came since the last line end. */
  #rest = '';
  #line = '';
  #tooLong = false;
  #keepsLine = false;
  #part: (Part & { size: number; inside: number }) | null = null;
  #begun = false;
  #open = 0;
  #done: Part[] = [];

  /** @param decode makes text of octets in UTF-8, each given as the character of its number */
  constructor(decode: (octets: string) => string) {
    this.#decode = decode;
  }

  /**
   * Take the next octets of the file, each as the character of its number.
   * @returns the parts that ended in them
   */
  push(octets: string): Part[] {
    let from = 0;
    for (;;) {
      const end = octets.indexOf('\n', from);
      if (end < 0) break;
      this.#take(octets, from, end);
      const physical = this.#rest.endsWith('\r') ? this.#rest.slice(0, -1) : this.#rest;
      this.#rest = '';
      this.#physical(physical);
      from = end + 1;
    }
    this.#take(octets, from, octets.length);
    return this.#done.splice(0);
  }

  /** The file is at its end. */
  end(): { parts: Part[]; facts: FileFacts } {
    if (this.#rest !== '') this.#physical(this.#rest.replace(/\r$/, ''));
    this.#logical();
    if (this.#part) this.#close('not closed');
    return { parts: this.#done.splice(0), facts: { isCalendar: this.#begun, isWhole: this.#begun && this.#open <= 0 } };
  }

  /** A line without end is cut short; that it was is told by its length. */
  #take(octets: string, from: number, to: number): void {
    const room = LONGEST_LINE + 2 - this.#rest.length;
    if (room > 0 && to > from) this.#rest += octets.slice(from, Math.min(to, from + room));
  }

  #physical(line: string): void {
    if (line.startsWith(' ') || line.startsWith('\t')) {
      if (!this.#keepsLine) return;
      if (this.#line.length + line.length > LONGEST_LINE) this.#tooLong = true;
      else this.#line += line.slice(1);
      return;
    }
    this.#logical();
    this.#line = this.#begun ? line : line.replace(BYTE_ORDER_MARK, '');
    this.#tooLong = line.length > LONGEST_LINE;
    this.#keepsLine = this.#isWanted(this.#line);
  }

  #isWanted(line: string): boolean {
    if (BEGIN_OR_END.test(line)) return true;
    if (!this.#part || (this.#part.kind === 'VEVENT' && this.#part.inside > 0)) return BEGUN_NAME.test(line);
    return this.#part.kind === 'VTIMEZONE' || BEGUN_NAME.test(line) || OF_EVENTS.has(NAME.exec(line)?.[0].toUpperCase() ?? '');
  }

  #logical(): void {
    const line = this.#line;
    const wanted = this.#keepsLine;
    this.#line = '';
    this.#keepsLine = false;
    if (!wanted) return;
    const border = BEGIN_OR_END.exec(line);
    if (border) this.#border(border[1]?.toUpperCase() === 'BEGIN', border[2]?.toUpperCase() ?? '', line);
    else if (!BEGUN_NAME.test(line) && this.#isWanted(line)) this.#add(line);
  }

  #border(begins: boolean, name: string, line: string): void {
    if (name === 'VCALENDAR') {
      this.#open += begins ? 1 : -1;
      this.#begun ||= begins;
      if (this.#part) this.#close('not closed');
      return;
    }
    const part = this.#part;
    if (begins && (name === 'VEVENT' || name === 'VTIMEZONE')) {
      if (part) this.#close('not closed');
      this.#part = { kind: name, lines: [], trouble: null, size: 0, inside: 0 };
    } else if (part && !begins && name === part.kind) this.#close(null);
    else if (part) {
      part.inside += begins ? 1 : -1;
      if (part.kind === 'VTIMEZONE') this.#add(line);
    }
  }

  #add(line: string): void {
    const part = this.#part;
    if (!part || part.trouble) return;
    part.size += line.length;
    // A title can be cut short; whatever says when cannot.
    const isCut = this.#tooLong && !/^SUMMARY[:;]/i.test(line);
    if (isCut || part.lines.length >= MOST_LINES || part.size > LARGEST_PART) {
      part.trouble = 'too large';
      part.lines = [];
    } else part.lines.push(isAscii(line) ? line : this.#decode(line));
  }

  #close(trouble: Part['trouble']): void {
    if (!this.#part) return;
    const { kind, lines, trouble: before } = this.#part;
    this.#done.push({ kind, lines, trouble: before ?? trouble });
    this.#part = null;
  }
}

function isAscii(line: string): boolean {
  for (let index = 0; index < line.length; index += 1) if (line.charCodeAt(index) > 0x7f) return false;
  return true;
}
