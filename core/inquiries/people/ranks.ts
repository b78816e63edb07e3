/**
 * Ranks, offices and forms of address before a name: "Sqn Ldr (retd)", "Dr (Mrs)", "Barr.", "mgr inż.".
 */
const RANKS = String.raw`(?:Mr|Mrs|Ms|Miss|Mx|Dr|Prof|Emerit(?:a|us)|DI|MMag|Dkfm|Professor|Rev|Revd|Reverend|Fr|Father|Sr|Sister|Br|Brother|Capt|Captain|Lt|Lieutenant|Sqn|Flt|Wg|Ldr|Cdr|Cmdr|Commander|Col|Colonel|Brig|Brigadier|Gen|General|Major|Maj|Sgt|Sergeant|Supt|Insp|Inspector|Cllr|Councillor|Sir|Dame|Hon|Herr|Frau|Ihr|Ihre|Mag|Ing|Bc|Dipl\.-\p{Lu}\p{L}{1,8}|Deine?|Eue?re?|Madame|Monsieur|Mlle|Señora?|Signora?|IA|IM|GM|FM|WGM|Pipe[- ]Major|Mme|Maître|Me|Sra|Dott|Coach|Officer|Constable|Const|Detective|Trooper|Dcn|Elder|Pastor|Imam|Canon|Rabbi|Deacon|Deaconess|Aunt|Aunty|Auntie|Uncle|Don|Mw|Mevr|Dhr|[Dd]rs|dr hab|dr|prof|ir|mgr|mag|ing|lic|Lic|Arq|Dra|Pr|Pfr|Pfarrer(?:in)?|Vikar(?:in)?|Diakon(?:in)?|Kantor(?:in)?|Pastorin|Domin[ée]e|Abbé|Msgr|Mons|Komm\.-Rat|Kommerzialrat|[mM]r(?=\. \p{Lu}\.)|Bgm|HBI|OBI|Hofrat|Doña|Dña|Puan|Encik|Cik|Datin|Ustaz|Ustad|Pandit|Swami|Sheikh|Chief|Judge|Bishop|Archbishop|Senator|Madam|Mdm|Shri|Smt|(?:Dato'?|Tan|Puan|Toh) (?:Sri|Seri|Puan)|Dato'?|Datuk|Whaea|Matua|Tita|Tito|Barr|Engr|Atty|Adv|Avv|Alhaji|Alhaja|Hajia|Mallam|Otunba|Comrade|Evangelist|Kumu|Kahu)`;
/** With "(Retd)" after them or a second one in brackets: "Sqn Ldr (retd) ", "Prof. (Dr.) ". */
export const RANK = String.raw`(?:(?:The (?=Rev|Hon|Very|Right|Rt|Most|Ven)|(?:Very|Right|Rt|Most|Ven)\.? (?=Rev|Hon))?${RANKS}\.?\s(?:\((?:[Rr]et(?:d|'d|ired)?|${RANKS})\.?\)\s)?)`;
/** A word cut short with a full stop that is no first name, no saint, no county and no part of an address or a house: "Evang. ", "dott.ssa ", "inż. ". */
const CUT_SHORT = String.raw`(?!(?:Wm|Geo|Thos|Chas|Jas|Jos|Jno|Robt|Edw|Ma|St|Sta|Ste|Mt|Co|Cia|Cía|Dept|Dpto|Abt|Ref|Tel|Tél|Fon|Tfno|Ext|No|Nr|Attn|Av|Ave|Str|Rd|Bros|Messrs|[Pp]\.?[Ss])\.)(?:\p{Lu}\p{L}{1,5}|\p{Ll}{2,5})\.(?:ssa|ra|in)?\s?`;
/** A rank is left out; before one word these belong to it: "Mrs Whitwam". */
export const FORM = new RegExp(
  String.raw`^(?:(?:CA\s|${RANK}|${CUT_SHORT})+(?=\p{Lu}[\p{L}.'-]*\s+\p{L})|(?!(?:Mr|Mrs|Don|Aunt|Aunty|Auntie|Uncle|Mdm|Madam|Madame|Monsieur|Mlle|Señora?|Signora?|Pipe-Major|Herr|Frau|Mme|Sra|Sir|Dame|Col|Gen)\b)${RANK}+(?=\p{Lu}))`,
  'u',
);
/** "(Mrs) ", "(Dr. " */
export const IN_BRACKETS = new RegExp(String.raw`^\s*\((?:${RANKS}\.?(?:\)|\s)\s?)?(?=\p{Lu})`, 'u');

/** "Lt Col", "Rev Dr" */
const ONLY_RANKS = new RegExp(String.raw`^(?:${RANKS}\.?(?:\s|$)){2,}$`, 'iu');
const OFFICE =
  /^(?:Esq|.*(?:secretary|secretariat|arbiter|officer|coordinator|co-ordinator|administrator|planner|supervisor|executive|treasurer|prokurist|manager|director|registrar|principal|headmaster|headmistress|headteacher|chairman|chairwoman|chairperson|convenor|convener|organi[sz]er|department|desk|section|division|team|committee|office|reception|dispatch|bookings|engagement|geschäftsstelle|büro)|events|operations|people|crewing|press|sales|finance|production|accounts)$/iu;
/** "Chief Arbiter", "Show Secretary", "Lt Col": what somebody is. */
export const isOfficeOrRank = (words: string): boolean => OFFICE.test(words) || ONLY_RANKS.test(words);
