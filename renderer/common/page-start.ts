/** Brings the focus to the heading of the page that is shown, unless something of the page has it already. */
export function focusPage(): void {
  const main = document.querySelector('main');
  if (main?.contains(document.activeElement)) return;
  main?.querySelector<HTMLElement>('h1[tabindex="-1"]')?.focus({ preventScroll: true });
}
