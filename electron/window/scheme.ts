import type { CustomScheme } from 'electron';
import { pageFile } from '../serve/page-files.ts';
import { plainPage } from '../serve/plain-page.ts';
import { securityHeaders } from '../serve/security-headers.ts';

/** The page has an address of its own, so that it is no file among the person's files. */
export const scheme = 'tappet';
const pageHost = 'desk';
export const pageOrigin = `${scheme}://${pageHost}`;

/** To be registered before the app is ready. */
export const schemePrivileges: CustomScheme = {
  scheme,
  privileges: { standard: true, secure: true, supportFetchAPI: true },
};

/** Whether a URL is a page of ours, judged by a real parser and never by how the text begins. */
export function isOwnPage(address: string): boolean {
  const url = URL.parse(address);
  return url !== null && url.protocol === `${scheme}:` && url.host === pageHost;
}

/** Answers a request to our scheme with a built file. */
export function createPageResponder(
  pageFolder: string,
): (request: Pick<Request, 'method' | 'url'>) => Promise<Response> {
  return async ({ method, url }) => {
    if (!isOwnPage(url) || method !== 'GET') return notFound();
    const file = await pageFile(pageFolder, new URL(url).pathname);
    if (!file) return notFound();
    return new Response(file.bytes, {
      headers: { ...securityHeaders, 'content-type': file.type, 'cache-control': file.cache },
    });
  };
}

function notFound(): Response {
  return new Response(plainPage('Not here', 'There is no such page. Close it and go on.'), {
    status: 404,
    headers: { ...securityHeaders, 'content-type': 'text/html; charset=utf-8' },
  });
}
