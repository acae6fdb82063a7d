import { describe, expect, it } from 'vitest';
import { type HandoverFacts, handoverMatters, stillOpen } from './handover-matters.ts';

const settled: HandoverFacts = {
  state: 'ready',
  holdPoints: [{ label: 'Oil filled', state: 'passed', reason: '' }],
  readingsMissing: [],
  readingsOutside: [],
  speedsMissing: [],
  billedNotIssued: [],
  issuedNotBilled: [],
  unpriced: [],
  invoice: 'I-000001',
  due: 0,
  onAccount: false,
  money: (minor) => `${minor} cents`,
};

const NOTHING_SAID = { explained: new Set<string>(), owing: false };
const open = (facts: Partial<HandoverFacts>, said = NOTHING_SAID) =>
  stillOpen(handoverMatters({ ...settled, ...facts }), said).map(({ key }) => key);

describe('what stands between a machine and its owner', () => {
  it('is nothing when it is ready, built, billed and paid', () => {
    expect(open({})).toEqual([]);
  });

  it('is everything at once at the beginning', () => {
    const facts: Partial<HandoverFacts> = {
      state: 'diagnosis',
      holdPoints: [{ label: 'Oil filled', state: 'open', reason: '' }],
      invoice: null,
      due: 500,
    };
    expect(open(facts)).toEqual(['state', 'hold-points', 'invoice', 'due']);
    const matters = handoverMatters({ ...settled, ...facts });
    expect(matters[1]?.items).toEqual(['Oil filled']);
    expect(matters[3]?.says).toContain('500 cents');
  });

  it('is the money and the parts when the job was stopped', () => {
    const stopped: Partial<HandoverFacts> = {
      state: 'stopped',
      holdPoints: [{ label: 'Oil filled', state: 'open', reason: '' }],
      invoice: null,
      due: 500,
      issuedNotBilled: ['1 pc GK-1 Gasket'],
    };
    expect(open(stopped)).toEqual(['parts-issued', 'due']);
  });

  it('is each of what may be explained, until it is', () => {
    const facts: Partial<HandoverFacts> = {
      readingsMissing: ['Bore, top along'],
      readingsOutside: ['Coil air gap, leg 2'],
      speedsMissing: ['Idle speed'],
      billedNotIssued: ['1 pc OS-1 Seal', '2 pc PL-1 Plug'],
      issuedNotBilled: ['1 pc GK-1 Gasket'],
      unpriced: ['Bore to +0.25'],
    };
    const all = [
      'readings-missing',
      'readings-outside',
      'speeds',
      'parts-billed',
      'parts-issued',
      'unpriced',
    ];
    expect(open(facts)).toEqual(all);
    expect(open(facts, { explained: new Set(['speeds', 'unpriced']), owing: false })).toEqual(
      all.filter((key) => key !== 'speeds' && key !== 'unpriced'),
    );
    const parts = handoverMatters({ ...settled, ...facts }).find(
      ({ key }) => key === 'parts-billed',
    );
    expect(parts?.says).toBe('2 parts are billed and not issued.');
  });

  it('a reason gets past nothing that has to be settled', () => {
    const said = { explained: new Set(['state', 'hold-points', 'invoice']), owing: true };
    expect(open({ state: 'on-the-bench', invoice: null, due: 500 }, said)).toEqual([
      'state',
      'invoice',
    ]);
  });

  it('counts what was overridden, with its reasons, and has no tick for it', () => {
    const matters = handoverMatters({
      ...settled,
      holdPoints: [
        { label: 'Oil filled', state: 'overridden', reason: 'Filled by the customer' },
        { label: 'Timing marks', state: 'passed', reason: '' },
      ],
    });
    expect(matters.find(({ key }) => key === 'overrides')).toEqual({
      key: 'overrides',
      standing: 'noted',
      says: 'One hold point was overridden in writing, and will be printed so.',
      items: ['Oil filled: Filled by the customer'],
    });
    expect(matters.find(({ key }) => key === 'hold-points')?.says).toBe('No hold point is open.');
  });

  it('lets a customer on account pay later, and owes nothing when the shop owes', () => {
    expect(open({ due: 500, onAccount: true })).toEqual([]);
    const matters = handoverMatters({ ...settled, due: -500 });
    expect(matters.at(-1)?.says).toContain('the shop owes 500 cents');
  });
});
