/**
 * What a firm or a club is by law, written behind its name: "Pvt. Ltd.", "(Pty) Ltd", ", Inc.", "Sp. z o.o.", "GmbH & Co. KG".
 */
import type { PersonFact } from './words.ts';

const FORMS = String.raw`(?:\(?(?:Pvt|Pte|Pty|Sdn|Co|Private)\.?\)?,? )?(?:Ltd|Limited|Bhd)|P\/L|Inc|LLC|LLP|PLC|plc|g?GmbH(?: & Co\.? KGa?A?)?|[OoK]HG|[OK]G|AG|S\.?A(?= au capital)|[Ss]rl|n\. ?o|z\. ?[sú]|o\. ?p\. ?s|k\. ?s|e\.?U|mbH|OHG|eG|e\.? ?[VUGK]|S\. ?A\.(?: de C\.V\.)?|S\. ?L\.(?:U\.)?|S\.?[Rr]\.?[Ll]|s\.r\.l|S\.?p\.?A|SARL|SAS|ASBL|asbl|vzw|VZW|B\.?V|N\.V|V\.?O\.?F|A\/S|ApS|Oyj?|AB|sprl|SPRL|Kft|Zrt|s\.r\.o|[az]\.s|[Ss]p\. ?z ?o\. ?o|Lda|Ltda|d\.o\.o`;
const BEHIND = new RegExp(String.raw`^(?:\.|,)? ?(?:${FORMS})(?![\p{L}&])\.?`, 'u');
const ANYWHERE = new RegExp(String.raw`(?<=[\p{L}.]),? (?:${FORMS})(?![\p{L}&])\.?`, 'gu');

/** The text with blanks for its legal forms, which hold marks that part other words. */
export const withoutForms = (text: string): string => text.replace(ANYWHERE, (form) => ' '.repeat(form.length));

/** The name of a firm with its legal form. */
export function withForm(text: string, fact: PersonFact): PersonFact {
  const form = BEHIND.exec(text.slice(fact.end, fact.end + 24))?.[0] ?? '';
  return form === '' ? fact : { value: fact.value + form, start: fact.start, end: fact.end + form.length };
}
