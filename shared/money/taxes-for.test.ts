import { expect, test } from 'vitest';
import { exemptionOn, type KeptTax, taxesFor } from './taxes-for.ts';

const rule = (name: string, change: Partial<KeptTax> = {}): KeptTax => ({
  name,
  ratePpm: 50_000,
  kinds: ['part'],
  place: '',
  from: null,
  until: null,
  ...change,
});
const STATE = rule('State');
const COUNTY = rule('County', { place: 'Ferry County' });
const OLD = rule('Old', { until: '2026-06-30' });
const NEW = rule('New', { from: '2026-07-01' });
const TAXES = [STATE, COUNTY, OLD, NEW];

const party = { taxPlace: '', exemptCertificate: '', exemptUntil: null };
const exempt = { ...party, exemptCertificate: 'EX-1', exemptUntil: '2026-08-31' };

test('a tax holds in its place, from its first day to its last', () => {
  expect(taxesFor(TAXES, party, '2026-06-30').charged).toEqual([STATE, OLD]);
  expect(taxesFor(TAXES, party, '2026-07-01').charged).toEqual([STATE, NEW]);
  const there = { ...party, taxPlace: 'Ferry County' };
  expect(taxesFor(TAXES, there, '2026-07-01').charged).toEqual([STATE, COUNTY, NEW]);
});

test('a certificate exempts from what would be charged, up to its last day', () => {
  expect(taxesFor(TAXES, exempt, '2026-08-31')).toEqual({ charged: [], exempted: [STATE, NEW] });
  expect(taxesFor(TAXES, exempt, '2026-09-01')).toEqual({ charged: [STATE, NEW], exempted: [] });
  expect(exemptionOn(exempt, '2026-08-31')).toBe('EX-1');
  expect(exemptionOn(exempt, '2026-09-01')).toBe('');
  expect(exemptionOn({ ...exempt, exemptUntil: null }, '2036-09-01')).toBe('EX-1');
});
