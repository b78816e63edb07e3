/**
 * The store behind the window, or the sentences that say why there is none.
 */
import { app, dialog } from 'electron';
import { StoreError } from '../../db/trouble.ts';
import { asTrouble } from '../api/clear.ts';
import { askRunning } from '../doors/inner-socket.ts';
import { type Begun, beginPatiently } from '../starting/begin.ts';
import { beginWithSample } from '../starting/sample.ts';

/** Open the store, with the sample year where that was asked for; null where the program runs elsewhere on this folder, or cannot run: then it ends. */
export async function setUpStore(folder: string, sample = false): Promise<Begun | null> {
  try {
    const begun = await beginPatiently(
      folder,
      () => undefined,
      () => askRunning(folder, { ask: 'show' }),
    );
    if ('store' in begun) {
      if (sample) await withSample(begun);
      return begun;
    }
    tellOpenAlready(begun.answer);
  } catch (error) {
    if (!(error instanceof StoreError)) throw error;
    dialog.showErrorBox(error.what, `${error.kept}\n\n${error.todo}`);
  }
  app.exit(1);
  return null;
}

/** A refusal is told, and the window opens on what is there. */
async function withSample({ context, log }: Begun): Promise<void> {
  try {
    await beginWithSample(context, () => undefined);
  } catch (error) {
    const { what, kept, todo } = asTrouble(error, log, 'sample.load').data;
    dialog.showErrorBox(what, `${kept}\n\n${todo}`);
  }
}

function tellOpenAlready(where: unknown): void {
  dialog.showErrorBox('Kitbound is open already.', `It is at ${String(where)}. Nothing was changed.\n\nUse that one, or close it first.`);
}
