import { describe, expect, test } from 'vitest';
import { standingOf } from './standing.ts';

const entered = {
  sourceId: 'manual',
  sourceKind: 'makers-manual',
  enteredBy: 'ada',
  contradicted: false,
} as const;
const manual = (by: string) => ({ sourceId: 'manual', sourceKind: 'makers-manual', by }) as const;

describe('the standing of a specification', () => {
  test('one person and one source: single source', () => {
    expect(standingOf({ ...entered, confirmations: [] })).toBe('single-source');
  });

  test('a second person who looked into the same source confirms it', () => {
    expect(standingOf({ ...entered, confirmations: [manual('bo')] })).toBe('confirmed');
  });

  test('a second source confirms it, whoever looked', () => {
    const bulletin = { sourceId: 'b', sourceKind: 'bulletin', by: 'ada' } as const;
    expect(standingOf({ ...entered, confirmations: [bulletin] })).toBe('confirmed');
  });

  test('hearsay confirms nothing, however often it is repeated', () => {
    const heard = (by: string) => ({ sourceId: by, sourceKind: 'heard-or-found', by }) as const;
    expect(
      standingOf({
        sourceId: 'web',
        sourceKind: 'common-practice',
        enteredBy: 'ada',
        contradicted: false,
        confirmations: [heard('bo'), heard('cy')],
      }),
    ).toBe('unconfirmed');
    expect(standingOf({ ...entered, confirmations: [heard('bo')] })).toBe('single-source');
  });

  test('while another source prints other figures nothing confirms it', () => {
    const contradicted = { ...entered, contradicted: true };
    expect(standingOf({ ...contradicted, confirmations: [manual('bo'), manual('cy')] })).toBe(
      'single-source',
    );
    expect(standingOf({ ...contradicted, sourceKind: 'heard-or-found', confirmations: [] })).toBe(
      'unconfirmed',
    );
  });
});
