import { expect, test, vi } from 'vitest';

const heard = vi.hoisted(() => ({ channels: [] as string[], pass: (_event: { ports: object[] }): void => undefined }));
vi.mock('electron', () => ({
  ipcRenderer: {
    on(channel: string, listener: (event: { ports: object[] }) => void) {
      heard.channels.push(channel);
      heard.pass = listener;
    },
  },
}));

test('the preload passes the port on to our own origin, and does nothing else', async () => {
  const postMessage = vi.fn();
  vi.stubGlobal('window', { origin: 'kitbound://app', postMessage });
  await import('../../electron/shell/preload.ts');
  expect(heard.channels).toEqual(['kitbound:port']);
  const port = {};
  heard.pass({ ports: [port] });
  expect(postMessage.mock.calls).toEqual([['kitbound:port', 'kitbound://app', [port]]]);
});
