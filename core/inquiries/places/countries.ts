/**
 * Countries by their names and by their time zones.
 */
import { foldName } from '../../places/fold.ts';

const aliases: Record<string, string> = {
  usa: 'US',
  'u s a': 'US',
  'u s': 'US',
  us: 'US',
  america: 'US',
  'united states of america': 'US',
  'the states': 'US',
  nz: 'NZ',
  uk: 'GB',
  'u k': 'GB',
  england: 'GB',
  scotland: 'GB',
  wales: 'GB',
  britain: 'GB',
  'great britain': 'GB',
  'northern ireland': 'GB',
  holland: 'NL',
  'the netherlands': 'NL',
  'czech republic': 'CZ',
  uae: 'AE',
  'south korea': 'KR',
  korea: 'KR',
  turkey: 'TR',
  'hong kong': 'HK',
  eire: 'IE',
  'republic of ireland': 'IE',
  polska: 'PL',
};
/** Counties that are written after a town: they tell the country. */
const counties: Record<string, string> = {
  GB: 'bedfordshire berkshire buckinghamshire cambridgeshire cheshire cornwall cumbria derbyshire devon dorset essex gloucestershire hampshire herefordshire hertfordshire kent lancashire leicestershire lincolnshire norfolk northamptonshire northumberland nottinghamshire oxfordshire rutland shropshire somerset staffordshire suffolk surrey warwickshire wiltshire worcestershire yorkshire,north yorkshire,south yorkshire,west yorkshire,east sussex,west sussex,county durham,fife,aberdeenshire,perthshire,ayrshire,gwynedd,powys,pembrokeshire,carmarthenshire,ceredigion,county antrim,county down,county armagh',
  IE: 'county cork,county kerry,county galway,county mayo,county clare,county donegal,county sligo,county wexford,county waterford,county kilkenny,county wicklow,county meath,county louth,co cork,co kerry,co galway,co mayo,co clare,co donegal,co sligo,co wexford,co waterford,co kilkenny,co wicklow,co meath,co louth',
};
/** Names of countries that are more often something else in an English message. */
const otherThings = new Set([
  'georgia',
  'jordan',
  'chad',
  'jersey',
  'guinea',
  'mali',
  'niger',
  'togo',
  'cuba',
  'malta street',
  'oman',
  'island',
]);

const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';
const byName = new Map<string, string>(Object.entries(aliases));
for (const [country, names] of Object.entries(counties)) {
  for (const name of names.split(',').flatMap((part) => (part.startsWith('bedfordshire') ? part.split(' ') : [part])))
    byName.set(name, country);
}
const zoneCountry = new Map<string, string>();
const displayNames = new Intl.DisplayNames('en', { type: 'region', fallback: 'none' });
/** Codes that the locale library names but ISO 3166-1 does not hold as countries. */
const noCountries = new Set(['EU', 'EZ', 'UN', 'XA', 'XB', 'ZZ', 'QO', 'AC', 'CP', 'DG', 'EA', 'IC', 'TA', 'CQ', 'XK']);
for (const first of letters) {
  for (const second of letters) {
    const code = first + second;
    const locale = new Intl.Locale(`und-${code}`);
    // Codes of states that are gone are read as their successors (DD as DE).
    const name = noCountries.has(code) || locale.region !== code ? undefined : displayNames.of(code);
    if (!name || name === code) continue;
    const folded = foldName(name);
    if (!otherThings.has(folded) && !byName.has(folded)) byName.set(folded, code);
    for (const zone of new Intl.Locale(`und-${code}`).getTimeZones?.() ?? []) if (!zoneCountry.has(zone)) zoneCountry.set(zone, code);
  }
}

/** Countries that are written about in the languages that are read, and those languages. */
const WRITTEN_ABROAD =
  'DE AT CH LI FR IT ES PT NL BE LU GB IE DK NO SE FI IS PL CZ SK HU SI HR RO GR TR MA ZA US CA MX BR AR AU NZ IN JP MZ AO CV TN DZ SN TH VN KE EG PE UY';
const LANGUAGES = 'de fr es it nl pt da nb sv';
for (const language of LANGUAGES.split(' ')) {
  const names = new Intl.DisplayNames(language, { type: 'region', fallback: 'none' });
  for (const code of WRITTEN_ABROAD.split(' ')) {
    const folded = foldName(names.of(code) ?? '');
    if (!otherThings.has(folded) && !byName.has(folded)) byName.set(folded, code);
  }
}

/** The country of a name such as "Canada" or "UK", folded before; nothing for a name that is more often something else. */
export function countryNamed(folded: string): string | undefined {
  return byName.get(folded);
}

/** The country in which a zone's clocks stand: US for America/Chicago. */
export function countryOfZone(zone: string): string | undefined {
  return zoneCountry.get(zone) ?? zoneCountry.get(new Intl.DateTimeFormat('en', { timeZone: zone }).resolvedOptions().timeZone);
}

/** A country as a person reads it. */
export function countryInWords(code: string): string {
  return displayNames.of(code) ?? code;
}
