import type { LineKind } from '../../../shared/work/vocabulary.ts';

/** What is done with the hands, as an estimate's line begins with it. */
const WORK = [
  'adjust',
  'assemble',
  'balance',
  'bleed',
  'build',
  'check',
  'clean',
  'diagnose',
  'diagnosis',
  'dismantle',
  'drain',
  'fit',
  'flush',
  'inspect',
  'install',
  'labor',
  'labour',
  'lap',
  'measure',
  'overhaul',
  'rebuild',
  'refit',
  'remove',
  'repair',
  'replace',
  'reseat',
  'service',
  'sharpen',
  'strip',
  'swap',
  'test',
  'tighten',
  'tune',
  'weld',
];

const KIND_BY_WORD = new Map<string, LineKind>([
  ...WORK.map((word) => [word, 'labour'] as const),
  ['shipping', 'fee'],
  ['freight', 'fee'],
  ['disposal', 'fee'],
  ['environmental', 'fee'],
]);

/** The kind of line that a description begins like: `Strip, build and test` is labour. Null where it says none. */
export function kindInWords(description: string): LineKind | null {
  const [first = ''] = description
    .trim()
    .toLowerCase()
    .split(/[^a-z]+/);
  return KIND_BY_WORD.get(first) ?? null;
}
