import { expect, it } from 'vitest';
import { billedWork } from './billed-work.ts';
import { owedNow } from './owed-now.ts';

it('what was billed, as a beginning for what was done, puts the work first and names the parts', () => {
  const lines = [
    { kind: 'part', description: 'Ring set' },
    { kind: 'labour', description: 'Engine rebuilt.' },
    { kind: 'fee', description: 'Diagnosis' },
    { kind: 'outside', description: 'Bored to next oversize' },
    { kind: 'part', description: 'Gasket set' },
  ] as const;
  expect(billedWork(lines)).toBe(
    'Engine rebuilt. Bored to next oversize.\nParts fitted: Ring set, Gasket set.',
  );
  expect(billedWork([])).toBe('');
});

it('a customer on account may take the machine and pay later', () => {
  const account = { invoice: { dueOn: '2026-04-09' }, due: 500 };
  expect(owedNow(account)).toBe(0);
  expect(owedNow({ ...account, due: -500 })).toBe(-500);
  expect(owedNow({ ...account, invoice: { dueOn: null } })).toBe(500);
});
