import { REQUEST_KEY } from '../../../shared/request-key.ts';

/** Keys of calls by their input, which is the same object from the form down to the link. */
const keys = new WeakMap<object, string>();

/** Sends a call with this input under a key. */
export function giveKey(input: unknown, key: string): void {
  if (typeof input === 'object' && input !== null) keys.set(input, key);
}

/** For the links: the header of a call that was given a key. */
export function requestHeaders(
  _options: unknown,
  _path: readonly string[],
  input: unknown,
): Record<string, string> {
  const key = typeof input === 'object' && input !== null ? keys.get(input) : undefined;
  return key === undefined ? {} : { [REQUEST_KEY]: key };
}

/**
 * Keys for what one form sends: the same input gets the same key until an answer came, whatever it was; so
 * the desk can tell what was sent again from what is wanted again.
 */
export function unansweredKeys() {
  let open: { input: string; key: string } | null = null;
  return {
    keyFor(input: unknown): string {
      const text = JSON.stringify(input) ?? '';
      if (open === null || open.input !== text) open = { input: text, key: crypto.randomUUID() };
      return open.key;
    },
    answered(): void {
      open = null;
    },
  };
}
