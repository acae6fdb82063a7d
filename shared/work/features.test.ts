import { describe, expect, test } from 'vitest';
import { measuredFeaturesOf, placesOf } from './features.ts';

const single = {
  cycle: 'four-stroke',
  cylinders: 1,
  torqueStages: { 'head-bolt-torque': [0.5, 0.75, 1], 'sump-bolt-torque': [0.6, 1] },
} as const;

describe('where an engine is measured', () => {
  test('a bore at three depths on two axes, the coil at both legs, the bolts stage by stage', () => {
    expect(placesOf('bore', single)).toHaveLength(6);
    expect(placesOf('coil-air-gap', single).map(({ label }) => label)).toEqual(['leg 1', 'leg 2']);
    expect(placesOf('head-bolt-torque', single).map(({ share }) => share)).toEqual([0.5, 0.75, 1]);
  });

  test('any group of bolts has its own stages, and its final torque keeps the place that it had', () => {
    expect(placesOf('sump-bolt-torque', single)).toMatchObject([
      { key: 'c1-stage-1', label: 'stage 1 of 2', share: 0.6 },
      { key: 'c1-only', label: 'stage 2 of 2', share: 1 },
    ]);
    const unstaged = { ...single, torqueStages: { 'flywheel-nut-torque': [1] } };
    for (const feature of ['sump-bolt-torque', 'flywheel-nut-torque'] as const)
      expect(placesOf(feature, unstaged)).toMatchObject([{ key: 'c1-only', label: '', share: 1 }]);
    expect(placesOf('head-bolt-torque', unstaged).map(({ share }) => share)).toEqual([0.5, 1]);
  });

  test('a twin has twice the bores and one crankshaft, and says which cylinder', () => {
    const twin = { ...single, cylinders: 2 };
    expect(placesOf('bore', twin)).toHaveLength(12);
    expect(placesOf('bore', twin)[6]).toMatchObject({
      key: 'c2-top-along',
      label: 'cylinder 2, top, along the crankshaft',
    });
    expect(placesOf('crankshaft-end-play', twin)).toHaveLength(1);
  });

  test('no place has the key of another', () => {
    const twin = { ...single, cylinders: 2 };
    for (const feature of measuredFeaturesOf(twin)) {
      const keys = placesOf(feature, twin).map(({ key }) => key);
      expect(new Set(keys).size).toBe(keys.length);
    }
  });

  test('a two-stroke has no lash', () => {
    expect(measuredFeaturesOf({ ...single, cycle: 'two-stroke' })).not.toContain(
      'valve-lash-intake',
    );
  });

  test('an engine of no cylinders is refused', () => {
    expect(() => placesOf('bore', { ...single, cylinders: 0 })).toThrow(RangeError);
  });
});
