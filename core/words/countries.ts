/**
 * Countries by their English names.
 */

const COUNTRIES = /* @__PURE__ */ new Intl.DisplayNames('en', { type: 'region' });

/** "Canada" for `CA` (ISO 3166-1); a code without a name as it is. */
export function countryInWords(code: string): string {
  return COUNTRIES.of(code) ?? code;
}

const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ'.split('');

/** Codes by names in small letters; made once it is asked for. */
let codes: Map<string, string> | undefined;

/** The code of a country that is typed by its two letters or its English name; null for anything else. */
export function countryCode(typed: string): string | null {
  codes ??= new Map(
    LETTERS.flatMap((one) => LETTERS.map((other) => one + other)).flatMap((code) => {
      const name = countryInWords(code);
      return name === code ? [] : [[name.toLowerCase(), code] as const, [code.toLowerCase(), code] as const];
    }),
  );
  return codes.get(typed.trim().toLowerCase()) ?? null;
}
