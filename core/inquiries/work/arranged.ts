/**
 * Whether a message changes what was arranged before: the work was named there, and the words of the occasion do not name it.
 */
const ARRANGED =
  /(?<!\p{L})(?:(?:a|one|small|quick|another) (?:\p{L}+ ){0,3}change (?:for|to|of|in)|change (?:for|of)|as (?:booked|stated|agreed|arranged|before|planned)|no longer|double-booked|ahead of us|wrong (?:date|day|time)|rescheduled|re-?arranged|an error|can you still|still the \p{Sc}?\d+|(?:is|are|has been|have been|got|been|was) (?:moved|shifted|pushed|shoved|postponed|brought forward|put back)|(?:moves|shoved|pushed|shifted|slid|moved) (?:to|from|back))(?!\p{L})/iu;

export const changesArranged = (text: string): boolean => ARRANGED.test(text);
