import { describe, expect, it } from 'vitest';
import { EMPTY_FINDINGS, readFindings } from './findings-draft.ts';

const TWIN = { cylinders: 2, machine: 'riding-mower' } as const;

describe('what stands in the fields of a test run', () => {
  it('is nothing measured while they are empty', () => {
    const { findings, faults } = readFindings(EMPTY_FINDINGS, TWIN, null);
    expect(faults).toEqual({});
    expect(findings).toMatchObject({
      idleSpeed: null,
      compression: [null, null],
      leakDown: [
        { percent: null, path: 'none' },
        { percent: null, path: 'none' },
      ],
      stopSwitch: 'not-tried',
    });
  });

  it('takes pressure in the unit chosen, or in the one typed', () => {
    const draft = {
      ...EMPTY_FINDINGS,
      pressureUnit: 'psi' as const,
      compression: ['100', '700 kPa'],
    };
    const { findings } = readFindings(draft, TWIN, null);
    // NIST SP 811: 1 psi = 6.894 757 kPa.
    expect(findings.compression[0]).toBeCloseTo(689.4757, 3);
    expect(findings.compression[1]).toBe(700);
  });

  it('names the field that can’t be read, and the leak that is no share', () => {
    const { faults } = readFindings(
      {
        ...EMPTY_FINDINGS,
        idleSpeed: 'slow',
        bladeStop: 'soon',
        leakDown: [{ percent: '130', path: 'intake' }],
      },
      { ...TWIN, cylinders: 1 },
      null,
    );
    expect(Object.keys(faults).sort()).toEqual(['bladeStop', 'idleSpeed', 'leakDown.0.percent']);
  });
});
