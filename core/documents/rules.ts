/**
 * What is on file of countries, each with its source and the day that it was written or seen: data, never advice. Where nothing is on
 * file the program says so and whom to ask. Codes are ISO 3166-1 alpha-2.
 */

/** Where a rule was read. `on`: the date of the source, or when it was seen where it bears none. */
export type Source = { publisher: string; what: string; on: string; status: 'seen' | 'restated' | 'from memory' };

/** How long a passport must be valid beyond the day of leaving a country. */
type PassportRule = {
  of: ReadonlySet<string>;
  months: number;
  /** Only passports of these countries, or all but those. */
  for?: ReadonlySet<string>;
  except?: ReadonlySet<string>;
  /** The passport must not be older than so many years on the day of coming in. */
  notOlderThanYears?: number;
  source: Source;
};

const set = (codes: string): ReadonlySet<string> => new Set(codes.split(' '));

const EU = 'AT BE BG CY CZ DE DK EE ES FI FR GR HR HU IE IT LT LU LV MT NL PL PT RO SE SI SK';

/** Citizens of these may move and work in the others with an identity card (Directive 2004/38/EC; the agreements on the EEA and with Switzerland). */
const FREE_MOVEMENT = {
  of: set(`${EU} IS LI NO CH`),
  source: {
    publisher: 'European Parliament and Council',
    what: 'Directive 2004/38/EC, Articles 5 and 6; Agreement on the EEA; Agreement with Switzerland on free movement',
    on: '2004-04-29',
    status: 'from memory',
  } satisfies Source,
};

/** Goods cross no customs border inside one of these. */
const CUSTOMS_UNIONS: readonly ReadonlySet<string>[] = [set(`${EU} MC`), set('CH LI')];

const SCHENGEN = set('AT BE BG CZ DE DK EE ES FI FR GR HR HU IT LT LU LV MT NL PL PT RO SE SI SK IS LI NO CH');

const CONSULATE: Source = {
  publisher: 'US Consulate General Hong Kong and Macau',
  what: 'Less Than Six Months Validity Left on a Passport',
  on: '2022-11-25',
  status: 'seen',
};

/** Countries whose passports need only cover the stay in the United States. */
const SIX_MONTH_CLUB = set(
  'AL AD AO AG AR AM AW AU AT BS BB BE BZ BM BO BA BR BG MM CA CL CO CR CI HR CY CZ DK DM DO EG EE SV ET FM FJ FI FR GA GE DE GR GD GT GN GY HT HK HU IS IN ID IE IL IT JM JP XK LV LB LI LT LU MO MG MV MY MT MR MU MX MC MN ME MZ NP NL NZ NI NG MK NO PK PW PA PG PY PE PH PL PT QA RO RU SM SA RS SC SG SK SI ZA KR ES LK KN VC SR SE CH TW TH TT TN TR TV UA AE GB UY UZ VA VE ZW',
);

const PASSPORT_RULES: readonly PassportRule[] = [
  { of: set('CA'), for: set('US'), months: 0, source: CONSULATE },
  {
    of: SCHENGEN,
    except: FREE_MOVEMENT.of,
    months: 3,
    notOlderThanYears: 10,
    source: {
      publisher: 'European Parliament and Council',
      what: 'Regulation (EU) 2016/399, Article 6(1)(a)',
      on: '2016-03-09',
      status: 'restated',
    },
  },
  { of: FREE_MOVEMENT.of, for: FREE_MOVEMENT.of, months: 0, source: FREE_MOVEMENT.source },
  {
    of: set('US'),
    except: SIX_MONTH_CLUB,
    months: 6,
    source: {
      publisher: 'US Customs and Border Protection, Carrier Liaison Program',
      what: 'Exemption of the Six-Month Passport Validity Rule',
      on: '2024-01-31',
      status: 'seen',
    },
  },
  {
    of: set('US'),
    for: SIX_MONTH_CLUB,
    months: 0,
    source: {
      publisher: 'US Customs and Border Protection, Carrier Liaison Program',
      what: 'Exemption of the Six-Month Passport Validity Rule',
      on: '2024-01-31',
      status: 'seen',
    },
  },
  {
    of: set('GB'),
    months: 0,
    source: {
      publisher: 'UK Home Office',
      what: 'Entering the UK, passport valid for the whole stay',
      on: '2023-06-28',
      status: 'restated',
    },
  },
  { of: set('CN MN VN KH LA TH MY SG ID MM IN NP PK RU KW SA BH QA AE OM JO IL EG TR'), months: 6, source: CONSULATE },
  { of: set('HK MO'), months: 1, source: CONSULATE },
];

export type AskedOfPassport = Pick<PassportRule, 'months' | 'notOlderThanYears' | 'source'>;

/** What a country asks of a passport, or null where that is not on file. @param issuedIn the country of the passport, null where it is not known */
export function passportRule(country: string, issuedIn: string | null): AskedOfPassport | null {
  return (
    PASSPORT_RULES.find(
      (rule) =>
        rule.of.has(country) &&
        (!rule.for || (issuedIn !== null && rule.for.has(issuedIn))) &&
        !(issuedIn !== null && rule.except?.has(issuedIn)),
    ) ?? null
  );
}

/** Both countries belong to the one area of free movement. */
export function moveFreely(one: string, other: string): boolean {
  return FREE_MOVEMENT.of.has(one) && FREE_MOVEMENT.of.has(other);
}

/** Goods that go from one to the other cross a customs border. */
export function customsBorder(one: string, other: string): boolean {
  return one !== other && !CUSTOMS_UNIONS.some((union) => union.has(one) && union.has(other));
}

/** Authorities that are asked, where they are on file. */
const AUTHORITIES: Readonly<Record<string, { entry: string; work: string; customs: string }>> = {
  CA: {
    entry: 'the Canada Border Services Agency',
    work: 'Immigration, Refugees and Citizenship Canada',
    customs: 'the Canada Border Services Agency (form E29B with security, or a carnet)',
  },
  US: {
    entry: 'US Customs and Border Protection',
    work: 'US Citizenship and Immigration Services',
    customs: 'US Customs and Border Protection',
  },
  GB: { entry: 'UK Visas and Immigration', work: 'UK Visas and Immigration', customs: 'HM Revenue and Customs' },
};

/** Whom to ask about a country: those on file, else its embassy or customs. @param named the country in words */
export function whomToAsk(country: string, named: string, about: 'entry' | 'work' | 'customs'): string {
  const known = AUTHORITIES[country]?.[about];
  if (known) return known;
  if (about === 'customs') return `the customs authority of ${named}`;
  return about === 'work' ? `the embassy of ${named}` : `the embassy of ${named} and the carrier`;
}

/** Where an ATA carnet is taken, as the International Chamber of Commerce listed it: seen in part, so that a country not here is "not on file". */
const CARNET_COUNTRIES = set(
  `${EU} GB AL AD BY BA GI IS MK MD ME NO RU RS CH TR UA DZ CI IR IL LB MU MA SN ZA TN AE CA CL MX US AU CN JP KR MO NZ PK SG`,
);

/** A carnet is known to be taken in both. */
export function carnetBetween(one: string, other: string): boolean {
  return CARNET_COUNTRIES.has(one) && CARNET_COUNTRIES.has(other);
}

/** Business days that something takes, as published. */
export type Lead = { days: number; source: Source };

/** A United States passport: routine service takes four to six weeks, the mail apart; the longer of them counts. */
const US_PASSPORT: Lead = {
  days: 30,
  source: { publisher: 'US Department of State', what: 'Passport processing times, routine', on: '2026-11-26', status: 'restated' },
};
/** Two to three business days where an application does not come in electronically. */
const US_CARNET: Lead = {
  days: 3,
  source: {
    publisher: 'US Department of Commerce, export.gov',
    what: 'ATA Carnet: Your Merchandise Passport',
    on: '2026-11-26',
    status: 'seen',
  },
};
/** An insurer writes a certificate in two business days. */
const CERTIFICATE: Lead = {
  days: 2,
  source: { publisher: 'common practice', what: 'certificate of insurance', on: '2026-11-26', status: 'from memory' },
};

/** How long a new one takes where that is on file. @param country that issues it: of the passport, else of home */
export function publishedLead(kind: string, country: string): Lead | null {
  if (kind === 'passport' && country === 'US') return US_PASSPORT;
  if (kind === 'carnet' && country === 'US') return US_CARNET;
  return kind === 'liability insurance' || kind === 'equipment insurance' ? CERTIFICATE : null;
}

/** A source in a few words: "US Department of State, 1 December 2025". @param date in words */
export function sourceInWords({ publisher, status }: Source, date: string): string {
  if (publisher === 'common practice') return publisher;
  return `${publisher}, ${status === 'restated' ? 'restated ' : status === 'from memory' ? 'from memory, ' : ''}${date}`;
}

/** What is on file of passports, one line for each rule: which countries ask it of whom, and where that was read. */
export function passportRulesOnFile(): {
  of: string[];
  months: number;
  whose: 'all' | 'these' | 'all but these';
  these: string[];
  source: Source;
}[] {
  return PASSPORT_RULES.map((rule) => ({
    of: [...rule.of],
    months: rule.months,
    whose: rule.for ? 'these' : rule.except ? 'all but these' : 'all',
    these: [...(rule.for ?? rule.except ?? [])],
    source: rule.source,
  }));
}
