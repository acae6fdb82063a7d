import { describe, expect, it } from 'vitest';
import { CORE_FEATURES, type EngineShape } from '../features.ts';
import { type DatedDecision, type FinalReading, owedReadings } from './owed-readings.ts';

const shape: EngineShape = { cycle: 'four-stroke', cylinders: 1, torqueStages: {} };
const twin: EngineShape = { ...shape, cylinders: 2 };
const bored: DatedDecision = {
  subject: 'cylinder',
  cylinder: 1,
  choice: 'next-oversize',
  at: '2026-11-03T10:00:00Z',
};
const reading = (place: string, at = '2026-11-05T10:00:00Z'): FinalReading => ({
  feature: 'bore',
  place,
  at,
});
const owed = (
  standing: DatedDecision[],
  finals: FinalReading[] = [],
  more: Partial<Parameters<typeof owedReadings>[0]> = {},
) => owedReadings({ shape, standing, finals, asked: CORE_FEATURES, ...more });

describe('final readings that are owed', () => {
  it('are those of every place of what was machined', () => {
    expect(owed([bored])).toEqual([{ feature: 'bore', places: [] }]);
    expect(owed([bored], [reading('c1-top-along'), reading('c1-bottom-across')])).toEqual([
      {
        feature: 'bore',
        places: [
          'top, across the crankshaft',
          'middle, along the crankshaft',
          'middle, across the crankshaft',
          'bottom, along the crankshaft',
        ],
      },
    ]);
  });

  it('are none of what is used again', () => {
    expect(owed([])).toEqual([]);
    expect(owed([{ ...bored, choice: 'reuse' }])).toEqual([]);
  });

  it('are none from before the decision', () => {
    const early = ['top', 'middle', 'bottom'].flatMap((level) =>
      ['along', 'across'].map((axis) => reading(`c1-${level}-${axis}`, '2026-11-02T10:00:00Z')),
    );
    expect(owed([bored], early)).toEqual([{ feature: 'bore', places: [] }]);
    expect(
      owed(
        [bored],
        early.map((each) => ({ ...each, at: bored.at })),
      ),
    ).toEqual([]);
  });

  it('are those of the cylinder that was decided on', () => {
    const [missing] = owed([bored], [], { shape: twin });
    expect(missing?.places).toHaveLength(6);
    expect(missing?.places[0]).toBe('cylinder 1, top, along the crankshaft');
  });

  it('are asked of what the engine is measured on', () => {
    const valves = { ...bored, subject: 'valves', choice: 'replace' } as const;
    expect(owed([valves])).toEqual([]);
    expect(owed([valves], [], { asked: ['valve-stem-intake'] })).toEqual([
      { feature: 'valve-stem-intake', places: [] },
    ]);
  });
});
