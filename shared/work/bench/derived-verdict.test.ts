import { describe, expect, test } from 'vitest';
import { tellingEnd, verdictOnSpread } from './derived-verdict.ts';

const spread = (value: number, largest: number | null, uncertainty = 0.004) => ({
  value,
  uncertainty,
  largest: largest === null ? null : { value: largest, uncertainty },
});

describe('the verdict on a clearance with a tightest and a loosest spot', () => {
  const worn = { low: 0.027, high: 0.1 };

  test('a pin worn oval is outside by its loosest spot, however good the tightest', () => {
    // Pin 29.955 and 29.890 in a rod of 30.005.
    expect(verdictOnSpread(spread(0.05, 0.115), worn)).toBe('outside');
    expect(tellingEnd(spread(0.05, 0.115), worn).value).toBe(0.115);
  });

  test('a tight spot is outside by the low limit, however good the loosest', () => {
    expect(verdictOnSpread(spread(0.015, 0.05), worn)).toBe('outside');
    expect(tellingEnd(spread(0.015, 0.05), worn).value).toBe(0.015);
  });

  test('each end is judged with its own uncertainty', () => {
    const loose = { value: 0.05, uncertainty: 0.001, largest: { value: 0.098, uncertainty: 0.01 } };
    expect(verdictOnSpread(loose, worn)).toBe('too-close');
    expect(verdictOnSpread({ ...loose, largest: { value: 0.098, uncertainty: 0.001 } }, worn)).toBe(
      'within',
    );
  });

  test('with one spot, one limit or none it is judged by what there is', () => {
    expect(verdictOnSpread(spread(0.115, null), worn)).toBe('outside');
    expect(verdictOnSpread(spread(0.05, 0.115), { low: 0.027, high: null })).toBe('within');
    expect(verdictOnSpread(spread(0.05, 0.115), { low: null, high: 0.1 })).toBe('outside');
    expect(verdictOnSpread(spread(0.05, 0.115), { low: null, high: null })).toBe('no-band');
  });
});
