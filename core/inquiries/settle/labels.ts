/**
 * Hours after the name of whose they are, one a line: "Video: 15:00 to 22:30", "YOUR HOURS: 3:00p - 10:30p", "AV (their own): 08:00 to midnight".
 */
import { lineStart } from '../parts/sentences.ts';
import { anyOf } from '../phrases.ts';
import type { Where } from './scene.ts';

const MINE = anyOf(`
  you | kit | video | videographer | video crew | video kit | cameraman | camera operator | filming | your hours/times/time/call/day/shift/slot/stint/schedule | hours/times/call for you | video hours/times/call/from/on_site/in/access | vidéaste | videógrafo | ihre zeiten | deine zeiten | vos horaires | tes horaires
`);
const THEIRS = anyOf(`
  av | a/v | pa | sound | audio | light/lights/lighting | stage | photographer | photo | photos | stills | caterer | catering | florist | dj | band | guests | doors | build | truck | director | talent | make-up | security | volunteers | marshals | audio kit | florist kit | photo kit | av hours | sound hours
`);
const LABEL =
  /^[\s\-*\u2022\u00b7]*(?:\d{1,2}[.)]\s?)?([^:\n|]{2,30}?)\s?(?:\([^()\n]{0,30}\)\s?)?[:=]\s*(?:(?:from|on site|in at|at)\s)?$/i;
const LONGEST = 70;

const whole = (pattern: RegExp, label: string): boolean => pattern.exec(label)?.[0].length === label.length;

/** "Event start: 18:30", "Guest arrival: 7pm", "Start of ceremony: 14:00", "Doors: 19:00": when the occasion begins tells nothing of when I come. */
const BEGINS_FOR_ALL =
  /^(?:the )?(?:event|party|show|concert|gig|ceremony|doors?|guests?|public|visitors?|match|game|race|performance|service|reception|dinner|session|programme|program|wedding|audience)s?(?:'s?)? (?:start|starts|starting|begins?|beginning|opens?|opening|arrival|arrives?|arrive)(?: time| at| from)?$|^(?:start|beginning|opening|arrival) (?:time )?(?:of|for) (?:the |our )?(?:event|party|show|concert|gig|ceremony|doors?|guests?|public|visitors?|match|game|race|performance|service|reception|dinner|session|wedding|audience)s?$|^(?:doors|doors open|curtain(?: up)?|kick-?off)$/i;

/** "10:00 - 16:00 (guests)", "2pm (doors)" */
const FOR_GUESTS =
  /^(?: ?[ap]\.?m\.?)? ?\((?:for )?(?:the |our )?(?:guests?|public|visitors|doors(?: open)?|audience|show(?: ?time| hours)?|event (?:hours|times?)|opening hours|public hours)(?: only)?\)/i;
const IN_BRACKETS = 40;

/** True for an hour that is told, by its label or in brackets behind it, as the one at which the occasion begins for everybody. */
export function beginsForAll(text: string, { start, end }: Where): boolean {
  if (FOR_GUESTS.test(text.slice(end, end + IN_BRACKETS))) return true;
  const line = text.slice(Math.max(lineStart(text, start), start - LONGEST), start);
  return BEGINS_FOR_ALL.test(LABEL.exec(line)?.[1]?.trim() ?? '');
}

/** Whose the hours after the label of a line are; nothing where it names nobody. */
export function labelOf(text: string, { start }: Where): 'mine' | 'theirs' | undefined {
  const line = text.slice(Math.max(lineStart(text, start), start - LONGEST), start);
  const found = LABEL.exec(line);
  const label = found?.[1]?.trim() ?? '';
  if (label === '') return undefined;
  if (whole(MINE, label) || /\((?:you|that's you)\)/i.test(line)) return 'mine';
  return whole(THEIRS, label) ? 'theirs' : undefined;
}
