/**
 * Papers read back as text and properties.
 */
import { extractText, getDocumentProxy, getMeta } from 'unpdf';

/** The text of each page, any run of blanks one space. */
export async function pagesOfText(bytes: Uint8Array): Promise<string[]> {
  const { text } = await extractText(await getDocumentProxy(Uint8Array.from(bytes)), { mergePages: false });
  return text.map((page) => page.replace(/\s+/g, ' ').trim());
}

/** The document's properties: title, author, dates and whatever else a writer puts there. */
export async function propertiesOf(bytes: Uint8Array): Promise<Record<string, unknown>> {
  const { info } = await getMeta(await getDocumentProxy(Uint8Array.from(bytes)));
  return info;
}
