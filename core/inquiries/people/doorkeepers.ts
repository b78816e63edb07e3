/**
 * Whom to ring at the door: somebody who is there on the day, and not who asks.
 */

/** Words of a number that is needed there. */
const ON_THE_DAY =
  /(?<!\p{L})(?:on the day|on (?:arrival|site)|when you(?:'re| are)? (?:get|arrive|here|there|park)|for (?:parking|access|keys|the keys|entry|the gate)|at the (?:door|venue|gate)|to be let in|lets? you in)(?!\p{L})/giu;
const NEAR = 80;
/** The text without the clauses that say whom to ring there. */
export function withoutDoorkeepers(body: string): string {
  let text = body;
  for (const { index, 0: words } of body.matchAll(ON_THE_DAY)) {
    const before = /[^.!?\n]*$/.exec(body.slice(Math.max(0, index - NEAR), index))?.[0].length ?? 0;
    const after = /^[^.!?\n]*/.exec(body.slice(index, index + words.length + NEAR))?.[0].length ?? 0;
    text = text.slice(0, index - before) + ' '.repeat(before + after) + text.slice(index + after);
  }
  return text;
}
