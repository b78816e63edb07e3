/**
 * A foreign name that leads to this computer, in a real browser: to the browser the foreign page and the door are one origin.
 */
import { chromium } from 'playwright';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { chromiumPath } from '../../chromium.ts';
import { openDoor, type OpenDoor } from '../open-door.ts';

let open: OpenDoor;
beforeAll(async () => {
  open = await openDoor();
});
afterAll(() => open.close());

test('is refused, page and procedures', async () => {
  const { port } = new URL(open.door.address);
  const browser = await chromium.launch({ executablePath: chromiumPath(), args: ['--host-resolver-rules=MAP evil.example 127.0.0.1'] });
  try {
    const page = await browser.newPage();
    const response = await page.goto(`http://evil.example:${port}/`);
    expect(response?.status()).toBe(421);
    expect(await page.content()).not.toContain('A page of the tests');
    const asked = await page.evaluate(
      async ({ key }) => {
        const answer = await fetch('/rpc/store/state', {
          method: 'POST',
          headers: { 'content-type': 'application/json', 'x-kitbound-key': key },
          body: '{"json":{}}',
        }).catch(() => null);
        return answer?.status ?? 'refused by the page policy';
      },
      { key: open.door.key },
    );
    expect([421, 'refused by the page policy']).toContain(asked);
  } finally {
    await browser.close();
  }
});

test('nothing that is not ours runs in our page', async () => {
  const browser = await chromium.launch({ executablePath: chromiumPath() });
  try {
    const page = await browser.newPage();
    const said: string[] = [];
    page.on('console', (message) => said.push(message.text()));
    await page.goto(open.door.address);
    const ran = await page.evaluate(() => {
      const script = document.createElement('script');
      script.textContent = 'window.ran = true';
      document.body.append(script);
      return 'ran' in window;
    });
    expect(ran).toBe(false);
    expect(said.join(' ')).toContain('Content Security Policy');
  } finally {
    await browser.close();
  }
});
