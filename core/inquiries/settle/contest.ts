/**
 * What begins at an hour is a part of a contest: "first draw is 8:30", "weigh-ins 7am, wrestling 9am", "kick-off at 3". That says nothing of when I am
 * wanted: of a hundred such hours in the messages that are labelled three are a call, each told as one ("please be at the first tee at 07.15").
 */
const PART = String.raw`(?:draws?|heats?|bouts?|weigh-?ins?|match(?:es)?|games?|races?|wrestling|racing|judging|kick-?offs?|tip-?offs?|face-?offs?|push-?offs?|puck drops?|throw-?(?:offs?|ins?)|bully-?offs?)`;
const FIRST = String.raw`first (?:serve|whistle|pitch|ball|tee|throw|pull|lot|lap|leg|boat|riders?|runners?|event|over|shot|wave|starters?)`;
const BEGINS = new RegExp(
  String.raw`(?:^|[.;,\n:(!?–-]\s*|\b(?:and|with)\s)(?:the |our )?(?:(?:(?:first|opening|preliminary|final|semi-?|quarter-?)\s?)?${PART}|${FIRST})(?:'s| is| are| starts?| begins?| at| from| will be| on){0,2}:?\s$`,
  'i',
);
const BEFORE = 48;

/** "Your shift: race 9am", "you ride with us, first boat 6am" */
const MINE = /\b(?:your (?:shift|schedule|hours|call)|you ride|everything|coverage)\b[^.\n]{0,28}$/i;

/** True where a part of a contest begins at the hour that stands at `start`. */
export function beginsContest(text: string, start: number): boolean {
  const lead = text.slice(Math.max(0, start - BEFORE), start);
  return BEGINS.test(lead) && !MINE.test(lead);
}
