/**
 * The headers that every answer of a door carries, errors included: the page may load and run what is ours and nothing else.
 */

/** What the page may load; `connect` is where it may ask. */
function contentPolicy(connect: string): string {
  return [
    "default-src 'none'",
    "script-src 'self'",
    "style-src 'self'",
    "font-src 'self'",
    "img-src 'self' data: blob:",
    `connect-src ${connect}`,
    'frame-src blob:',
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'none'",
    "frame-ancestors 'none'",
  ].join('; ');
}

const CONTENT_POLICY = contentPolicy("'self'");
/** The window asks through its message port alone. */
export const WINDOW_CONTENT_POLICY = contentPolicy("'none'");

export const SAFETY_HEADERS: Readonly<Record<string, string>> = {
  'content-security-policy': CONTENT_POLICY,
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
  'cache-control': 'no-store',
};

const TYPES: Readonly<Record<string, string>> = {
  html: 'text/html; charset=utf-8',
  js: 'text/javascript; charset=utf-8',
  css: 'text/css; charset=utf-8',
  json: 'application/json; charset=utf-8',
  svg: 'image/svg+xml; charset=utf-8',
  txt: 'text/plain; charset=utf-8',
  png: 'image/png',
  ico: 'image/x-icon',
  woff2: 'font/woff2',
  ttf: 'font/ttf',
};

/** The content type of a file of the page, by its name. */
export function contentType(name: string): string {
  return TYPES[name.slice(name.lastIndexOf('.') + 1)] ?? 'application/octet-stream';
}
