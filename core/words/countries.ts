/**
 * Countries by their English names.
 */

const COUNTRIES = /* @__PURE__ */ new Intl.DisplayNames('en', { type: 'region' });

/** "Canada" for `CA` (ISO 3166-1); a code without a name as it is. */
export function countryInWords(code: string): string {
  return COUNTRIES.of(code) ?? code;
}
