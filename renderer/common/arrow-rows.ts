import { type KeyboardEvent, useCallback, useEffect, useRef } from 'react';

/**
 * Arrow keys for a list of links: from its filter down into the list, up and down in it, and back up
 * into the filter; Enter in the filter opens the first. Mark each row's link with `data-row`.
 * @param settled whether the list answers to what stands in the filter; Enter waits until it does, so
 *   that a fast hand never opens a row of the list before
 */
export function useArrowRows<List extends HTMLElement>(settled = true) {
  const list = useRef<List>(null);
  const filter = useRef<HTMLInputElement>(null);
  const opensWhenSettled = useRef(false);

  const rows = useCallback(
    (): HTMLElement[] => [...(list.current?.querySelectorAll<HTMLElement>('[data-row]') ?? [])],
    [],
  );

  useEffect(() => {
    if (!settled || !opensWhenSettled.current) return;
    opensWhenSettled.current = false;
    rows()[0]?.click();
  }, [settled, rows]);

  const onFilterKey = useCallback(
    (event: KeyboardEvent) => {
      if (event.nativeEvent.isComposing) return;
      opensWhenSettled.current = false;
      if (event.key === 'ArrowDown') {
        event.preventDefault();
        rows()[0]?.focus();
      } else if (event.key === 'Enter') {
        event.preventDefault();
        if (settled) rows()[0]?.click();
        else opensWhenSettled.current = true;
      }
    },
    [rows, settled],
  );

  const onListKey = useCallback(
    (event: KeyboardEvent) => {
      const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
      const all = rows();
      const at = all.findIndex((row) => row.matches(':focus'));
      if (step === undefined || at < 0) return;
      event.preventDefault();
      const next = all[at + step] ?? (step < 0 ? filter.current : undefined);
      next?.focus();
    },
    [rows],
  );

  return { list, filter, onFilterKey, onListKey };
}
