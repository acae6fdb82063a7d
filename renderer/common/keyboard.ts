/** The keys that work from anywhere, as the frame listens to them and the help sheet lists them. */
export interface Shortcut {
  /** Keys as they are shown, one after the other or together. */
  keys: readonly string[];
  /** Pressed one after the other instead of together. */
  sequence?: boolean;
  does: string;
}

/** On Apple's keyboards the command key stands where others have Ctrl. */
const MOD = /Mac|iP(hone|ad)/.test(globalThis.navigator?.platform ?? '') ? '⌘' : 'Ctrl';

export const SHORTCUTS: readonly Shortcut[] = [
  { keys: [MOD, 'K'], does: 'Search jobs, customers, machines, parts and engine models' },
  { keys: ['F2'], does: 'Take a machine in' },
  { keys: ['F4'], does: 'The list of jobs' },
  { keys: ['F8'], does: 'Change who is at this station' },
  { keys: ['?'], does: 'This sheet' },
  { keys: ['Esc'], does: 'Close what is open; nothing typed is lost' },
];

/** Rooms by a letter, after the letter G. */
export const GO_KEYS = [
  { key: 'd', to: '/', does: 'The day' },
  { key: 'j', to: '/jobs', does: 'Jobs' },
  { key: 'c', to: '/customers', does: 'Customers' },
  { key: 's', to: '/spec-book', does: 'Spec book' },
  { key: 'u', to: '/gauges', does: 'Gauges' },
  { key: 'p', to: '/parts', does: 'Parts' },
  { key: 'o', to: '/office', does: 'Office' },
] as const;

/** Whether what is typed goes into a field, so that single letters are not shortcuts there. */
export function isTyping(target: EventTarget | null): boolean {
  if (!(target instanceof HTMLElement)) return false;
  return target.isContentEditable || target.matches('input, textarea, select');
}
