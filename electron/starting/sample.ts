/**
 * `--sample`: the sample year, loaded before the door opens.
 */
import type { Context } from '../api/context.ts';
import { loadSample } from '../sample/load.ts';

/** How often it is said how far it is. */
const QUARTERS = 4;

/** Load the sample year into the empty store, saying how far it is. @throws as `loadSample`, the store untouched then */
export async function beginWithSample(context: Context, say: (sentence: string) => void): Promise<void> {
  say('Loading the sample year: invented people and businesses, told for today.');
  let said = 0;
  await loadSample(context, ({ done, total }) => {
    const quarter = Math.floor((done * QUARTERS) / total);
    if (quarter === said) return;
    said = quarter;
    say(`${done} of ${total} steps.`);
  });
}
