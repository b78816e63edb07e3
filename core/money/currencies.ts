/**
 * Minor units of ISO 4217 currencies, from the standard's table (SIX Interbank Clearing, list of 2024-06-25, with XCG and ANG both kept).
 * Never derived from the locale library, which shows how people write amounts and differs for sixteen circulating currencies.
 */
const byExponent: Record<number, string> = {
  0: 'BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX UYI VND VUV XAF XOF XPF',
  2: `AED AFN ALL AMD ANG AOA ARS AUD AWG AZN BAM BBD BDT BGN BMD BND BOB BOV BRL BSD BTN BWP BYN BZD CAD CDF CHE CHF CHW CNY COP COU CRC CUC
    CUP CVE CZK DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP GEL GHS GIP GMD GTQ GYD HKD HNL HTG HUF IDR ILS INR IRR JMD KES KGS KHR KPW KYD KZT LAK
    LBP LKR LRD LSL MAD MDL MGA MKD MMK MNT MOP MRU MUR MVR MWK MXN MXV MYR MZN NAD NGN NIO NOK NPR NZD PAB PEN PGK PHP PKR PLN QAR RON RSD RUB
    SAR SBD SCR SDG SEK SGD SHP SLE SOS SRD SSP STN SVC SYP SZL THB TJS TMT TOP TRY TTD TWD TZS UAH USD USN UYU UZS VED VES WST XCD XCG YER ZAR
    ZMW ZWG`,
  3: 'BHD IQD JOD KWD LYD OMR TND',
  4: 'CLF UYW',
};

const exponents = new Map<string, number>();
for (const [exponent, codes] of Object.entries(byExponent)) {
  for (const code of codes.split(/\s+/)) exponents.set(code, Number(exponent));
}

/** Every currency code that amounts may be kept in, sorted. */
export const currencyCodes: readonly string[] = [...exponents.keys()].sort();

/** True for a known ISO 4217 code in capitals. */
export function isCurrency(code: string): boolean {
  return exponents.has(code);
}

/**
 * Number of decimal places of a currency's minor unit: 2 for USD, 0 for JPY, 3 for KWD.
 * @throws RangeError for a code that the table does not know
 */
export function exponentOf(code: string): number {
  const exponent = exponents.get(code);
  if (exponent === undefined) throw new RangeError(`${code} is not a currency of ISO 4217`);
  return exponent;
}
