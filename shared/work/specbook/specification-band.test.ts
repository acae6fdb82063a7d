import { describe, expect, test } from 'vitest';
import { questionedTorque, readFastener } from '../bench/torque-check.ts';
import { readBand } from './specification-band.ts';

const printed = { low: '', high: '', aim: '', wearLimit: '', unit: 'mm' } as const;

describe('limits as a source prints them', () => {
  test('are kept in the base unit', () => {
    expect(readBand('coil-air-gap', { ...printed, low: '.008', high: '.016', unit: 'in' })).toEqual(
      { ok: true, band: { low: expect.closeTo(0.2032, 9), high: expect.closeTo(0.4064, 9) } },
    );
  });

  test.each([
    [{ low: 'wide' }, 'low'],
    [{}, 'low'],
    [{ low: '0.4', high: '0.2' }, 'high'],
    [{ low: '0.2', high: '0.4', aim: '0.5' }, 'aim'],
    [{ low: '0.2 in' }, 'low'],
  ])('%o is refused at its field', (limits, path) => {
    const read = readBand('coil-air-gap', { ...printed, ...limits });
    expect(read).toMatchObject({ ok: false, issues: [{ path }] });
  });

  test('an air gap is not given in pound-feet', () => {
    expect(readBand('coil-air-gap', { ...printed, low: '1', unit: 'lbf·ft' })).toMatchObject({
      ok: false,
      issues: [{ path: 'unit' }],
    });
  });
});

const M8 = { designation: '', diameter: 8, pitch: 1.25, propertyClass: '8.8', stages: [0.5, 1] };

describe('a torque beside its thread', () => {
  // Common practice, no source: head bolts of a small engine at 17 lbf·ft, which an M8 class 8.8 bears.
  test('17 lbf·ft on an M8 8.8 is not questioned; in-lb read as ft-lb is', () => {
    expect(questionedTorque({ low: 21.7, high: 24.4 }, M8)).toBeNull();
    expect(questionedTorque({ low: 260, high: 293 }, M8)).toMatchObject({ verdict: 'high' });
    expect(questionedTorque({ aim: 1.92 }, M8)).toMatchObject({ verdict: 'low' });
  });

  test('only a torque has a fastener, and it has one', () => {
    expect(readFastener('coil-air-gap', M8).ok).toBe(false);
    expect(readFastener('head-bolt-torque', null).ok).toBe(false);
    expect(readFastener('head-bolt-torque', M8)).toEqual({ ok: true, fastener: M8 });
    const printed = { ...M8, designation: 'M8x1,25' };
    expect(readFastener('head-bolt-torque', printed)).toEqual({ ok: true, fastener: printed });
  });

  test.each([
    [{ propertyClass: 'strong' }, 'fastener.propertyClass'],
    [{ pitch: 9 }, 'fastener.pitch'],
    [{ pitch: 5 }, 'fastener.pitch'],
    [{ diameter: 20, pitch: 2.5, propertyClass: '9.8' }, 'fastener.propertyClass'],
    [{ designation: 'five sixteenths' }, 'fastener.designation'],
    [{ designation: '5/16-18 UNC' }, 'fastener.designation'],
    [{ stages: [0.5, 0.9] }, 'fastener.stages'],
    [{ stages: [0.5, 0.4, 1] }, 'fastener.stages'],
  ])('%o is refused at its field', (change, path) => {
    expect(readFastener('head-bolt-torque', { ...M8, ...change })).toMatchObject({
      ok: false,
      issues: [{ path }],
    });
  });
});
