import type { BuildStep } from '../../../shared/work/bench/build-steps.ts';

export const NEW_STEP: BuildStep = {
  key: '',
  kind: 'confirm',
  label: '',
  caution: '',
  hold: true,
  needs: [],
  wires: [],
  unit: '',
  grade: false,
  note: '',
};

/** The steps with one of them moved up (-1) or down (1); as they are at either end. */
export function moved(steps: readonly BuildStep[], index: number, by: -1 | 1): BuildStep[] {
  const step = steps[index];
  const to = index + by;
  if (step === undefined || to < 0 || to >= steps.length) return [...steps];
  return steps.toSpliced(index, 1).toSpliced(to, 0, step);
}

/** A key for a new step, from its words; another number behind it when it is taken. */
export function keyFor(label: string, steps: readonly Pick<BuildStep, 'key'>[]): string {
  const plain = label
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, 40)
    .replace(/^-+|-+$/g, '');
  // Words of another alphabet leave nothing.
  const stem = plain === '' ? 'step' : plain;
  const taken = new Set(steps.map(({ key }) => key));
  for (let number = 1; ; number += 1) {
    const key = number === 1 ? stem : `${stem}-${number}`;
    if (!taken.has(key)) return key;
  }
}

/** `red = red/white`, a line for each wire, as the form shows it. */
export const wiresAsText = (wires: BuildStep['wires']): string =>
  wires.map(({ from, to }) => `${from} = ${to}`).join('\n');

/** The wires of such lines; null when a line is no pair. */
export function wiresFromText(text: string): BuildStep['wires'] | null {
  const lines = text.split('\n').filter((line) => line.trim() !== '');
  const wires = lines.flatMap((line) => {
    const [from = '', to = '', ...more] = line.split('=').map((part) => part.trim());
    return from === '' || to === '' || more.length > 0 ? [] : [{ from, to }];
  });
  const distinct = new Set(wires.map(({ from }) => from.toLowerCase())).size === wires.length;
  return wires.length === lines.length && distinct ? wires : null;
}
