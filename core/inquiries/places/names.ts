/**
 * Names that the list of places does not have: regions and what is written for them; and towns whose names are everyday words.
 */
import { foldName } from '../../places/fold.ts';

const regionText: Record<string, string> = {
  US: 'AL Alabama,AK Alaska,AZ Arizona,AR Arkansas,CA California,CO Colorado,CT Connecticut,DE Delaware,DC District of Columbia,FL Florida,GA Georgia,HI Hawaii,ID Idaho,IL Illinois,IN Indiana,IA Iowa,KS Kansas,KY Kentucky,LA Louisiana,ME Maine,MD Maryland,MA Massachusetts,MI Michigan,MN Minnesota,MS Mississippi,MO Missouri,MT Montana,NE Nebraska,NV Nevada,NH New Hampshire,NJ New Jersey,NM New Mexico,NY New York,NC North Carolina,ND North Dakota,OH Ohio,OK Oklahoma,OR Oregon,PA Pennsylvania,RI Rhode Island,SC South Carolina,SD South Dakota,TN Tennessee,TX Texas,UT Utah,VT Vermont,VA Virginia,WA Washington,WV West Virginia,WI Wisconsin,WY Wyoming',
  CA: 'AB Alberta,BC British Columbia,MB Manitoba,NB New Brunswick,NL Newfoundland,NT Northwest Territories,NS Nova Scotia,NU Nunavut,ON Ontario,PE Prince Edward Island,QC Quebec,SK Saskatchewan,YT Yukon,PEI Prince Edward Island,PQ Quebec',
  AU: 'NSW New South Wales,VIC Victoria,QLD Queensland,TAS Tasmania,ACT Australian Capital Territory,- South Australia,- Western Australia,- Northern Territory',
  GB: '- England,- Scotland,- Wales,- Northern Ireland',
  IN: '- Goa,- Kerala,- Rajasthan,- Punjab,- Haryana,- Karnataka,- Tamil Nadu,- Maharashtra,- Gujarat,- Uttarakhand,- Himachal Pradesh,- Uttar Pradesh,- Madhya Pradesh,- West Bengal,- Telangana,- Andhra Pradesh,- Odisha,- Assam,- Sikkim,- Meghalaya',
  NZ: '- Otago,- Waikato,- Hawkes Bay,- Bay of Plenty,- Southland,- Manawatu,- Taranaki,- Marlborough,- South Island,- North Island',
  ZA: '- Western Cape,- Eastern Cape,- Northern Cape,- Gauteng,- KwaZulu-Natal,- Limpopo,- Mpumalanga,- Free State',
  IT: '- Tuscany,- Umbria,- Sicily,- Sardinia,- Puglia,- Piedmont,- Lombardy,- Liguria,- Amalfi Coast',
  FR: '- Provence,- Dordogne,- Normandy,- Brittany,- Burgundy,- Corsica,- Alsace,- French Riviera',
  ES: '- Mallorca,- Majorca,- Menorca,- Ibiza,- Tenerife,- Lanzarote,- Fuerteventura,- Gran Canaria,- Andalusia,- Catalonia,- Costa Brava,- Costa del Sol',
  PT: '- Algarve,- Madeira,- Azores,- Alentejo',
  GR: '- Crete,- Corfu,- Santorini,- Mykonos,- Rhodes,- Zakynthos,- Kefalonia,- Paxos',
  ID: '- Bali,- Lombok',
  DE: '- Bayern,- Hessen,- Sachsen,- Niedersachsen,- Thüringen',
};
/** What people write for a region whose listed name is another. */
const shortRegions: Record<string, [string, string]> = {
  minn: ['US', 'MN'],
  wis: ['US', 'WI'],
  wisc: ['US', 'WI'],
  mich: ['US', 'MI'],
  ill: ['US', 'IL'],
  ont: ['CA', 'ON'],
  que: ['CA', 'QC'],
  calif: ['US', 'CA'],
  mass: ['US', 'MA'],
  penn: ['US', 'PA'],
  colo: ['US', 'CO'],
  tenn: ['US', 'TN'],
  ariz: ['US', 'AZ'],
  'n dakota': ['US', 'ND'],
  's dakota': ['US', 'SD'],
  'newfoundland and labrador': ['CA', 'NL'],
  bavaria: ['DE', 'Bayern'],
  tassie: ['AU', 'Tasmania'],
  'cape breton': ['CA', 'NS'],
  'vancouver island': ['CA', 'BC'],
  kzn: ['ZA', 'KwaZulu-Natal'],
};

type Area = { country: string; region: string };
const byCode = new Map<string, Area>();
const byName = new Map<string, Area>();
for (const [country, list] of Object.entries(regionText)) {
  for (const entry of list.split(',')) {
    const [code = '', ...words] = entry.split(' ');
    const name = words.join(' ');
    const region = code === '-' ? name : code.length === 2 ? code : name;
    const area = {
      country,
      region: country === 'AU' || code === 'PEI' || code === 'PQ' ? name : region,
    };
    if (code !== '-' && !byCode.has(code)) byCode.set(code, area);
    if (!byName.has(foldName(name))) byName.set(foldName(name), area);
  }
}
for (const [name, [country, region]] of Object.entries(shortRegions)) byName.set(name, { country, region });

/** The region of a name ("Ontario") or a code in capitals ("ON"). */
export function areaNamed(folded: string, written: string): Area | undefined {
  // "in Naas, mass at 11"
  if (/^(?:mass|ill|penn)$/.test(written)) return undefined;
  const code = written.replace(/\./g, '');
  return (code === code.toUpperCase() && code.length <= 3 ? byCode.get(code) : undefined) ?? byName.get(folded);
}

/** Towns that bear an everyday word or a person's name: taken only where "in", a region or a label says that a town is meant. */
export const commonWords: ReadonlySet<string> = new Set(
  `of march reading mobile orange hope center centre price nice bath battle sale deal hull date best day sunday hall park grand video camera call show event
  conference university college union liberty independence success commerce industry enterprise energy star sun moon ocean lake river rock stone mill forest garden
  cave hill ridge valley spring springs summit crystal diamond ruby opal coral pearl gold silver iron copper cross castle temple church chapel bishop king queen prince
  duke earl baron major general many most more less much such some any all what where when why how who this that the these those here there home house office bar
  pub club green black white red blue brown gray grey young old new free early late long short big little small high low hot cold rich poor fair plain clear bright
  power speed post press page story note card bill cash bank market store shop trade media may june april august augusta austin jackson jordan madison taylor tyler
  warren logan carter chase grant lee marion martin mason morgan nelson oscar otto paris parker paul perry peter ray rex robert roy russell ryan sam scott seymour
  sharon shelby sidney stanley stephen stuart sydney victor victoria vincent wade wallace walter wayne wesley william willis wilson winston woods wright florence
  alice anna belle charlotte clara claire diana dora elizabeth ella emma eva eve flora gloria grace helen iris irene isabel jane jean joy julia kate katy laura lily
  linda louise lucy maria mary maxwell may mia milo mina molly nora olive olivia pearl rosa rose ruth savannah sofia stella sophia virginia vera viola zoe alma ada
  allen ben benson blair bruce bryan carl chester clark clinton clyde craig dale dallas dan daniel david dean don douglas drew earl edgar elliott eric eugene felix
  frank fred gary george gilbert glen gordon guy harold harris harry harvey henry howard hugo ian ira ivan jack james jason jay jerome jim joe john jonas joseph
  kent kevin kurt kyle leo leon leonard lewis louis lyle mark max miles monroe moses noah norman oliver owen pat ralph rene rice ross rufus simon thomas tim tom
  tony troy van vance vernon wall ward webb webster west york lincoln hamilton franklin marshall washington jefferson cleveland hudson
  lima goes done made does did has had was are were have will would can could should must need want get got let set put take make give say see know
  think look use find tell ask work seem feel try leave play turn move live hold bring happen write sit stand lose pay meet run include continue learn change lead
  understand watch follow stop create speak read allow add spend grow open walk win offer remember love consider appear buy wait serve die send expect build stay
  fall cut reach kill remain suggest raise pass sell require report decide pull
  good great last own same able next other sure true whole best better human local only half full real
  lakeside lakewood riverside hillside bayside oceanside woodside northside eastside westside midway downtown uptown midtown
  stage gala rally fiesta carnival ball dance band opera theatre studio gallery museum academy school institute board council committee
  team crew cast staff student doctor nurse coach pilot driver captain
  mercury mars venus eagle falcon hawk robin wolf fox bear lion tiger beaver buffalo crane heron swan salmon bass
  best regards regard thanks cheers kind warm sincerely yours dear hi hello hey attn re fw fwd ps
  of is it in on an as at be by do go he if me my no or so to up us we am im ok oh
  bergen moss os ski alta roman mass gap split pula bar bor nis cork derby worth sandwich rugby wells rye wigan barking barry ripley diss
  sunrise sunset dawn dusk noon midnight morning evening tonight tomorrow today weekend week month year hour minute
  paypal zoom teams live stream cloud data web net link mail email phone cell fax tel
  budget rate rates quote fee fees cost costs total contact details location venue role dates time times type name subject notes
  delivery edit edits photo photos audio sound light lights lighting grip gear kit van truck car bus train plane flight hotel
  essen surprise bell
  wedding party birthday anniversary graduation reunion festival concert workshop meeting seminar symposium congress championship tournament final finals match race
  ideal normal central eden joy bliss harmony concord unity friendship freedom providence
  marathon sparta troy athens rome carthage corinth
  ende beginn aufbau abbau schluss gage tarif honorar antwort treffen dreh fin fine début inicio cita llegada montaje arrivo opbouw einde gracias merci danke
  atlantic pacific mountain eastern stamps shepherd sandy denny ashley tracy lindsay whitney dexter
  aurora elgin como ontario california oregon delaware nevada
  rio indy palmy hopton weir tysons wetter
  english welsh irish gaelic scots french german spanish italian portuguese dutch danish swedish norwegian polish czech greek turkish russian ukrainian arabic hebrew
  hindi urdu tamil japanese korean chinese mandarin cantonese catalan basque breton latin maori afrikaans zulu
  portrait landscape vertical horizontal prores log raw mono stereo colour color slow progress tandem parallel rehearsal rehearsals room rooms suite level floor block
  building gate zone tent marquee barn stand booth foyer lobby reception pencil ink writing person people god jesus lent advent ramadan eid diwali easter christmas
  come came hills serra sierra tarifa vila villa margaret pilar carmen lourdes dolores mercedes susan barbara angela monica veronica
  una uno sola sala hora ora tanto nuestra nuestro onze unser unsere
  hanukkah passover michaelmas trinity hilary term semester phase part parts sections chapter act round leg
  `
    .split(/\s+/)
    .filter(Boolean),
);

/** Words of which only those abroad need be told that a town is meant: "Tours, talks and food" is no town for a London reader. */
export const wordsAbroad: ReadonlySet<string> = new Set(['tours', 'nice', 'brig', 'bath', 'hull', 'reading', 'split', 'many', 'euro']);
