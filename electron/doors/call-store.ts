/**
 * A call from the command line: handed to the program that holds the store, or answered here with the store opened for it.
 */
import { asTrouble } from '../api/clear.ts';
import { noLog } from '../api/log.ts';
import { beginPatiently } from '../starting/begin.ts';
import { dataFolder } from '../starting/data-folder.ts';
import { type Outcome, outcomeOf } from './answer-inside.ts';
import { askRunning } from './inner-socket.ts';

/**
 * Call a procedure of a data folder.
 * @param data folder that was asked for, or undefined for the conventional one
 */
export async function callStore(data: string | undefined, name: string, input: unknown): Promise<Outcome> {
  try {
    const folder = dataFolder(data);
    const handedOver = () => askRunning(folder, { ask: 'call', name, input });
    const begun = await beginPatiently(folder, (note) => process.stderr.write(`${note}\n`), handedOver);
    if ('answer' in begun) return begun.answer as Outcome;
    try {
      return await outcomeOf(begun.context, name, input, begun.log);
    } finally {
      begun.store.close();
    }
  } catch (error) {
    const { code, data: trouble } = asTrouble(error, noLog, name);
    return { done: false, trouble: { code, ...trouble } };
  }
}
