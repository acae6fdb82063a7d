import { expect, test } from 'vitest';
import { SAMPLE_TEXTS } from '../../../shared/work/office/sample-texts.ts';
import { beforeFirst } from './before-first.ts';

const NEW = { address: '', phone: '', labourRate: 0, taxes: [], claimTerms: '' };

test('a new shop lacks all of it, and each says where it is written down', () => {
  const matters = beforeFirst(NEW, 1);
  expect(matters.map(({ settled }) => settled)).toEqual([false, false, false, false, false]);
  for (const { to } of matters) expect(to).toMatch(/^\/office/);
});

test('a sample that nobody has edited is no terms of the shop’s own', () => {
  const matters = beforeFirst({ ...NEW, claimTerms: SAMPLE_TEXTS.claimTerms }, 1);
  const terms = matters.find(({ to }) => to.endsWith('#claimTerms'));
  expect(terms).toMatchObject({
    settled: false,
    says: expect.stringContaining('still the sample'),
  });
});

test('an address without a telephone is half of it', () => {
  const [reachable] = beforeFirst({ ...NEW, address: '48 Quarry Road' }, 1);
  expect(reachable?.settled).toBe(false);
});

test('a shop of one person that charges no tax has nothing left that is wanted', () => {
  const set = { ...NEW, address: 'Quarry Road', phone: '555', labourRate: 8_500, claimTerms: 'x' };
  expect(beforeFirst(set, 1).filter(({ settled, wanted }) => wanted && !settled)).toEqual([]);
});
