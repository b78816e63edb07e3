/**
 * The lines of a message, and which of them tell how to reach somebody.
 */
import { MONTH } from '../words.ts';

export type PartKind = 'own' | 'forwarded' | 'quoted' | 'signature' | 'header' | 'subject' | 'footer' | 'stamp';
export type Part = { kind: PartKind; start: number; end: number };
/** `marked` is where marks of quoting stood before it. */
export type Line = { text: string; start: number; end: number; marked?: number };

const CONTACT_LINE = /\S@\S|\bwww\.|https?:|\+?\(?\d[\d\s().-]{6,18}\d|^(?:tel|phone|mob|mobile|cell|direct|office|m|t|p|e|o|c|w)\s?[.:]/i;
/** A date in figures is no number to call. */
const IN_FIGURES = /\b(?:(?:19|20)\d\d[-./]\d{1,2}[-./]\d{1,2}|\d{1,2}[-./]\d{1,2}[-./](?:19|20)\d\d)\b/g;
export const reaches = (words: string): boolean => CONTACT_LINE.test(words.replace(IN_FIGURES, ''));

/** A line of a mail's head. */
export const HEADER =
  /^(from|to|cc|bcc|sent|date|subject|reply-to|von|an|gesendet|betreff|datum|de|à|envoyé|objet|fecha|asunto|para|enviado|da|oggetto|van|aan|verzonden|onderwerp)\s?:\s*(.*)$/i;

/** "On 3 May 2027, Ailsa wrote:" */
export const ATTRIBUTION =
  /^(?:on\b.{4,160}\bwrote|am\b.{4,160}\bschrieb\b.{0,80}|le\b.{4,160}\ba écrit|el\b.{4,160}\bescribió|il\b.{4,160}\bha scritto|op\b.{4,160}\bschreef\b.{0,80}|em\b.{4,160}\bescreveu)\s?:?\s*$/i;

const OF_DAYS = new RegExp(
  String.raw`^(?:from|to|von|van|an|aan|para)\s?:\s*(?:\d{1,4}[-/.]\d|\d{1,2}(?:st|nd|rd|th|\.)? ${MONTH}(?!\p{L})|(?:mon|tue|wed|thu|fri|sat|sun)\p{L}*\.?,? (?:\d|${MONTH}\.? \d)|${MONTH}\.? \d{1,2}(?!\d)(?!\s+\p{Lu}\p{L}))`,
  'iu',
);
/** "From: 2028-11-08" and "To: Fri 10 November", as a form has them: when, and not who. */
export const isWhen = (words: string): boolean => OF_DAYS.test(words);

export function linesOf(text: string): Line[] {
  const lines: Line[] = [];
  let start = 0;
  for (const line of text.split('\n')) {
    lines.push({ text: line, start, end: start + line.length });
    start += line.length + 1;
  }
  return lines;
}

/** Long lines are prose, never a header or a sign-off: no pattern is tried on them. */
export const LONGEST_MARK = 200;
export const short = (line: Line | undefined): string => (line && line.text.length <= LONGEST_MARK ? line.text.trim() : '');
export const blank = (line: Line | undefined): boolean => line === undefined || line.text.trim() === '';

/**
 * What is asked, what is handed over and who says so in the text stands in the first pages; who signs, at the end. Further down only
 * dates, hours, prices and places are sought.
 */
export const FIRST_PAGES = 8_000;
