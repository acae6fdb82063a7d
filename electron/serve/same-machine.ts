import type { IncomingHttpHeaders } from 'node:http';

/** The names under which this server may be called; anything else is another site's name for it. */
function ownHosts(port: number): string[] {
  return [`127.0.0.1:${port}`, `localhost:${port}`];
}

/**
 * Whether the Host header names this server. A page of another site whose name was made to point
 * here (DNS rebinding) sends its own name.
 */
export function isOwnHost(headers: IncomingHttpHeaders, port: number): boolean {
  return headers.host !== undefined && ownHosts(port).includes(headers.host.toLowerCase());
}

/**
 * Whether a call that changes something came from our own page. Browsers send Origin with every
 * POST; a call without it did not come from a page of ours.
 */
export function isOwnOrigin(headers: IncomingHttpHeaders): boolean {
  const site = headers['sec-fetch-site'];
  if (site !== undefined && site !== 'same-origin') return false;
  return headers.origin !== undefined && headers.origin === `http://${headers.host}`;
}
