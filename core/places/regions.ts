/**
 * Postal abbreviations that people write after a town, by country: ISO 3166-2:US and ISO 3166-2:CA (2020 edition).
 */
const names: Record<string, string> = {
  US: `AL Alabama, AK Alaska, AZ Arizona, AR Arkansas, CA California, CO Colorado, CT Connecticut, DE Delaware, DC District of Columbia, FL Florida,
    GA Georgia, HI Hawaii, ID Idaho, IL Illinois, IN Indiana, IA Iowa, KS Kansas, KY Kentucky, LA Louisiana, ME Maine, MD Maryland,
    MA Massachusetts, MI Michigan, MN Minnesota, MS Mississippi, MO Missouri, MT Montana, NE Nebraska, NV Nevada, NH New Hampshire,
    NJ New Jersey, NM New Mexico, NY New York, NC North Carolina, ND North Dakota, OH Ohio, OK Oklahoma, OR Oregon, PA Pennsylvania,
    RI Rhode Island, SC South Carolina, SD South Dakota, TN Tennessee, TX Texas, UT Utah, VT Vermont, VA Virginia, WA Washington,
    WV West Virginia, WI Wisconsin, WY Wyoming`,
  CA: `AB Alberta, BC British Columbia, MB Manitoba, NB New Brunswick, NL Newfoundland and Labrador, NT Northwest Territories, NS Nova Scotia,
    NU Nunavut, ON Ontario, PE Prince Edward Island, QC Quebec, SK Saskatchewan, YT Yukon`,
};

const byName = new Map<string, string>();
for (const [country, list] of Object.entries(names)) {
  for (const entry of list.split(',')) {
    const [, code, name] = /^\s*(\S+)\s+(.+)$/.exec(entry) ?? [];
    if (code && name) byName.set(`${country} ${name}`, code);
  }
}

/** The postal abbreviation of a region of the United States or Canada, such as MN for Minnesota; nothing elsewhere. */
export function regionCode(country: string, region: string): string | undefined {
  return byName.get(`${country} ${region}`);
}
