/**
 * Files that are read for their checksums before they are handed over.
 */
import type { HandedFile } from '../../core/contract/handovers.ts';
import { countInWords } from '../../core/words/amounts.ts';
import { beginReading, readingAsShown, readingById, stopReading, underWay } from '../files/readings.ts';
import { typedPath } from '../files/typed-path.ts';
import type { Context } from './context.ts';
import { handable } from './hand-over-facts.ts';
import { os } from './os.ts';
import { roundFacts } from './round-facts.ts';
import { badInput, refused } from './trouble.ts';

export const begin = os.handovers.begin.handler(({ input, context }) => ({
  reading: readingAsShown(begun(context, input.deliverableId, input.paths, input.compares), context.now()),
}));

/** @throws REFUSED while other files are read, BAD_INPUT naming each path that cannot be meant */
function begun(context: Context, deliverableId: string, typed: readonly string[], compares: string | null = null) {
  const { store, now } = context;
  store.read((db) => handable(roundFacts(db, context, deliverableId)));
  if (underWay(store)) throw refused('Other files are being read already.', 'Wait until they are read, or stop that first.');
  const paths = typed.map(typedPath);
  const wrong = paths.flatMap((each, at) => ('trouble' in each ? [{ field: `paths[${at}]`, sentence: each.trouble }] : []));
  if (wrong.length > 0) throw badInput(wrong);
  return beginReading(store, { deliverableId, compares, paths: paths.flatMap((each) => ('path' in each ? [each.path] : [])), now });
}

export const progress = os.handovers.progress.handler(({ input, context }) => ({
  reading: readingAsShown(known(context, input.run), context.now()),
}));

export const stop = os.handovers.stop.handler(({ input, context }) => {
  const reading = known(context, input.run);
  stopReading(reading, context.now);
  return { reading: readingAsShown(reading, context.now()) };
});

function known({ store }: Context, run: string) {
  const reading = readingById(store, run);
  if (!reading)
    throw refused(
      'What was read is not remembered: it was handed over already, or the program was started anew since.',
      'Read the files again.',
    );
  return reading;
}

/** The whole list of files, read now or before. @throws REFUSED for a list that is not whole, BAD_INPUT for paths that lead to nothing */
export async function filesOf(
  context: Context,
  deliverableId: string,
  from: { run: string } | { paths: readonly string[] },
): Promise<{ run: string; files: readonly HandedFile[] }> {
  const reading = 'run' in from ? known(context, from.run) : begun(context, deliverableId, from.paths);
  if ('paths' in from) await reading.ended;
  if (reading.deliverableId !== deliverableId)
    throw refused('These files were read for another deliverable.', 'Read them again for this one.');
  const { id, state, refusal, list } = reading;
  if (state === 'done') return { run: id, files: list.files };
  if (state === 'refused')
    throw badInput([
      { field: refusal && refusal.at !== null ? `paths[${refusal.at}]` : 'paths', sentence: refusal?.message ?? 'could not be read' },
    ]);
  if (state === 'incomplete')
    throw refused(
      `${countInWords(list.troubles.length, 'file')} could not be read, so that the list is not whole.`,
      'Put that right, or leave those files out, and read them again.',
      list.troubles.map(({ name, sentence }) => `${name} ${sentence}.`),
    );
  throw refused(
    state === 'stopped' ? 'Reading was stopped, so that the list is not whole.' : 'The files are still being read.',
    state === 'stopped' ? 'Read them again.' : 'Wait until they are read.',
  );
}
