import type { TakeInField } from './draft.ts';

/** Fields in the order of the page: the first that is refused gets the focus. */
export const FIELD_ORDER: readonly TakeInField[] = [
  'name',
  'contact',
  'serial',
  'kind',
  'machine',
  'engine',
  'typeCode',
  'engineSerial',
  'complaint',
  'symptoms',
  'condition',
  'leftWith',
  'fuel',
  'lastService',
  'diagnosisFee',
  'spendingLimit',
  'deposit',
  'promisedFor',
  'reachBy',
  'signature',
  'address',
  'note',
  'dateCode',
  'engineHours',
];

/** Puts the cursor into a field; the element that holds it is marked with its name. */
export function focusField(within: HTMLElement | null, field: TakeInField): void {
  const holder = within?.querySelector<HTMLElement>(`[data-field="${field}"]`);
  const target = holder?.matches('input, textarea')
    ? holder
    : holder?.querySelector<HTMLElement>(
        'input:not([type=hidden]):not(:disabled), textarea, button, [tabindex="0"]',
      );
  target?.focus();
}

/** Puts the focus on the button that takes the machine in. */
export function focusTakeIn(within: HTMLElement | null): void {
  within?.querySelector<HTMLElement>('[data-take-in]')?.focus();
}
