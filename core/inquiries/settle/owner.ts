/**
 * Whose hour it is where several are told: "sound guy 0600, yours 0730", "it ends at eleven but you can go at half ten".
 */
import { anyOf } from '../phrases.ts';
import { OTHER_CREW } from '../said/subject.ts';
import type { Where } from './scene.ts';

const MINE = anyOf(`
  you | u | your | yours | you'd | you're | you'll | youd | ur | kit | only camera | a camera is | camera is | cameras | cam 3 | videographer | for video | vous | tu | te | toi | sie | dich | du | ihnen | usted | tú | jij | je | jou
`);
/** A department at the beginning of its clause. */
const OTHERS =
  /^\s*(?:the |our |my |l'|le |la |les |die |das |der |el |los |il |de |het )?(?:équipe|sound|son|licht|ton|audio|lighting|stage|director|client|talent|cams? (?:\d|one|two)|cameras? (?:\d|one|two) and|florist|caterers?|band|speakers?|players|exhibitors|guests?|volunteers?|choir|equipo|técnicos|techniciens|techniek)(?!\p{L})/iu;
const CREW_FIRST = new RegExp(`^\\s*(?:the\\s)?${OTHER_CREW.source}`, 'i');
const CLAUSE = /[.;!?\n]|,\s|\s-+\s|(?<!\p{L})(?:and|but|so|then|while|und|aber|et|mais|y|pero|en|maar)(?!\p{L})/iu;
const REACH = 70;
const AFTER =
  /^\s?(?:for (?:you|kit)\b|(?:kannst du|können sie|you can|you're|you are|tu peux|vous pouvez) |\((?:you|kit)\b|\((?:that|this) (?:would be|is) you|,? ?(?:(?:so |and )?that's|which is|,? same for) (?:you|yours|your|when (?:you|we|i))\b)/i;

/** `mine` where the clause of an hour names me, `theirs` where it names others; nothing where it names nobody. */
export function ownerOf(text: string, { start, end }: Where): 'mine' | 'theirs' | undefined {
  if (AFTER.test(text.slice(end, end + 30))) return 'mine';
  const lead =
    text
      .slice(Math.max(0, start - REACH), start)
      .split(CLAUSE)
      .at(-1) ?? '';
  if (MINE.test(lead)) return 'mine';
  return OTHERS.test(lead) || CREW_FIRST.test(lead) ? 'theirs' : undefined;
}
