import { useCallback } from 'react';
import { useSearchParams } from 'react-router';

/** What a page shows, kept in its address, so that the way back leads to the same figures. */
export function useAddress(): [
  of: (name: string) => string | null,
  keep: (change: Record<string, string | null>) => void,
] {
  const [address, setAddress] = useSearchParams();
  const keep = useCallback(
    (change: Record<string, string | null>) =>
      setAddress(
        (before) => {
          const after = new URLSearchParams(before);
          for (const [name, value] of Object.entries(change))
            if (value === null) after.delete(name);
            else after.set(name, value);
          return after;
        },
        { replace: true },
      ),
    [setAddress],
  );
  return [useCallback((name: string) => address.get(name), [address]), keep];
}

const DATE = /^\d{4}-\d{2}-\d{2}$/;

/** A date out of an address that anybody may have typed. */
export const dateOr = (text: string | null, otherwise: string): string =>
  text !== null && DATE.test(text) ? text : otherwise;
