/**
 * Whether an edit is done wherever the editor sits: then no town of the message is where the job is.
 */
const FROM_AFAR =
  /(?<!\p{L})(?:remote(?:ly)?|from (?:your (?:own )?)?home|at your (?:own )?(?:place|desk)|from wherever|da remoto|in remoto|à distance|chez vous|en remoto|a distancia|desde casa|von zu ?hause|op afstand|vanuit huis|aus der ferne)(?!\p{L})/iu;
const TO_COME = /(?<!\p{L})(?:no|not|isn't|nicht|pas|non?) $/iu;

export function isFromAfar(text: string): boolean {
  const found = FROM_AFAR.exec(text);
  return found !== null && !TO_COME.test(text.slice(Math.max(0, found.index - 6), found.index));
}
