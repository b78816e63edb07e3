/**
 * What a sender wrote now, apart from the old mail below it.
 */
import type { Part } from './lines.ts';

/** The parts of a message without what is quoted and the heads that stand right above it. */
export function withoutOldMail(text: string, parts: readonly Part[]): Part[] {
  let old = false;
  const now = parts.toReversed().filter(({ kind, start, end }) => {
    if (kind === 'quoted') old = true;
    else if (kind !== 'header' && text.slice(start, end).trim() !== '') old = false;
    return !(old && (kind === 'quoted' || kind === 'header'));
  });
  return now.toReversed();
}
