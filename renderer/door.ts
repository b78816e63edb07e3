/**
 * How the screens reach the store: over the loopback door with the key of this launch, or over the port that the desktop window hands over.
 */
import { createORPCClient, DynamicLink, type ClientContext, type ClientLink } from '@orpc/client';
import { RPCLink as FetchLink } from '@orpc/client/fetch';
import { RPCLink as PortLink } from '@orpc/client/message-port';
import type { ContractRouterClient } from '@orpc/contract';
import type { Contract } from '../core/contract/index.ts';

const KEPT_KEY = 'kitbound.key';

/** The key travels in the address fragment once; it is kept for this tab and taken out of the address before anything is shown. */
function takeKey(): string {
  const given = /^#key=([A-Za-z0-9_-]+)$/.exec(location.hash)?.[1];
  if (given) {
    sessionStorage.setItem(KEPT_KEY, given);
    history.replaceState(null, '', `${location.pathname}#/`);
  }
  return given ?? sessionStorage.getItem(KEPT_KEY) ?? '';
}

function overLoopback(): ClientLink<ClientContext> {
  const key = takeKey();
  return new FetchLink({ url: `${location.origin}/rpc`, headers: { 'x-kitbound-key': key } });
}

function overPort(): Promise<ClientLink<ClientContext>> {
  return new Promise((resolve) => {
    window.addEventListener('message', (event) => {
      const port = event.ports[0];
      if (event.source !== window || !port) return;
      port.start();
      resolve(new PortLink({ port }));
    });
  });
}

const link = location.protocol.startsWith('http') ? overLoopback() : overPort();

export type Client = ContractRouterClient<Contract>;
export const client: Client = createORPCClient(new DynamicLink<ClientContext>(() => link));
