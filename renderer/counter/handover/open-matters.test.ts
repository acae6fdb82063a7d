import { describe, expect, it } from 'vitest';
import { billedWork } from './billed-work.ts';
import { openMatters, owedNow } from './open-matters.ts';

const money = (minor: number) => `${minor} cents`;
const paid = { invoice: { number: 'I-000001' }, due: 0 };
const built = { holdPoints: [{ label: 'Oil filled', state: 'passed' as const }], features: [] };
const open = { holdPoints: [{ label: 'Oil filled', state: 'open' as const }], features: [] };

const unsettled = (matters: ReturnType<typeof openMatters>) =>
  matters.filter(({ settled }) => !settled).map(({ key }) => key);

describe('what stands between a machine and its owner', () => {
  it('is nothing when it is ready, built, billed and paid', () => {
    const matters = openMatters({ job: { state: 'ready' }, sheet: built, account: paid, money });
    expect(unsettled(matters)).toEqual([]);
  });

  it('is everything at the beginning', () => {
    const account = { invoice: null, due: 500 };
    const matters = openMatters({ job: { state: 'diagnosis' }, sheet: open, account, money });
    expect(unsettled(matters)).toEqual(['state', 'hold-points', 'invoice', 'due']);
    expect(matters[1]?.open).toEqual(['Oil filled']);
    expect(matters[3]?.says).toContain('500 cents');
  });

  it('is only the money when the job was stopped', () => {
    const account = { invoice: null, due: 500 };
    const matters = openMatters({ job: { state: 'stopped' }, sheet: open, account, money });
    expect(unsettled(matters)).toEqual(['due']);
  });

  it('names the final readings that are outside, a corrected one left out', () => {
    const reading = (verdict: 'outside' | 'within', superseded = false) => ({
      phase: 'final' as const,
      verdict,
      superseded,
    });
    const features = [
      { label: 'Cranking pressure', places: [{ label: '', readings: [reading('outside')] }] },
      {
        label: 'Coil air gap',
        places: [
          { label: 'leg 1', readings: [reading('outside', true), reading('within')] },
          { label: 'leg 2', readings: [reading('within'), reading('outside')] },
        ],
      },
    ];
    const sheet = { ...built, features };
    const matters = openMatters({ job: { state: 'ready' }, sheet, account: paid, money });
    expect(unsettled(matters)).toEqual(['readings']);
    expect(matters.find(({ key }) => key === 'readings')?.open).toEqual([
      'Cranking pressure',
      'Coil air gap, leg 2',
    ]);
  });

  it('is nothing to pay when the shop owes', () => {
    const account = { ...paid, due: -500 };
    const matters = openMatters({ job: { state: 'ready' }, sheet: built, account, money });
    expect(unsettled(matters)).toEqual([]);
    expect(matters.at(-1)?.says).toContain('the shop owes 500 cents');
  });
});

describe('what was billed as a beginning for what was done', () => {
  it('puts the work first and names the parts', () => {
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
});

it('a customer on account may take the machine and pay later', () => {
  const account = { invoice: { number: 'I-000001', dueOn: '2026-04-09' }, due: 500 };
  expect(owedNow(account)).toBe(0);
  expect(owedNow({ ...account, due: -500 })).toBe(-500);
  expect(owedNow({ ...account, invoice: { number: 'I-000001', dueOn: null } })).toBe(500);
});
