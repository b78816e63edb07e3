import { client } from '../door.ts';

/** Save a kept paper through the browser's own way of saving; the store has checked it against its hash. */
export async function savePaper(id: string): Promise<void> {
  const { paper, type, base64 } = await client.papers.read({ id });
  saveFile(paper.name, new Blob([Uint8Array.fromBase64(base64)], { type }));
}

/** Save a table as a file of comma-separated values. */
export function saveTable(name: string, text: string): void {
  saveFile(name, new Blob([text], { type: 'text/csv;charset=utf-8' }));
}

function saveFile(name: string, content: Blob): void {
  const address = URL.createObjectURL(content);
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The browser has taken its copy long before a minute is over.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
