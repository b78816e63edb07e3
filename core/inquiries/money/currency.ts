/**
 * Which currency a sign stands for: by itself, by the place of the job, by home. Where it could be two, both.
 */

/** Currencies by country, where people hire for events: ISO 4217 list one. */
const byCountry = new Map<string, string>();
const table =
  'US USD,CA CAD,GB GBP,IE EUR,AU AUD,NZ NZD,DE EUR,FR EUR,ES EUR,IT EUR,NL EUR,BE EUR,AT EUR,PT EUR,FI EUR,GR EUR,LU EUR,EE EUR,LV EUR,LT EUR,SK EUR,SI EUR,HR EUR,MT EUR,CY EUR,CH CHF,LI CHF,SE SEK,NO NOK,DK DKK,IS ISK,PL PLN,CZ CZK,HU HUF,RO RON,BG EUR,RS RSD,UA UAH,TR TRY,IL ILS,AE AED,SA SAR,QA QAR,EG EGP,MA MAD,ZA ZAR,TZ TZS,UG UGX,ZM ZMW,RW RWF,ET ETB,MU MUR,OM OMR,KW KWD,BH BHD,JO JOD,NG NGN,KE KES,GH GHS,IN INR,PK PKR,BD BDT,LK LKR,NP NPR,TH THB,VN VND,MY MYR,SG SGD,ID IDR,PH PHP,HK HKD,TW TWD,CN CNY,JP JPY,KR KRW,MX MXN,BR BRL,AR ARS,CL CLP,CO COP,PE PEN,UY UYU,CR CRC,PA USD,EC USD,SV USD,PR USD,GU USD,JM JMD,BS BSD,BB BBD,TT TTD,BM BMD,FJ FJD,NA NAD,BW BWP';
for (const entry of table.split(',')) {
  const [country = '', currency = ''] = entry.split(' ');
  byCountry.set(country, currency);
}

/** Signs and words that more than one currency has. */
const alike = (
  [
    [/^(?:\$|DOLLARS?|BUCKS|D[OÓ]LARES|DOLLARI)$/, 'USD CAD AUD NZD SGD HKD TWD MXN CLP ARS COP JMD BSD BBD TTD BMD FJD NAD UYU'],
    [/^BALLES$/, 'EUR CHF'],
    [/^QUID$/, 'GBP EUR'],
    [/^¥$/, 'JPY CNY'],
    [/^(?:KRONOR|KRONER|KR)$/, 'SEK NOK DKK ISK'],
    [/^(?:RS|RUPEES|₨)$/, 'INR PKR NPR LKR MUR'],
    [/^PESOS?$/, 'PHP MXN ARS CLP COP UYU'],
    [/^(?:DHS?|DIRHAMS?)$/, 'AED MAD'],
    [/^RIYALS?$/, 'SAR QAR OMR'],
    [/^SHILLINGS?$/, 'KES TZS UGX'],
    [/^P$/, 'BWP PHP'],
    [/^PAVOS$/, 'EUR CLP'],
    [/^DINARS?$/, 'RSD JOD KWD BHD'],
  ] as const
).map(([words, currencies]) => [words, new Set<string>(currencies.split(' '))] as const);
/** Signs and words of one currency each, behind its code. */
const written =
  'USD US$ U.S AMERICAN US USD$ | CAD CANADIAN CA$ CDN CDN$ C$ CAD$ | AUD AUSTRALIAN AUSSIE AU$ A$ AUD$ | NZD NZ$ NZD$ | HKD HK$ | SGD S$ SING SINGAPORE | BRL R$ | EUR € EURO EUROS EU | GBP £ POUND POUNDS POND STERLING STERLINE PFUND LIVRES LIBRAS | CHF FRANC FRANCS FRANCOS SWISS FRANKEN FRANCHI FR STUTZ FRÄNKLI | NAD N$ | FJD FJ$ | MYR RM RINGGIT | BWP PULA | JPY YEN | ZAR RAND R | THB BAHT ฿ | DKK DANISH | NOK NORWEGIAN | SEK SWEDISH | HUF FT FORINT | TWD NT$ | MXN MX$ | TTD TT$ | JMD J$ | BBD BDS$ | INR ₹ | NGN ₦ N NAIRA | PHP ₱ | GHS ₵ GH₵ GH¢ CEDI CEDIS | ILS ₪ NIS SHEKEL SHEKELS | TRY ₺ | KRW ₩ WON | PEN S/ S/. SOLES | MZN METICAIS | GEL LARI | TND DT | NPR NRS | VND ₫ | UAH ₴ | CRC ₡ | IDR RP RUPIAH | KES KSH KSHS | TZS TSH TSHS | UGX USH USHS | PLN ZŁ ZL | CZK KČ KORUN KORUNA KORUNY | RON LEI LEU | TRY LIRA | BRL REAIS | CNY RMB YUAN | BDT TAKA | ETB BIRR | ZMW KWACHA';
const sure = new Map(
  written.split(' | ').flatMap((entry) => {
    const [currency = '', ...marks] = entry.split(' ');
    return marks.map((mark) => [mark, currency] as const);
  }),
);

/** "dólares estadounidenses", "dollars canadiens", "US-Dollar": whose dollars they are, in other languages. */
const ofDollars = [
  [/ESTADOUN|STATUNIT|AM[EÉ]RI[CK]|^US-/, 'USD'],
  [/[CK]ANAD/, 'CAD'],
  [/AUSTRAL/, 'AUD'],
] as const;

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
    const known = sure.get(mark.replace(/ (?:DOLLARS?|BUCKS|KRONER?|KRONOR|CROWNS|FRANCS?|FRANKEN)$/, ''));
    if (known) return [known];
    if (/^Z[LŁ]OT/.test(mark)) return ['PLN'];
    const kind = /D[OÓ]LL?AR/.test(mark) ? ofDollars.find(([words]) => words.test(mark))?.[1] : undefined;
    if (kind) return [kind];
    if (/^[A-Z]{3}$/.test(mark) && !/^(?:YEN|DHS)$/.test(mark)) return [mark];
  }
  const shared = mark === undefined ? undefined : (alike.find(([words]) => words.test(mark))?.[1] ?? new Set());
  const fits = (currency: string): boolean => shared?.has(currency) ?? true;
  return [...new Set([home, ...places].filter((currency) => currency !== undefined && fits(currency)))] as string[];
}

/** "we pay in US dollars", "all figures are in CAD" */
const SAID_TO_BE =
  /\b(?:pay|pays|paid|paying|payable|invoice[sd]?|rates?|fees?|figures?|prices?|amounts?|budget|quote|that's|it's|all)\b[^.?!;\n]{0,30}?\b(?:in|are|is)\s(?:(us|u\.s\.|american|canadian|australian|aussie|nz|new zealand|singapore|hong kong) (?:dollars?|funds|currency|money)|(usd|cad|aud|nzd|sgd|hkd))\b/i;
const moneyOf: Record<string, string> = {
  us: 'USD',
  am: 'USD',
  ca: 'CAD',
  cd: 'CAD',
  au: 'AUD',
  nz: 'NZD',
  ne: 'NZD',
  ki: 'NZD',
  si: 'SGD',
  sg: 'SGD',
  ho: 'HKD',
  hk: 'HKD',
  sw: 'SEK',
  no: 'NOK',
  da: 'DKK',
};
/** The money of a country by its name, its people or its code. */
const named = (word: string): string | undefined => moneyOf[word.toLowerCase().replaceAll('.', '').slice(0, 2)];

/** Which dollars a message says that its amounts are in. */
export function dollarsSaid(text: string): string | undefined {
  const [, words, code] = SAID_TO_BE.exec(text.slice(0, FIRST_PAGE)) ?? [];
  return code?.toUpperCase() ?? (words === undefined ? undefined : named(words));
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
/** ", that is Swedish ones", "(US dollars, not naira)", "- canadian, sorry" */
const ONES = new RegExp(
  String.raw`^[\s,(–—-]{0,4}(?:(?:in|and|but|that's|that is|as in|i mean|of course|all|it's|meaning|they're|paid|sorry)[\s,]{1,2}){0,4}(?<kind>us|u\.s\.|usd|american|canadian|cad|cdn|australian|aussie|aud|nz|nzd|kiwi|new zealand|singapore|sgd|hong kong|hkd|swedish|norwegian|danish)(?:\s(?:ones|dollars?|funds|money|currency|bucks|kron[eo]r))?(?=\s?(?:[.,;:!?)–—-]|$|\n|not\b|please\b))`,
  'i',
);
const WHICH_MONEY = /^[^?\n]{0,80}\bwhich (?:kind of |sort of |type of )?(?:dollars?|currency|money|kron[eo]r)\b/i;

/**
 * The currencies that the words around an amount leave open, or the one that they name; undefined where they do neither.
 * @param before what stands before the amount
 * @param after what stands behind it
 */
export function currenciesSaid(before: string, after: string, mark: string | undefined): string[] | undefined {
  const { one, two } = (ONE_OF_TWO.exec(after) ?? ONE_OF_TWO_BEFORE.exec(before))?.groups ?? {};
  if (two === undefined) {
    const kind = ONES.exec(after)?.groups?.['kind'];
    const told = kind === undefined ? undefined : named(kind);
    return told ? [told] : WHICH_MONEY.test(after) ? [] : undefined;
  }
  const both = [one ?? mark, two].flatMap((word) => currenciesFor(word?.toUpperCase(), undefined));
  return new Set(both).size === 2 || one !== undefined || mark !== undefined ? [...new Set(both)] : undefined;
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
