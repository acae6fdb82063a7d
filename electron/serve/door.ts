import { createHash, randomBytes } from 'node:crypto';

/** Who may come in: one-time keys, and the sessions that they were exchanged for. */
export type Door = {
  /** A new key for one browser; it works once. */
  issueKey: () => string;
  /** A session for a key that has not been used, or undefined. The key is used up either way. */
  redeemKey: (key: string) => string | undefined;
  isSession: (token: string | undefined) => boolean;
};

/** Only hashes are kept and compared, so the time that a look-up takes tells nothing of a secret. */
export function hashOf(secret: string): string {
  return createHash('sha256').update(secret).digest('hex');
}

function newSecret(): string {
  return randomBytes(32).toString('base64url');
}

export function createDoor(): Door {
  const keys = new Set<string>();
  const sessions = new Set<string>();
  return {
    issueKey() {
      const key = newSecret();
      keys.add(hashOf(key));
      return key;
    },
    redeemKey(key) {
      if (!keys.delete(hashOf(key))) return undefined;
      const token = newSecret();
      sessions.add(hashOf(token));
      return token;
    },
    isSession(token) {
      return token !== undefined && sessions.has(hashOf(token));
    },
  };
}
