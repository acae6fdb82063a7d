import { describe, expect, it } from 'vitest';
import type { GaugeInHand } from './gauge-remark.ts';
import { judgeReading, settingsLeftWords } from './judge-reading.ts';

const WRENCH: GaugeInHand = {
  name: 'Wrench',
  unit: 'N·m',
  rangeLow: 5,
  rangeHigh: 60,
  resolution: 0.1,
  maxError: 4,
  errorKind: 'of-reading',
  expired: false,
  calibrationDue: null,
  foundBadOn: null,
};
const head = {
  feature: 'head-bolt-torque',
  share: 1,
  value: 13,
  band: { low: 12, high: 14 },
  uncertainty: 0.52,
  gauge: WRENCH,
} as const;

describe('the verdict', () => {
  it('on a torque goes by what the wrench may give at its setting', () => {
    expect(judgeReading(head).verdict).toBe('within');
    expect(judgeReading({ ...head, value: 13.6 }).verdict).toBe('too-close');
    expect(judgeReading({ ...head, gauge: { ...WRENCH, maxError: 10 } }).verdict).toBe('too-close');
    expect(judgeReading({ ...head, band: { low: null, high: null } }).verdict).toBe('no-band');
  });

  it('on a stage before the last goes by the setting alone', () => {
    const stage = { ...head, share: 0.5, value: 6.9, band: { low: 6, high: 7 } };
    expect(judgeReading(stage).verdict).toBe('within');
    expect(judgeReading({ ...stage, value: 7.1 }).verdict).toBe('outside');
  });

  it('on what is read goes by the guard band', () => {
    const gap = {
      ...head,
      feature: 'coil-air-gap',
      gauge: null,
      band: { low: 0.2, high: 0.4 },
    } as const;
    expect(judgeReading({ ...gap, value: 0.3, uncertainty: 0.05 }).verdict).toBe('within');
    expect(judgeReading({ ...gap, value: 0.22, uncertainty: 0.05 }).verdict).toBe('too-close');
  });
});

describe('what a wrench leaves of a band', () => {
  const words = (low: number | null, high: number | null, gauge: GaugeInHand | null = WRENCH) =>
    settingsLeftWords({ low, high }, gauge, 'N·m');

  it('is said rounded into the band', () => {
    expect(words(12, 14)).toBe('of 12–14 N·m this wrench leaves 12.5–13.4');
    expect(words(26, 30)).toBe('of 26–30 N·m this wrench leaves 27.1–28.8');
  });

  it('is nothing of a narrow one, and is not said of a single figure or one limit', () => {
    expect(words(24, 25)).toBe('this wrench leaves nothing of 24–25 N·m');
    expect(words(24, 25, null)).toBe(
      'a wrench of ±6 % (none was named) leaves nothing of 24–25 N·m',
    );
    expect(words(26, 26)).toBe('');
    expect(words(null, 26)).toBe('');
  });
});
