/**
 * Our own scheme in place of files: the built page, under the same headers as at the loopback door.
 */
import { protocol } from 'electron';
import { SAFETY_HEADERS, WINDOW_CONTENT_POLICY } from '../doors/headers.ts';
import { type PageFiles, pageFiles } from '../doors/page-files.ts';
import { pagePath, SCHEME } from './addresses.ts';

const HEADERS = { ...SAFETY_HEADERS, 'content-security-policy': WINDOW_CONTENT_POLICY };

/** Must run before the program is ready. */
export function setUpScheme(): void {
  protocol.registerSchemesAsPrivileged([{ scheme: SCHEME, privileges: { standard: true, secure: true, supportFetchAPI: true } }]);
}

/** Serve the page. @param folder absolute path of the built page */
export function setUpPages(folder: string): void {
  const pages = pageFiles(folder);
  protocol.handle(SCHEME, (request) => pageResponse(pages, request));
}

function pageResponse(pages: PageFiles, { method, url }: { method: string; url: string }): Response {
  if (method !== 'GET') return new Response(null, { status: 405, headers: HEADERS });
  const path = pagePath(url);
  const page = path === null ? null : pages.find(path);
  if (!page) return new Response(null, { status: 404, headers: HEADERS });
  return new Response(new Uint8Array(page.bytes), { headers: { ...HEADERS, 'content-type': page.type } });
}
