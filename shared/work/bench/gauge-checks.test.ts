import { describe, expect, test } from 'vitest';
import { calibrationOf, doubtfulSpans, type GaugeCheck, inDoubt } from './gauge-checks.ts';

const register = { calibratedOn: '2025-01-10', calibrationDue: '2026-01-10', certificate: 'C 1' };
const check = (on: string, good: boolean, more: Partial<GaugeCheck> = {}): GaugeCheck => ({
  on,
  good,
  certificate: '',
  dueOn: null,
  ...more,
});

describe('calibration', () => {
  test('is the register’s until a good check says otherwise', () => {
    expect(calibrationOf(register, [])).toEqual({ ...register, foundBadOn: null });
    expect(
      calibrationOf(register, [
        check('2026-01-08', true, { certificate: 'C 2', dueOn: '2027-01-08' }),
      ]),
    ).toEqual({
      calibratedOn: '2026-01-08',
      calibrationDue: '2027-01-08',
      certificate: 'C 2',
      foundBadOn: null,
    });
  });

  test('a gauge found bad is out of use until a good check, from the first bad one on', () => {
    const bad = [check('2025-06-01', false), check('2025-06-03', false)];
    expect(calibrationOf(register, bad)).toEqual({ ...register, foundBadOn: '2025-06-01' });
    expect(calibrationOf(register, [...bad, check('2025-06-09', true)]).foundBadOn).toBeNull();
  });

  test('of two checks of one day the later decides', () => {
    const day = [check('2025-06-01', false), check('2025-06-01', true)];
    expect(calibrationOf(register, day).foundBadOn).toBeNull();
    expect(calibrationOf(register, day.toReversed()).foundBadOn).toBe('2025-06-01');
  });
});

describe('what a bad check puts in doubt', () => {
  test('reaches back to the last good check, and on to the next', () => {
    const spans = doubtfulSpans(register, [
      check('2025-03-01', true),
      check('2025-06-01', false),
      check('2025-06-02', false),
      check('2025-07-01', true),
    ]);
    expect(spans).toEqual([{ since: '2025-03-01', badOn: '2025-06-01', until: '2025-07-01' }]);
    const [span] = spans;
    if (span === undefined) throw new Error('There is no span.');
    expect(
      ['2025-02-28', '2025-03-01', '2025-06-15', '2025-07-02'].map((day) => inDoubt(day, span)),
    ).toEqual([false, true, true, false]);
  });

  test('reaches back to the register’s calibration, else to the beginning', () => {
    expect(doubtfulSpans(register, [check('2025-06-01', false)])).toEqual([
      { since: '2025-01-10', badOn: '2025-06-01', until: null },
    ]);
    const [unknown] = doubtfulSpans({ calibratedOn: null }, [check('2025-06-01', false)]);
    expect(unknown?.since).toBeNull();
    expect(unknown && inDoubt('1999-01-01', unknown)).toBe(true);
    expect(doubtfulSpans(register, [check('2024-06-01', false)])[0]?.since).toBeNull();
  });

  test('nothing is in doubt while every check was good', () => {
    expect(doubtfulSpans(register, [check('2025-06-01', true)])).toEqual([]);
  });
});
