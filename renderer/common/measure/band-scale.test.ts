import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bandScale } from './band-scale.ts';

describe('the line that a band is drawn on', () => {
  test('shows the whole band with room on both sides', () => {
    const { from, to, beyond } = bandScale({ low: 0.2, high: 0.4 }, null, 0);
    expect(from).toBeCloseTo(0.13, 12);
    expect(to).toBeCloseTo(0.47, 12);
    expect(beyond).toBeNull();
  });

  test('reaches a reading that lies a little outside', () => {
    expect(bandScale({ low: 0.2, high: 0.4 }, 0.55, 0.01).to).toBeGreaterThan(0.56);
    expect(bandScale({ low: 0.2, high: 0.4 }, 0.03, 0).from).toBeLessThan(0.03);
  });

  test('points an arrow at one that lies far off', () => {
    expect(bandScale({ low: 0.2, high: 0.4 }, 3, 0).beyond).toBe('right');
    expect(bandScale({ low: 68, high: 68.04 }, 6.8, 0).beyond).toBe('left');
  });

  test('shows a limit that stands alone, and a band without width', () => {
    const alone = bandScale({ low: null, high: 0.05 }, null, 0);
    expect(alone.from).toBeLessThan(0.05);
    expect(alone.to).toBeGreaterThan(0.05);
    const narrow = bandScale({ low: 20, high: 20 }, 20, 0.5);
    expect(narrow.from).toBeLessThan(19.5);
    expect(narrow.to).toBeGreaterThan(20.5);
  });

  test('always holds the band, and the reading with its uncertainty unless it points beyond', () => {
    const size = fc.double({ min: 0.01, max: 1000, noNaN: true });
    fc.assert(
      fc.property(size, size, size, size, (low, width, value, uncertainty) => {
        const high = low + width;
        const { from, to, beyond } = bandScale({ low, high }, value, uncertainty);
        expect(from).toBeLessThan(low);
        expect(to).toBeGreaterThan(high);
        if (beyond === null) {
          expect(from).toBeLessThan(value - uncertainty);
          expect(to).toBeGreaterThan(value + uncertainty);
        }
      }),
    );
  });
});
