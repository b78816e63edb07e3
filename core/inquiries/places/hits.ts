/**
 * What is found of places in a text.
 */
import type { GazetteerPlace } from '../../places/gazetteer.ts';

export type PlaceHit = {
  start: number;
  end: number;
  name: string;
  /** Every place that it can be, the likeliest first. */
  candidates: GazetteerPlace[];
  /** True when the first candidate is the one beyond doubt. */
  sure: boolean;
  /** True when at least its country is. */
  countrySure: boolean;
  /** Known only by the region or country written after it. */
  country?: string;
  score: number;
  /** Nothing beside it says that it is a town: it counts only where no other name does. */
  faint?: true;
  /** The words before it say that the sender is at home there. */
  atHome?: true;
  /** It is one of two, of which nobody says yet which. */
  open?: true;
  /** It stands in one of several options that are told one by one. */
  option?: true;
};
export type AreaHit = { start: number; end: number; country: string };
