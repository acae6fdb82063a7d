import { useCallback, useEffect, useRef, useState } from 'react';

const PREFIX = 'tappet.draft.';

function kept<T>(key: string, initial: T): T {
  try {
    const text = window.localStorage.getItem(PREFIX + key);
    return text === null ? initial : { ...initial, ...JSON.parse(text) };
  } catch {
    // A draft that can't be read back is as good as none.
    return initial;
  }
}

function keep(key: string, value: unknown): void {
  try {
    window.localStorage.setItem(PREFIX + key, JSON.stringify(value));
  } catch {
    // A full or forbidden storage costs the draft, not the form.
  }
}

/**
 * What is typed into a form and not sent yet, kept on this machine so that a closed window or a scanned
 * tag loses nothing. `T` is an object of plain JSON values; a field that an older draft lacks takes its
 * initial value. `clear` forgets the draft and goes back to `initial`.
 */
export function useDraft<T extends object>(
  key: string,
  initial: T,
): [draft: T, setDraft: (next: T | ((draft: T) => T)) => void, clear: () => void] {
  const first = useRef(initial);
  const [state, setState] = useState(() => ({ key, draft: kept(key, initial), touched: false }));

  // Another job's page reuses the same form: its draft is another one.
  if (state.key !== key) setState({ key, draft: kept(key, initial), touched: false });

  useEffect(() => {
    if (state.touched) keep(state.key, state.draft);
  }, [state]);

  const setDraft = useCallback((next: T | ((draft: T) => T)) => {
    setState((before) => ({
      key: before.key,
      draft: typeof next === 'function' ? next(before.draft) : next,
      touched: true,
    }));
  }, []);

  const clear = useCallback(() => {
    try {
      window.localStorage.removeItem(PREFIX + key);
    } catch {
      // Nothing was kept, then.
    }
    setState({ key, draft: first.current, touched: false });
  }, [key]);

  return [state.draft, setDraft, clear];
}
