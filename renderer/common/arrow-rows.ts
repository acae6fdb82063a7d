import { type KeyboardEvent, useCallback, useRef } from 'react';

/**
 * Arrow keys for a list of links: from its filter down into the list, up and down in it, and back up
 * into the filter; Enter in the filter opens the first. Mark each row's link with `data-row`.
 */
export function useArrowRows<List extends HTMLElement>() {
  const list = useRef<List>(null);
  const filter = useRef<HTMLInputElement>(null);

  const rows = useCallback(
    (): HTMLElement[] => [...(list.current?.querySelectorAll<HTMLElement>('[data-row]') ?? [])],
    [],
  );

  const onFilterKey = useCallback(
    (event: KeyboardEvent) => {
      const first = rows()[0];
      if (first === undefined || event.nativeEvent.isComposing) return;
      if (event.key === 'ArrowDown') {
        event.preventDefault();
        first.focus();
      } else if (event.key === 'Enter') {
        event.preventDefault();
        first.click();
      }
    },
    [rows],
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
