/**
 * Which addresses are ours and which may be opened outside. Pure, by parsed URL, never by the beginning of a text.
 */

export const SCHEME = 'kitbound';
const HOST = 'app';
/** The one page of the program. Places within it are in the fragment. */
export const PAGE = `${SCHEME}://${HOST}/index.html`;

/** What is known of a frame that asks something of the main process. */
export type Frame = { url?: string | undefined; parent: object | null } | null | undefined;

/** True for our page, whatever its fragment. */
export function isOurPage(url: string | undefined): boolean {
  const parsed = parse(url);
  if (!parsed) return false;
  parsed.hash = '';
  return parsed.href === PAGE;
}

/** True for our main frame on our exact page. A frame without a URL, or inside another, is not trusted. */
export function isTrustedFrame(frame: Frame): boolean {
  return frame?.parent === null && isOurPage(frame.url);
}

/** True for a paper shown inside our page: bytes that the page itself made. */
export function isOurBlob(url: string): boolean {
  return url.startsWith(`blob:${SCHEME}://${HOST}/`);
}

/** True for a link that the system's own browser or mail program may open. */
export function mayOpenOutside(url: string): boolean {
  const parsed = parse(url);
  if (!parsed || parsed.username !== '' || parsed.password !== '') return false;
  return (parsed.protocol === 'https:' && parsed.hostname !== '') || parsed.protocol === 'mailto:';
}

/** The path of a file of the page, or null for an address that is not ours. */
export function pagePath(url: string): string | null {
  const parsed = parse(url);
  return parsed?.protocol === `${SCHEME}:` && parsed.host === HOST ? parsed.pathname : null;
}

function parse(url: string | undefined): URL | null {
  return url !== undefined && URL.canParse(url) ? new URL(url) : null;
}
