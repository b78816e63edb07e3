/**
 * Which currency a sign stands for: by itself, by the place of the job, by home. Where it could be two, both.
 */

/** Currencies by country, where people hire for events: ISO 4217 list one. */
const byCountry = new Map<string, string>();
const table =
  'US USD,CA CAD,GB GBP,IE EUR,AU AUD,NZ NZD,DE EUR,FR EUR,ES EUR,IT EUR,NL EUR,BE EUR,AT EUR,PT EUR,FI EUR,GR EUR,LU EUR,EE EUR,LV EUR,LT EUR,SK EUR,SI EUR,HR EUR,MT EUR,CY EUR,CH CHF,LI CHF,SE SEK,NO NOK,DK DKK,IS ISK,PL PLN,CZ CZK,HU HUF,RO RON,BG EUR,RS RSD,UA UAH,TR TRY,IL ILS,AE AED,SA SAR,QA QAR,EG EGP,MA MAD,ZA ZAR,NG NGN,KE KES,GH GHS,IN INR,PK PKR,BD BDT,LK LKR,NP NPR,TH THB,VN VND,MY MYR,SG SGD,ID IDR,PH PHP,HK HKD,TW TWD,CN CNY,JP JPY,KR KRW,MX MXN,BR BRL,AR ARS,CL CLP,CO COP,PE PEN,UY UYU,CR CRC,PA USD,EC USD,SV USD,PR USD,GU USD,JM JMD,BS BSD,BB BBD,TT TTD,BM BMD,FJ FJD,NA NAD,BW BWP';
for (const entry of table.split(',')) {
  const [country = '', currency = ''] = entry.split(' ');
  byCountry.set(country, currency);
}

const dollars = new Set([
  'USD',
  'CAD',
  'AUD',
  'NZD',
  'SGD',
  'HKD',
  'TWD',
  'MXN',
  'CLP',
  'ARS',
  'COP',
  'JMD',
  'BSD',
  'BBD',
  'TTD',
  'BMD',
  'FJD',
  'NAD',
  'UYU',
]);
const krona = new Set(['SEK', 'NOK', 'DKK', 'ISK']);
const rupee = new Set(['INR', 'PKR', 'NPR', 'LKR']);
const sure = new Map<string, string>([
  ['US$', 'USD'],
  ['U.S', 'USD'],
  ['CANADIAN', 'CAD'],
  ['AMERICAN', 'USD'],
  ['US', 'USD'],
  ['AUSTRALIAN', 'AUD'],
  ['AUSSIE', 'AUD'],
  ['CA$', 'CAD'],
  ['CDN', 'CAD'],
  ['CDN$', 'CAD'],
  ['C$', 'CAD'],
  ['AU$', 'AUD'],
  ['A$', 'AUD'],
  ['NZ$', 'NZD'],
  ['HK$', 'HKD'],
  ['S$', 'SGD'],
  ['R$', 'BRL'],
  ['€', 'EUR'],
  ['EURO', 'EUR'],
  ['EUROS', 'EUR'],
  ['EU', 'EUR'],
  ['£', 'GBP'],
  ['POUND', 'GBP'],
  ['POUNDS', 'GBP'],
  ['STERLING', 'GBP'],

  ['FRANC', 'CHF'],
  ['FRANCS', 'CHF'],
  ['FRANKEN', 'CHF'],
  ['FRANCHI', 'CHF'],
  ['FR', 'CHF'],
  ['N$', 'NAD'],
  ['FJ$', 'FJD'],
  ['RM', 'MYR'],
  ['RINGGIT', 'MYR'],
  ['P', 'BWP'],
  ['PULA', 'BWP'],
  ['₹', 'INR'],
  ['YEN', 'JPY'],
  ['RAND', 'ZAR'],
  ['BAHT', 'THB'],
  ['STERLINE', 'GBP'],
  ['PFUND', 'GBP'],
  ['LIVRES', 'GBP'],
  ['LIBRAS', 'GBP'],
  ['SING', 'SGD'],
  ['SINGAPORE', 'SGD'],
  ['DANISH', 'DKK'],
  ['NORWEGIAN', 'NOK'],
  ['SWEDISH', 'SEK'],
  ['FT', 'HUF'],
  ['FORINT', 'HUF'],
  ['R', 'ZAR'],
]);

/** The currency of a country; nothing for one that the table does not hold. */
export function currencyOf(country: string | undefined): string | undefined {
  return country === undefined ? undefined : byCountry.get(country);
}

/**
 * The currencies that an amount can be in.
 * @param mark sign or word, folded; undefined for a bare number
 * @param home currency of the house
 * @param places currencies where the job can be; none where that is not known
 */
export function currenciesFor(mark: string | undefined, home: string | undefined, places: readonly string[] = []): string[] {
  if (mark !== undefined) {
    const known = sure.get(mark.replace(/ (?:DOLLARS?|BUCKS|KRONER?|KRONOR|CROWNS)$/, ''));
    if (known) return [known];
    if (/^[A-Z]{3}$/.test(mark) && !/^(?:YEN)$/.test(mark)) return [mark];
  }
  const fits = (currency: string): boolean => {
    if (mark === undefined) return true;
    if (mark === '$' || /^(?:DOLLARS?|BUCKS|D[OÓ]LARES|DOLLARI)$/.test(mark)) return dollars.has(currency);
    if (mark === 'BALLES') return currency === 'EUR' || currency === 'CHF';
    if (mark === 'QUID') return currency === 'GBP' || currency === 'EUR';
    if (mark === '¥') return currency === 'JPY' || currency === 'CNY';
    if (/^(?:KRONOR|KRONER|KR)$/.test(mark)) return krona.has(currency);
    if (/^(?:RS|RUPEES)$/.test(mark)) return rupee.has(currency);
    return false;
  };
  return [...new Set([home, ...places].filter((currency) => currency !== undefined && fits(currency)))] as string[];
}

/** "we pay in US dollars", "all figures are in CAD" */
const SAID_TO_BE =
  /\b(?:pay|pays|paid|paying|payable|invoice[sd]?|rates?|fees?|figures?|prices?|amounts?|budget|quote|that's|it's|all)\b[^.?!;\n]{0,30}?\b(?:in|are|is)\s(?:(us|u\.s\.|american|canadian|australian|aussie|nz|new zealand|singapore|hong kong) (?:dollars?|funds|currency|money)|(usd|cad|aud|nzd|sgd|hkd))\b/i;
const dollarsOf: Record<string, string> = {
  us: 'USD',
  am: 'USD',
  ca: 'CAD',
  au: 'AUD',
  nz: 'NZD',
  ne: 'NZD',
  si: 'SGD',
  ho: 'HKD',
};

/** Which dollars a message says that its amounts are in. */
export function dollarsSaid(text: string): string | undefined {
  const [, words, code] = SAID_TO_BE.exec(text.slice(0, FIRST_PAGE)) ?? [];
  return code?.toUpperCase() ?? (words === undefined ? undefined : dollarsOf[words.toLowerCase().replace('u.s', 'us').slice(0, 2)]);
}
const FIRST_PAGE = 6000;

const NAMED = String.raw`(?:us|usd|cad|aud|nzd|eur|gbp|chf|american|canadian|australian|aussie|francs?|franken|euros?|pounds?|quid|sterling)`;
/** "900 (francs or euros", "$600 US or Canadian" */
const ONE_OF_TWO = new RegExp(
  String.raw`^(?:[^.?!\d]{0,30}?[\s(](?<one>${NAMED})(?: dollars| bucks)?)? (?:or|oder|ou) (?<two>${NAMED})\b`,
  'i',
);
/** "pounds or euros, my accountant will decide (call it" */
const ONE_OF_TWO_BEFORE = new RegExp(String.raw`\b(?<one>${NAMED}) (?:or|oder|ou) (?<two>${NAMED})\b[^.?!\d]{0,60}$`, 'i');
/** ", that is Swedish ones" */
const ONES = /^[^.?!\n\d]{0,20}?\b(?<kind>swedish|norwegian|danish|american|canadian|australian) (?:ones|dollars|kron[eo]r|bucks)\b/i;
const WHICH_MONEY = /^[^?\n]{0,80}\bwhich (?:kind of |sort of |type of )?(?:dollars?|currency|money|kron[eo]r)\b/i;

/**
 * The currencies that the words around an amount leave open, or the one that they name; undefined where they do neither.
 * @param before what stands before the amount
 * @param after what stands behind it
 */
export function currenciesSaid(before: string, after: string, mark: string | undefined): string[] | undefined {
  const kind = ONES.exec(after)?.groups?.['kind']?.toUpperCase();
  if (kind !== undefined) return currenciesFor(kind, undefined);
  const { one, two } = (ONE_OF_TWO.exec(after) ?? ONE_OF_TWO_BEFORE.exec(before))?.groups ?? {};
  if (two === undefined) return WHICH_MONEY.test(after) ? [] : undefined;
  const named = [one ?? mark, two].flatMap((word) => currenciesFor(word?.toUpperCase(), undefined));
  return new Set(named).size === 2 || one !== undefined || mark !== undefined ? [...new Set(named)] : undefined;
}

/** Currencies that are paid in one country only; their mark tells where a message comes from. */
const oneCountry = new Map(
  [...byCountry]
    .filter(([, currency]) => [...byCountry.values()].filter((other) => other === currency).length === 1)
    .map(([country, currency]) => [currency, country]),
);

/** Countries that the marks of some amounts name beyond doubt: GB for £, CA for CA$. */
export function countriesPaying(amounts: readonly { mark?: string }[]): Set<string> {
  const countries = amounts.map(({ mark }) => (mark === undefined ? undefined : oneCountry.get(sure.get(mark) ?? mark)));
  return new Set(countries.filter((country) => country !== undefined));
}
