import { expect, test } from 'vitest';
import { linesFromFindings } from './diagnosis-lines.ts';

const gaskets = { kind: 'part', description: 'Gasket set' } as const;

test('work comes at the shop’s rate with its hours to be set, the rest with its price to be set', () => {
  const lines = linesFromFindings(
    [
      {
        check: 'compression',
        work: [{ kind: 'labour', description: 'Take the head off' }, gaskets],
      },
      { check: 'oil', work: [] },
    ],
    8800,
  );
  expect(lines).toMatchObject([
    { kind: 'labour', quantity: 1000, unit: 'h', unitPrice: 8800, priceToSet: false },
    { kind: 'part', quantity: 1000, unit: 'pc', unitPrice: 0, priceToSet: true },
  ]);
  expect(lines[0]?.note).toBe('Compression. One hour is written in: set the hours.');
});

test('what two findings ask for stands once and names both', () => {
  expect(
    linesFromFindings(
      [
        { check: 'compression', work: [gaskets] },
        { check: 'leak-down', work: [gaskets] },
      ],
      8800,
    ),
  ).toMatchObject([
    { description: 'Gasket set', note: 'Compression, Leak-down. Price to be set.' },
  ]);
});
