import type { KeyboardEvent } from 'react';

const STOPS = 'input, textarea, select, button, a[href], [tabindex]';

const isStop = (element: HTMLElement): boolean =>
  element.tabIndex >= 0 &&
  !element.matches(':disabled, [type=hidden]') &&
  element.getClientRects().length > 0 &&
  // Of a group of radio buttons only the chosen one is a stop.
  !(element instanceof HTMLInputElement && element.type === 'radio' && !element.checked);

/** Moves the focus where Tab would, as long as that is inside `within`. */
export function focusNext(within: HTMLElement, from: Element | null): void {
  const stops = [...within.querySelectorAll<HTMLElement>(STOPS)].filter(isStop);
  const next = stops.find(
    (stop) =>
      from === null ||
      (from.compareDocumentPosition(stop) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0,
  );
  next?.focus();
}

/**
 * Enter goes to the next field, as a barcode reader and a hurried hand expect; Shift+Enter begins a new line
 * where there can be one.
 */
export function enterMovesOn(event: KeyboardEvent<HTMLElement>): void {
  const { target, currentTarget } = event;
  if (event.key !== 'Enter' || event.defaultPrevented) return;
  if (event.ctrlKey || event.metaKey || event.altKey || event.shiftKey) return;
  // An input method confirms its choice with Enter: that one is not ours.
  if (event.nativeEvent.isComposing || event.nativeEvent.keyCode === 229) return;
  const isField = target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement;
  if (!isField) return;
  event.preventDefault();
  focusNext(currentTarget, target);
}
