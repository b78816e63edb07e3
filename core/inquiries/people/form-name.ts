/**
 * A form with a field for each part of a name.
 */
import type { PersonFact } from './words.ts';

const IN_TWO = new RegExp(
  String.raw`^[^\S\n]*(?:first[ _]name|given[ _]name|forename|vorname|prénom|voornaam|nombre)\s?:[^\S\n]*(\p{Lu}[\p{L}' -]{1,24})\n[^\S\n]*(?:last[ _]name|family[ _]name|surname|nachname|familienname|nom(?: de famille)?|achternaam|apellidos?)\s?:[^\S\n]*(\p{Lu}[\p{L}' -]{1,30}?)[^\S\n]*$`,
  'imu',
);
export function inTwo(body: string): PersonFact | undefined {
  const found = IN_TWO.exec(body);
  return found ? { value: `${found[1]?.trim()} ${found[2]}`, start: found.index, end: found.index + found[0].length } : undefined;
}
