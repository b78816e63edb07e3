/**
 * Letters as a few ranges, to stand within square brackets of a pattern. The engine builds a pattern when it is first used, and the exact classes (`\p{L}`,
 * `\p{Lu}`: some 650 ranges each) in a pattern with many branches take tens of milliseconds each time; so the patterns that stand within many others use these.
 * Blocks are those of the Unicode Standard: Latin, Greek and Cyrillic with their capitals, the other scripts as they come. In Latin Extended capitals and small letters take turns:
 * there each counts as either.
 */

/** What a name may begin with. */
export const CAPITAL = String.raw`A-ZÀ-ÖØ-ÞĀ-ɏΆ-ΫЀ-ЯḀ-ỿ`;
/** Any letter. */
export const LETTER = String.raw`A-Za-zªºÀ-ÖØ-öø-ˁͰ-\u1fff\u2c00-\u2dff\u3040-\ud7ff\uf900-\ufdff`;
