import type { ClientLink } from '@orpc/client';
import { RPCLink as FetchLink } from '@orpc/client/fetch';
import { RPCLink as PortLink } from '@orpc/client/message-port';
import { type DesktopBridge, deskHandover } from '../../../shared/desktop-bridge.ts';
import { requestHeaders } from './request-keys.ts';

declare global {
  interface Window {
    /** There when the page runs in the program's own window, absent in a browser. */
    readonly tappetDesktop?: DesktopBridge;
  }
}

type Link = ClientLink<Record<never, never>>;

function portLink(): Link {
  const { port1, port2 } = new MessageChannel();
  window.postMessage(deskHandover, window.location.origin, [port2]);
  const link = new PortLink({ port: port1, headers: requestHeaders });
  port1.start();
  return link;
}

/** The session cookie, which scripts can't read, goes along by itself. */
function fetchLink(): Link {
  return new FetchLink({ url: `${window.location.origin}/rpc`, headers: requestHeaders });
}

/** The way to the desk: through the window's own port, or over loopback in a browser. */
export function openLink(): Link {
  return window.tappetDesktop ? portLink() : fetchLink();
}
