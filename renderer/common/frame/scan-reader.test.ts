import { expect, test } from 'vitest';
import { type ScanStep, scanReader } from './scan-reader.ts';

/** Presses the keys at a steady pace and gives every step. */
function pressed(keys: readonly string[], pace: number): ScanStep[] {
  const read = scanReader();
  return keys.map((key, index) => read({ key, at: 1_000 + index * pace }));
}

const TAG = [...'J000123', 'Enter'];

test('a burst of a tag and Enter is a scan', () => {
  const steps = pressed(TAG, 8);
  expect(steps.at(-1)).toEqual({ kind: 'scanned', code: 'J000123' });
  expect(steps.map((step) => step.kind)).toEqual([
    'first',
    ...Array.from({ length: 6 }, () => 'more'),
    'scanned',
  ]);
});

test('Tab ends a tag as well, and Shift between the keys changes nothing', () => {
  expect(pressed(['Shift', ...'J000123', 'Tab'], 8).at(-1)).toEqual({
    kind: 'scanned',
    code: 'J000123',
  });
});

test('caps lock turns the letter and not the code', () => {
  expect(pressed([...'j000123', 'Enter'], 8).at(-1)).toEqual({ kind: 'scanned', code: 'J000123' });
});

test('the same keys by hand are typing', () => {
  expect(pressed(TAG, 90).some((step) => step.kind === 'scanned')).toBe(false);
});

test('a pause anywhere in the burst makes it typing', () => {
  const read = scanReader();
  const steps = TAG.map((key, index) => read({ key, at: index * 8 + (index >= 4 ? 500 : 0) }));
  expect(steps.some((step) => step.kind === 'scanned')).toBe(false);
});

test('other bursts are not tags', () => {
  for (const keys of ['K000123', 'J00012', 'J0001234', 'J00O123', '000123'])
    expect(pressed([...keys, 'Enter'], 8).at(-1), keys).toEqual({ kind: 'hand' });
});

test('what was typed just before a scan does not spoil it, and two scans are two', () => {
  expect(pressed([...'ring gap J000123', 'Enter'], 8).at(-1)).toEqual({
    kind: 'scanned',
    code: 'J000123',
  });
  const twice = pressed([...TAG, ...'J000045', 'Enter'], 8).filter(
    (step) => step.kind === 'scanned',
  );
  expect(twice).toEqual([
    { kind: 'scanned', code: 'J000123' },
    { kind: 'scanned', code: 'J000045' },
  ]);
});
