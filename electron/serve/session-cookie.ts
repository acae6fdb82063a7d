/** Browsers share cookies between the ports of one machine, so the name carries the port. */
function cookieName(port: number): string {
  return `tappet-${port}`;
}

/** The value of a Set-Cookie header: out of reach of scripts and of other sites. */
export function sessionCookie(port: number, token: string): string {
  return `${cookieName(port)}=${token}; HttpOnly; SameSite=Strict; Path=/`;
}

/** The session token in a Cookie header, if there is one. */
export function sessionToken(port: number, header: string | undefined): string | undefined {
  const prefix = `${cookieName(port)}=`;
  const pair = header
    ?.split(';')
    .map((part) => part.trim())
    .find((part) => part.startsWith(prefix));
  return pair?.slice(prefix.length);
}
