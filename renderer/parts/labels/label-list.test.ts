import { expect, test } from 'vitest';
import { PartId } from '../../../shared/contract/ids.ts';
import { labelsOf, oneForEach, type Wanted } from './label-list.ts';

const wanted = (onHand: number, copies = 1): Wanted => ({
  partId: PartId.parse('01900000-0000-7000-8000-000000000001'),
  number: 'HV 740-50',
  description: 'Piston',
  bin: '',
  onHand,
  copies,
});

test('one label for each whole piece on hand, none for what is not there', () => {
  const list = oneForEach([wanted(3_000), wanted(2_500), wanted(0), wanted(-1_000)]);
  expect(list.map(({ copies }) => copies)).toEqual([3, 2]);
  expect(labelsOf(list)).toBe(5);
});

test('never more copies than the desk takes', () => {
  expect(labelsOf(oneForEach([wanted(9_000_000)]))).toBe(500);
});
