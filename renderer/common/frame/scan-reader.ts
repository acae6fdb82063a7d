/** One press of a key, as far as a barcode reader is told from a hand by it. */
export interface KeyPress {
  key: string;
  /** Milliseconds on any clock that only rises. */
  at: number;
}

/** A reader sends a character every few milliseconds; the fastest hand takes more than this. */
const FASTEST_HAND = 60;

export type ScanStep =
  /** A hand, as far as can be told. */
  | { kind: 'hand' }
  /** Could be the first character of a tag: remember what the field holds now. */
  | { kind: 'first' }
  /** The burst goes on. */
  | { kind: 'more' }
  /** A whole tag and its end key. */
  | { kind: 'scanned'; code: string };

/**
 * Tells a tag that was scanned (`J`, six digits, Enter or Tab, all in one burst) from typing. Feed it
 * every key press; keys that print nothing, such as Shift, may be left out or fed, they change nothing.
 */
export function scanReader(): (press: KeyPress) => ScanStep {
  let read = '';
  let last = Number.NEGATIVE_INFINITY;

  return ({ key, at }) => {
    if (key.length > 1 && key !== 'Enter' && key !== 'Tab') return { kind: 'hand' };
    const inBurst = at - last <= FASTEST_HAND;
    last = at;
    if (key === 'Enter' || key === 'Tab') {
      const code = inBurst && /^J\d{6}$/.test(read) ? read : null;
      read = '';
      return code === null ? { kind: 'hand' } : { kind: 'scanned', code };
    }
    // Caps lock on the station's keyboard turns a reader's letters, too.
    if (/^j$/i.test(key)) {
      read = 'J';
      return { kind: 'first' };
    }
    if (inBurst && read !== '' && read.length < 7 && /^\d$/.test(key)) {
      read += key;
      return { kind: 'more' };
    }
    read = '';
    return { kind: 'hand' };
  };
}
