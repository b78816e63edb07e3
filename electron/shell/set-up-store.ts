/**
 * The store behind the window, or the sentences that say why there is none.
 */
import { app, dialog } from 'electron';
import { StoreError } from '../../db/trouble.ts';
import { askRunning } from '../doors/inner-socket.ts';
import { type Begun, beginPatiently } from '../starting/begin.ts';

/** Open the store; null where the program runs elsewhere on this folder, or cannot run: then it ends. */
export async function setUpStore(folder: string): Promise<Begun | null> {
  try {
    const begun = await beginPatiently(
      folder,
      () => undefined,
      () => askRunning(folder, { ask: 'show' }),
    );
    if ('store' in begun) return begun;
    tellOpenAlready(begun.answer);
  } catch (error) {
    if (!(error instanceof StoreError)) throw error;
    dialog.showErrorBox(error.what, `${error.kept}\n\n${error.todo}`);
  }
  app.exit(1);
  return null;
}

function tellOpenAlready(where: unknown): void {
  dialog.showErrorBox('Kitbound is open already.', `It is at ${String(where)}. Nothing was changed.\n\nUse that one, or close it first.`);
}
