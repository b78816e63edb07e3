/**
 * What a home country suggests for a first set-up: currency, paper and unit of distance. Only a suggestion; every field stays open.
 * Currencies are the legal tender of each country in the list of ISO 4217; paper and road signs are common practice.
 */

const currencyOf = new Map<string, string>(
  Object.entries({
    AR: 'ARS',
    AU: 'AUD',
    BR: 'BRL',
    CA: 'CAD',
    CH: 'CHF',
    CL: 'CLP',
    CN: 'CNY',
    CO: 'COP',
    CZ: 'CZK',
    DK: 'DKK',
    GB: 'GBP',
    HK: 'HKD',
    HU: 'HUF',
    ID: 'IDR',
    IL: 'ILS',
    IN: 'INR',
    IS: 'ISK',
    JP: 'JPY',
    KR: 'KRW',
    KW: 'KWD',
    LI: 'CHF',
    MX: 'MXN',
    MY: 'MYR',
    NO: 'NOK',
    NZ: 'NZD',
    PH: 'PHP',
    PL: 'PLN',
    RO: 'RON',
    SE: 'SEK',
    SG: 'SGD',
    TH: 'THB',
    TR: 'TRY',
    TW: 'TWD',
    UA: 'UAH',
    US: 'USD',
    VN: 'VND',
    ZA: 'ZAR',
  }),
);
const euro = new Set('AD AT BE BG CY DE EE ES FI FR GR HR IE IT LT LU LV MC ME MT NL PT SI SK SM VA'.split(' '));
const letterPaper = new Set('CA CL CO CR DO GT MX NI PA PH PR SV US VE'.split(' '));
const miles = new Set('GB US'.split(' '));

export type Suggestion = { currency: string; paper: 'A4' | 'Letter'; distance: 'mi' | 'km' };

/** What is usual in a country, by its ISO 3166 alpha-2 code; dollars, A4 and kilometres where the list does not know it. */
export function suggestFor(country: string): Suggestion {
  return {
    currency: euro.has(country) ? 'EUR' : (currencyOf.get(country) ?? 'USD'),
    paper: letterPaper.has(country) ? 'Letter' : 'A4',
    distance: miles.has(country) ? 'mi' : 'km',
  };
}
