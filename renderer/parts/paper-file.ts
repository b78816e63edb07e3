/** A kept paper as a file of the browser: checked against its hash by the store, shown or saved from memory. */
import { client } from '../door.ts';

async function paperBlob(id: string): Promise<{ blob: Blob; name: string }> {
  const { paper, type, base64 } = await client.papers.read({ id });
  return { blob: new Blob([Uint8Array.fromBase64(base64)], { type }), name: paper.name };
}

/** Save a paper through the browser's own way of saving. */
export async function savePaper(id: string): Promise<void> {
  const { blob, name } = await paperBlob(id);
  const address = URL.createObjectURL(blob);
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/** An address under which a paper can be shown in a frame; give it back with `URL.revokeObjectURL`. */
export async function paperAddress(id: string): Promise<string> {
  return URL.createObjectURL((await paperBlob(id)).blob);
}
