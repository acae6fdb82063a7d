import { describe, expect, it } from 'vitest';
import { acceptedBand, limitsAt } from '../bench/reading-verdict.ts';
import type { Feature } from '../features.ts';
import { readBand } from './specification-band.ts';
import { wearLimitWords } from './wear-limit.ts';

const read = (feature: Feature, low: string, high: string, wearLimit: string) =>
  readBand(feature, { low, high, aim: '', wearLimit, unit: 'mm' });

describe('a wear limit that can’t be one', () => {
  it.each([
    ['bore', '68.000', '68.015', '0.08', '+0.08'],
    ['bore', '68.000', '68.015', '680.80', undefined],
    ['bore', '68.000', '68.015', '86.08', undefined],
    ['bore', '68.000', '68.015', '68.010', undefined],
    ['crankpin', '29.960', '29.973', '2.992', undefined],
    ['crankpin', '29.960', '29.973', '30.1', undefined],
    ['crankpin', '29.960', '29.973', '0.05', '-0.05'],
    ['ring-end-gap', '0.15', '0.35', '0.08', '+0.08'],
  ] as const)('%s %s–%s, wear limit %s', (feature, low, high, wearLimit, instead) => {
    const band = read(feature, low, high, wearLimit);
    expect(band.ok).toBe(false);
    if (band.ok) return;
    expect(band.issues).toHaveLength(1);
    expect(band.issues[0]).toMatchObject({ path: 'wearLimit' });
    expect(band.issues[0]?.instead).toBe(instead);
  });
});

describe('how much a part may wear', () => {
  it('counts from the limit of a new part, to the side that it wears to', () => {
    expect(read('bore', '68.000', '68.015', '+0.08')).toMatchObject({
      band: { low: 68, high: 68.015, wearLimit: 68.095 },
    });
    expect(read('crankpin', '29.960', '29.973', '-0.05')).toMatchObject({
      band: { wearLimit: 29.91 },
    });
    expect(read('ring-end-gap', '0.15', '0.35', '+0.08')).toMatchObject({
      band: { wearLimit: 0.43 },
    });
  });

  it('is printed as the size with what the source says beside it', () => {
    const printed = { feature: 'bore', unit: 'mm', wearLimitBase: 68.095 } as const;
    expect(wearLimitWords({ ...printed, wearLimit: '+0.08' })).toBe('68.095 (+0.08)');
    expect(wearLimitWords({ ...printed, wearLimit: '68.10', wearLimitBase: 68.1 })).toBe('68.10');
  });
});

describe('the way a feature wears', () => {
  const held = (feature: Feature, low: number | null, high: number | null, wear: number) =>
    acceptedBand(
      feature,
      limitsAt({ lowBase: low, highBase: high, aimBase: null, wearLimitBase: wear }, 1),
      'as-received',
    );

  it('is known where the source gives one limit only', () => {
    expect(held('crankpin', null, 29.973, 29.92)).toEqual({ low: 29.92, high: 29.973 });
    expect(held('piston-skirt', null, 66.97, 66.88)).toEqual({ low: 66.88, high: 66.97 });
    expect(held('valve-spring-length', null, 35, 32.5)).toEqual({ low: 32.5, high: 35 });
    expect(held('bore', 67, null, 67.08)).toEqual({ low: 67, high: 67.08 });
  });

  it('leaves a limit on the wrong side out of the verdict', () => {
    expect(held('bore', 68, 68.015, 0.08)).toEqual({ low: 68, high: 68.015 });
    expect(held('ring-end-gap', 0.15, 0.35, 0.08)).toEqual({ low: 0.15, high: 0.35 });
  });

  it('accepts the limits that manuals print', () => {
    expect(read('bore', '67.000', '67.015', '67.080').ok).toBe(true);
    expect(read('valve-spring-length', '34', '35', '32.5').ok).toBe(true);
    expect(read('head-flatness', '', '0.05', '0.10').ok).toBe(true);
    expect(read('seat-width', '1.2', '1.6', '2.0').ok).toBe(true);
  });
});
