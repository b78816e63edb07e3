import { client } from '../door.ts';

/** Save a kept paper through the browser's own way of saving; the store has checked it against its hash. */
export async function savePaper(id: string): Promise<void> {
  const { paper, type, base64 } = await client.papers.read({ id });
  const address = URL.createObjectURL(new Blob([Uint8Array.fromBase64(base64)], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = paper.name;
  link.click();
  // The browser has taken its copy long before a minute is over.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
