/**
 * What the page may not do: leave, open windows, embed other pages, or ask for permissions.
 */
import { app, session, shell, type WebContents } from 'electron';
import { isOurBlob, isOurPage, mayOpenOutside } from './addresses.ts';

/** The one permission that our page has: putting a reply that the person asked to copy on the clipboard. */
const GRANTED = 'clipboard-sanitized-write';

/** Refuse permissions and devices, except as above. */
export function setUpPermissions(): void {
  const ours = session.defaultSession;
  ours.setPermissionRequestHandler((contents, permission, answer) => answer(permission === GRANTED && isOurPage(contents.getURL())));
  ours.setPermissionCheckHandler((contents, permission) => permission === GRANTED && isOurPage(contents?.getURL()));
  ours.setDevicePermissionHandler(() => false);
}

/** Hold every page that is ever made inside our address. */
export function setUpNavigation(): void {
  app.on('web-contents-created', (_event, contents) => holdInside(contents));
}

function holdInside(contents: WebContents): void {
  contents.on('will-navigate', (event) => {
    if (!isOurPage(event.url)) event.preventDefault();
  });
  contents.on('will-frame-navigate', (event) => {
    const allowed = event.isMainFrame ? isOurPage(event.url) : isOurBlob(event.url);
    if (!allowed) event.preventDefault();
  });
  contents.on('will-redirect', (event) => event.preventDefault());
  contents.on('will-attach-webview', (event) => event.preventDefault());
  contents.setWindowOpenHandler(({ url }) => {
    if (mayOpenOutside(url)) void shell.openExternal(url);
    return { action: 'deny' };
  });
}
