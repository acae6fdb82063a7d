import type { IncomingHttpHeaders, IncomingMessage } from 'node:http';

/** The names under which this server may be called; anything else is another site's name for it. */
function ownHosts(port: number): string[] {
  const names = ['127.0.0.1', 'localhost'];
  // Browsers leave the port out where it is the usual one of HTTP.
  return names.flatMap((name) => (port === 80 ? [name, `${name}:80`] : [`${name}:${port}`]));
}

/**
 * Whether the Host header, which must be there once (RFC 9112, section 3.2), names this server. A
 * page of another site whose name was made to point here (DNS rebinding) sends its own name.
 */
export function isOwnHost(
  { headersDistinct }: Pick<IncomingMessage, 'headersDistinct'>,
  port: number,
): boolean {
  const [host, ...others] = headersDistinct.host ?? [];
  return host !== undefined && others.length === 0 && ownHosts(port).includes(host.toLowerCase());
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

/**
 * What a request asks for. Only a path will do (RFC 9112, section 3.2.1): the other forms are for
 * proxies and name a host of their own.
 */
export function requestTarget(url: string | undefined): URL | undefined {
  return url?.startsWith('/') ? (URL.parse(`http://127.0.0.1${url}`) ?? undefined) : undefined;
}
