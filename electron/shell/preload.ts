/**
 * All that the page is given: the port to the procedures, passed on as it came.
 */
import { ipcRenderer } from 'electron';

/** What is used of the page's own window; this room has no page types otherwise. */
declare const window: { readonly origin: string; postMessage(message: string, origin: string, ports: object[]): void };

ipcRenderer.on('kitbound:port', (event) => window.postMessage('kitbound:port', window.origin, [...event.ports]));
