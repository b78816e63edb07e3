/** The file name under which a paper is saved or sent. */
import { paperText } from '../words/letters.ts';

/** Signs that one of the common file systems refuses, or that a shell would read. */
const REFUSED = /[\\/:*?"<>|`$\p{Cc}]/gu;
/** File systems count bytes, up to 255; a letter takes at most four. */
const LONGEST = 60;

/** "Quote 2, Provincial curling championship.pdf": a bare name that every common file system takes. */
export function quotePaperName(title: string, number: number): string {
  return paperName(`Quote ${number}`, title);
}

/** The same for any paper: "Invoice 2026-031, Provincial curling championship.pdf". @param head what it is, of plain letters */
export function paperName(head: string, title: string): string {
  const safe = Array.from(paperText(title).replace(REFUSED, ' ').replace(/\s+/g, ' ').trim()).slice(0, LONGEST).join('');
  return `${`${head}, ${safe}`.replace(/[ .,]+$/, '')}.pdf`;
}
