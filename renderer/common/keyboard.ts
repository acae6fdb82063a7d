/** The keys that work from anywhere, as the frame listens to them and the help sheet lists them. */
export interface Shortcut {
  /** Keys pressed together, as they are shown. */
  keys: readonly string[];
  does: string;
}

/** On Apple's keyboards the command key stands where others have Ctrl. */
export const MOD = /Mac|iP(hone|ad)/.test(globalThis.navigator?.userAgent ?? '') ? '⌘' : 'Ctrl';

export const SHORTCUTS: readonly Shortcut[] = [
  { keys: [MOD, 'K'], does: 'Search jobs, customers, machines, parts and engine models' },
  { keys: ['F2'], does: 'Take a machine in' },
  { keys: ['F4'], does: 'List of jobs' },
  { keys: ['F8'], does: 'Change who is at this station' },
  { keys: ['?'], does: 'Show this sheet' },
  { keys: ['Esc'], does: 'Close what is open; nothing typed is lost' },
  { keys: ['↓'], does: 'From a filter into its list; ↑ and ↓ move in the list, Enter opens' },
];

/** Rooms by a letter, after the letter G. */
export const GO_KEYS = [
  { key: 'd', to: '/', does: 'The day' },
  { key: 'j', to: '/jobs', does: 'Jobs' },
  { key: 'c', to: '/customers', does: 'Customers' },
  { key: 's', to: '/spec-book', does: 'Spec book' },
  { key: 'u', to: '/gauges', does: 'Gauges' },
  { key: 'p', to: '/parts', does: 'Parts' },
  { key: 'w', to: '/hours', does: 'Hours worked' },
  { key: 'o', to: '/office', does: 'Office' },
] as const;

/** A job's pages by a letter, after the letter G, while one of them is open. */
export const JOB_KEYS = [
  { key: 'v', to: '', does: 'Overview of the job' },
  { key: 'b', to: '/bench', does: 'Bench' },
  { key: 'a', to: '/parts', does: 'Parts of the job' },
  { key: 't', to: '/till', does: 'Till' },
  { key: 'h', to: '/handover', does: 'Handover' },
] as const;

/** Whether what is typed goes into a field, so that single letters are not shortcuts there. */
export function isTyping(target: EventTarget | null): boolean {
  if (!(target instanceof HTMLElement)) return false;
  return (
    target.isContentEditable ||
    target.matches(
      'textarea, select, input:not([type="checkbox"], [type="radio"], [type="button"])',
    )
  );
}
