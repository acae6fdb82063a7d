/**
 * What a field holds, so that characters that a barcode reader typed into it can be taken out again.
 * Null where there is no text to lose.
 */
export function snapshotOf(target: EventTarget | null): (() => void) | null {
  if (target instanceof HTMLInputElement) return restorer(target, HTMLInputElement.prototype);
  if (target instanceof HTMLTextAreaElement) return restorer(target, HTMLTextAreaElement.prototype);
  return null;
}

function restorer(
  field: HTMLInputElement | HTMLTextAreaElement,
  prototype: HTMLInputElement | HTMLTextAreaElement,
): () => void {
  const { value, selectionStart, selectionEnd } = field;
  return () => {
    if (field.value === value) return;
    // React hides the native setter behind its own, which would swallow the change that follows.
    Object.getOwnPropertyDescriptor(prototype, 'value')?.set?.call(field, value);
    field.dispatchEvent(new Event('input', { bubbles: true }));
    if (selectionStart !== null) field.setSelectionRange(selectionStart, selectionEnd);
  };
}
