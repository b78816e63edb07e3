/**
 * The network as it ships: `% ` says what it was learned from; then a table or a word a line with its numbers, parted by a tab. Numbers are whole,
 * in 4096ths, two bytes each with the low one first, in the alphabet of RFC 4648, section 4 (2006).
 */
import { TABLES, WIDTH, type Network, type TableName, type Tables } from './network.ts';

const SCALE = 4096;
const [MOST, BYTES] = [32767, 2];
const CODED = /^(?:[A-Za-z0-9+/]{4})*(?:[A-Za-z0-9+/]{2}==|[A-Za-z0-9+/]{3}=)?$/;
/** The row of every word that is in no other. */
const UNKNOWN = '<unknown>';

/** Undefined where they are not so many, or not written so. */
function numbersIn(text: string, count: number): Float32Array | undefined {
  if (!CODED.test(text)) return undefined;
  const bytes = Uint8Array.fromBase64(text);
  if (bytes.length !== count * BYTES) return undefined;
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  return Float32Array.from({ length: count }, (_, at) => view.getInt16(at * BYTES, true) / SCALE);
}

function written(numbers: Float32Array): string {
  const bytes = new Uint8Array(numbers.length * BYTES);
  const view = new DataView(bytes.buffer);
  numbers.forEach((one, at) => view.setInt16(at * BYTES, Math.max(-MOST, Math.min(MOST, Math.round(one * SCALE))), true));
  return bytes.toBase64();
}

/**
 * Read the network. It ships with the program, so a broken line is a mistake of ours.
 * @throws RangeError naming the line that is not whole, or the table that is missing
 */
export function readNetwork(text: string): Network {
  const tables = new Map<string, Float32Array>();
  const words = new Map<string, number>();
  const rows: Float32Array[] = [];
  for (const [index, line] of text.split('\n').entries()) {
    if (line === '' || line.startsWith('% ')) continue;
    const [name = '', coded = ''] = line.split('\t');
    const table = line.startsWith('# ') ? name.slice(2) : undefined;
    const [high, wide] = table === undefined ? [1, WIDTH] : Object.hasOwn(TABLES, table) ? TABLES[table as TableName] : [0, 0];
    const numbers = numbersIn(coded, high * wide);
    // The row of words that are in no other stands first.
    if (!numbers || high === 0 || (table === undefined && (name === UNKNOWN) !== (rows.length === 0)))
      throw new RangeError(`line ${index + 1} of the learned network is not whole`);
    if (table !== undefined) tables.set(table, numbers);
    else {
      if (rows.length > 0) words.set(name, rows.length);
      rows.push(numbers);
    }
  }
  const missing = Object.keys(TABLES).find((name) => !tables.has(name));
  if (missing !== undefined || rows.length === 0) throw new RangeError(`the learned network has no ${missing ?? 'words'}`);
  const all = new Float32Array(rows.length * WIDTH);
  rows.forEach((row, at) => all.set(row, at * WIDTH));
  return { tables: Object.fromEntries(tables) as Tables, words, rows: all };
}

/** The lines of a network, as `readNetwork` reads them. */
export function networkLines({ tables, words, rows }: Network): string[] {
  const rowOf = (at: number): string => written(rows.subarray(at * WIDTH, (at + 1) * WIDTH));
  return [
    ...Object.entries(tables).map(([name, numbers]) => `# ${name}\t${written(numbers)}`),
    `${UNKNOWN}\t${rowOf(0)}`,
    ...[...words].map(([word, at]) => `${word}\t${rowOf(at)}`),
  ];
}
