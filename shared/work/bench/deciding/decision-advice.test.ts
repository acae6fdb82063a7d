import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FEATURES, type Feature } from '../../features.ts';
import { acceptedBand, verdictOn } from '../reading-verdict.ts';
import { adviceOn, figuresBeside } from './decision-advice.ts';
import { figureSentence, type PartFigure } from './decision-figures.ts';
import type { EngineFacts } from './decision-grounds.ts';
import { choicesFor, decisionPartsOf, whyReasonIsWanted } from './decision-rules.ts';
import { DECISION_SUBJECTS } from './decisions.ts';

// An invented twin: bore 81.000–81.020 mm new and 81.100 mm worn, crankpin 33.950–33.966 and 33.900.
const LIMITS: Partial<
  Record<Feature, { low: number | null; high: number | null; wearLimit: number | null }>
> = {
  bore: { low: 81, high: 81.02, wearLimit: 81.1 },
  'bore-taper': { low: null, high: 0.04, wearLimit: null },
  'piston-skirt': { low: 80.94, high: 80.96, wearLimit: 80.85 },
  'piston-clearance': { low: 0.04, high: 0.08, wearLimit: 0.15 },
  'ring-end-gap': { low: 0.2, high: 0.4, wearLimit: 0.9 },
  crankpin: { low: 33.95, high: 33.966, wearLimit: 33.9 },
  'main-journal': { low: 34.95, high: 34.966, wearLimit: 34.9 },
  'rod-clearance': { low: 0.03, high: 0.07, wearLimit: 0.12 },
  'head-flatness': { low: null, high: 0.08, wearLimit: null },
  'seat-width': { low: 1, high: 1.4, wearLimit: 2 },
  'valve-spring-length': { low: 34, high: 35, wearLimit: 32.5 },
  'valve-stem-exhaust': { low: 6.92, high: 6.94, wearLimit: 6.88 },
  'valve-guide-exhaust': { low: 7, high: 7.02, wearLimit: 7.1 },
  'stem-clearance-exhaust': { low: 0.03, high: 0.08, wearLimit: 0.15 },
};

function figure(feature: Feature, value: number, place = '', cylinder = 1): PartFigure {
  const limits = LIMITS[feature];
  const band =
    limits === undefined ? { low: null, high: null } : acceptedBand(feature, limits, 'as-received');
  const uncertainty = 0.006;
  const { verdict } = verdictOn(value, band, uncertainty);
  return {
    feature,
    cylinder,
    place,
    placeLabel: place,
    value,
    uncertainty,
    verdict,
    ...band,
    unit: 'mm',
  };
}

const PLACES = ['ta', 'tx', 'ma', 'mx', 'ba', 'bx'];
const bores = (values: readonly number[], cylinder = 1) =>
  values.map((value, index) => figure('bore', value, PLACES[index], cylinder));

const facts = (figures: PartFigure[], more: Partial<EngineFacts> = {}): EngineFacts => ({
  figures,
  nominalBore: 81,
  borePlaces: 6,
  newCrankpin: 33.966,
  oversizes: [0.25, 0.5, 0.75, 1],
  undersizes: [0.25, 0.5],
  allowance: 0.05,
  parts: decisionPartsOf({ cycle: 'four-stroke', cylinders: 2 }),
  standing: [],
  ...more,
});

const SOUND = [81.03, 81.04, 81.02, 81.03, 81.01, 81.02];
const WORN = [81.11, 81.14, 81.08, 81.1, 81.04, 81.06];
const cylinder = { subject: 'cylinder', cylinder: 1 } as const;

describe('the bore', () => {
  it('within its limits is honed for new rings', () => {
    expect(adviceOn(cylinder, facts(bores(SOUND)))).toMatchObject({
      choice: 'hone',
      grounds: 'figures',
      reason: expect.stringContaining('Cylinder bore 81.04\u00A0mm (tx) is within 81.00–81.10'),
    });
  });

  it('past its wear limit goes to the smallest oversize that cleans up', () => {
    const advice = adviceOn(cylinder, facts(bores(WORN)));
    expect(advice).toMatchObject({ choice: 'next-oversize', step: 0.25 });
    expect(advice.reason).toContain('is outside 81.00–81.10');
    expect(advice.reason).toContain('+0.25\u00A0mm is the smallest oversize that cleans up 81.14');
    expect(adviceOn(cylinder, facts(bores(WORN), { allowance: 0.12 }))).toMatchObject({
      step: 0.5,
    });
  });

  it('that no oversize cleans up wants a new sleeve', () => {
    expect(adviceOn(cylinder, facts(bores([82.1])))).toMatchObject({ choice: 'replace' });
  });

  it('within and out of taper is worn all the same', () => {
    expect(adviceOn(cylinder, facts([...bores(SOUND), figure('bore-taper', 0.06)]))).toMatchObject({
      choice: 'next-oversize',
      step: 0.25,
    });
  });

  it('measured at some places only is not cleared', () => {
    expect(adviceOn(cylinder, facts(bores(SOUND.slice(0, 4))))).toMatchObject({
      choice: null,
      grounds: 'none',
      reason: expect.stringContaining('4 of 6 places'),
    });
  });

  it('too close to call is left open, with what would settle it', () => {
    expect(adviceOn(cylinder, facts(bores([81.098, ...SOUND.slice(1)])))).toMatchObject({
      choice: null,
      grounds: 'doubt',
      reason: expect.stringContaining('A finer gauge'),
    });
  });

  it('below a new one is a slip, not wear', () => {
    expect(adviceOn(cylinder, facts(bores([80.5, ...SOUND.slice(1)])))).toMatchObject({
      choice: null,
      grounds: 'doubt',
      reason: expect.stringContaining('Measure again'),
    });
  });

  it('has no oversize without a nominal size', () => {
    expect(adviceOn(cylinder, facts(bores(WORN), { nominalBore: null }))).toMatchObject({
      choice: null,
      grounds: 'doubt',
    });
  });

  it('is not advised on from the other cylinder', () => {
    expect(adviceOn(cylinder, facts(bores(WORN, 2)))).toMatchObject({ grounds: 'none' });
  });
});

describe('what goes with the bore', () => {
  const piston = { subject: 'piston', cylinder: 1 } as const;
  const rings = { subject: 'rings', cylinder: 1 } as const;

  it('is the piston and the rings of its oversize, as advised, then as decided', () => {
    const worn = facts([...bores(WORN), figure('piston-skirt', 80.95)]);
    expect(adviceOn(piston, worn)).toMatchObject({ choice: 'next-oversize', step: 0.25 });
    const decided: EngineFacts = {
      ...worn,
      standing: [{ ...cylinder, choice: 'next-oversize', step: 0.5 }],
    };
    for (const part of [piston, rings])
      expect(adviceOn(part, decided)).toMatchObject({
        choice: 'next-oversize',
        step: 0.5,
        reason: expect.stringContaining('is decided'),
      });
  });

  it('is new rings where it is honed, and the piston as it measures', () => {
    const sound = facts([...bores(SOUND), figure('piston-clearance', 0.2)]);
    expect(adviceOn(rings, sound)).toMatchObject({ choice: 'replace' });
    expect(adviceOn(piston, sound)).toMatchObject({ choice: 'replace' });
    expect(adviceOn(piston, facts([...bores(SOUND), figure('piston-skirt', 80.92)]))).toMatchObject(
      { choice: 'reuse' },
    );
  });
});

describe('the crankshaft and its rods', () => {
  const crankshaft = { subject: 'crankshaft', cylinder: 0 } as const;
  const rod = { subject: 'connecting-rod', cylinder: 2 } as const;

  it('go undersize together where a crankpin is worn', () => {
    const worn = facts([figure('crankpin', 33.88, 'first', 2), figure('crankpin', 33.95)]);
    expect(adviceOn(crankshaft, worn)).toMatchObject({ choice: 'undersize', step: 0.25 });
    expect(adviceOn(rod, worn)).toMatchObject({ choice: 'undersize', step: 0.25 });
  });

  it('want another crankshaft where a main journal is worn', () => {
    expect(
      adviceOn(crankshaft, facts([figure('crankpin', 33.88), figure('main-journal', 34.8)])),
    ).toMatchObject({ choice: 'replace' });
  });

  it('weigh a rod by its own eye where the crankshaft goes: the clearance on it says nothing', () => {
    const replaced: EngineFacts['standing'] = [{ ...crankshaft, choice: 'replace', step: null }];
    const clearance = [figure('rod-clearance', 0.14, '', 2)];
    expect(adviceOn(rod, facts(clearance))).toMatchObject({ choice: 'replace' });
    expect(adviceOn(rod, facts(clearance, { standing: replaced }))).toMatchObject({
      choice: null,
      grounds: 'none',
    });
  });

  it('want another rod where only the clearance is past its limit', () => {
    expect(
      adviceOn(rod, facts([figure('crankpin', 33.95), figure('rod-clearance', 0.14, '', 2)])),
    ).toMatchObject({ choice: 'replace' });
  });
});

it('the other parts: a warped head is surfaced, a wide seat is cut, and the engine is weighed', () => {
  expect(
    adviceOn({ subject: 'head', cylinder: 1 }, facts([figure('head-flatness', 0.12)])),
  ).toMatchObject({ choice: 'resurface' });
  expect(
    adviceOn({ subject: 'valve-seats', cylinder: 1 }, facts([figure('seat-width', 2.3)])),
  ).toMatchObject({ choice: 'cut', reason: expect.stringContaining('narrowed') });
  expect(adviceOn({ subject: 'valves', cylinder: 1 }, facts([]))).toMatchObject({ choice: null });
  const engine = { subject: 'engine', cylinder: 0 } as const;
  expect(adviceOn(engine, facts([])).reason).toContain('20 parts are not decided yet');
  const parts = decisionPartsOf({ cycle: 'two-stroke', cylinders: 1 });
  const all = parts.map((part) => ({ ...part, choice: 'reuse' as const, step: null }));
  expect(adviceOn(engine, facts([], { parts, standing: all }))).toMatchObject({ choice: 'reuse' });
  expect(
    adviceOn(engine, facts([], { parts, standing: [{ ...cylinder, choice: 'stop', step: null }] })),
  ).toMatchObject({ choice: 'stop' });
});

describe('the valve train', () => {
  const train = (subject: 'valves' | 'valve-springs' | 'valve-guides', ...figures: PartFigure[]) =>
    adviceOn({ subject, cylinder: 1 }, facts(figures));

  it('answers a short spring with a spring, and with no valve', () => {
    const short = figure('valve-spring-length', 31);
    expect(train('valve-springs', short)).toMatchObject({ choice: 'replace' });
    expect(train('valves', short)).toMatchObject({ choice: null, grounds: 'none' });
  });

  it('answers a worn guide with a guide or a reamer, and with no valve', () => {
    const worn = figure('valve-guide-exhaust', 7.2);
    const advice = train('valve-guides', worn, figure('valve-stem-exhaust', 6.92));
    expect(advice).toMatchObject({ choice: 'replace' });
    expect(advice.reason).toContain('ream');
    expect(train('valves', worn, figure('valve-stem-exhaust', 6.92))).toMatchObject({
      choice: 'reuse',
    });
  });

  it('leaves open whether stem or guide is to blame for their clearance', () => {
    const loose = figure('stem-clearance-exhaust', 0.3);
    const stem = figure('valve-stem-exhaust', 6.7);
    expect(train('valve-guides', loose, stem)).toMatchObject({ choice: null, grounds: 'doubt' });
    expect(train('valve-guides', loose)).toMatchObject({ choice: 'replace' });
    expect(train('valves', stem)).toMatchObject({ choice: 'replace' });
  });

  it('cuts the seats true to guides that were worked on, and fits valves to reamed ones', () => {
    const standing: EngineFacts['standing'] = [
      { subject: 'valve-guides', cylinder: 1, choice: 'ream', step: null },
    ];
    const reamed = facts([], { standing });
    expect(adviceOn({ subject: 'valve-seats', cylinder: 1 }, reamed).choice).toBe('cut');
    expect(adviceOn({ subject: 'valves', cylinder: 1 }, reamed).choice).toBe('replace');
  });

  it('is no part of a two-stroke', () => {
    expect(
      decisionPartsOf({ cycle: 'two-stroke', cylinders: 1 }).filter(({ subject }) =>
        subject.startsWith('valve'),
      ),
    ).toEqual([]);
  });
});

describe('the joint of the head', () => {
  const head = (feature: 'head-flatness' | 'deck-flatness', value: number) => {
    const measured = { ...figure('head-flatness', value), feature };
    return adviceOn({ subject: 'head', cylinder: 1 }, facts([measured]));
  };
  it('is surfaced while little comes off, and past that another head is wanted', () => {
    expect(head('head-flatness', 0.15).choice).toBe('resurface');
    expect(head('head-flatness', 0.25).choice).toBe('resurface');
    expect(head('head-flatness', 0.9)).toMatchObject({
      choice: 'replace',
      reason: expect.stringContaining('Too much to surface'),
    });
  });

  it('is not mended by a head where it is the deck', () => {
    expect(head('deck-flatness', 0.9)).toMatchObject({ choice: null, grounds: 'doubt' });
  });
});

describe('a ring gap', () => {
  const rings = (gap: number) =>
    adviceOn({ subject: 'rings', cylinder: 1 }, facts([figure('ring-end-gap', gap)]));

  it('that is too small is filed', () => {
    expect(rings(0.08)).toMatchObject({ choice: 'file' });
  });

  it('that is too large wants a new ring tried', () => {
    expect(rings(2)).toMatchObject({
      choice: 'replace',
      reason: expect.stringContaining('Try a new ring in the bore'),
    });
  });
});

describe('a reason in writing', () => {
  const advice = {
    choice: 'next-oversize',
    step: 0.25,
    reason: 'Worn.',
    grounds: 'figures',
  } as const;
  it('is wanted for a stop, against the advice, and on a doubtful figure', () => {
    expect(whyReasonIsWanted({ choice: 'stop', step: null }, advice)).toBe('stop');
    expect(whyReasonIsWanted({ choice: 'hone', step: null }, advice)).toBe('against-advice');
    expect(whyReasonIsWanted({ choice: 'next-oversize', step: 0.5 }, advice)).toBe(
      'against-advice',
    );
    expect(whyReasonIsWanted({ choice: 'next-oversize', step: 0.25 }, advice)).toBeNull();
    const doubtful = { choice: null, step: null, reason: '', grounds: 'doubt' } as const;
    expect(whyReasonIsWanted({ choice: 'reuse', step: null }, doubtful)).toBe('doubt');
    expect(
      whyReasonIsWanted({ choice: 'reuse', step: null }, { ...doubtful, grounds: 'none' }),
    ).toBeNull();
  });
});

it('shows of several places the one that asks for most attention', () => {
  const shown = figuresBeside(cylinder, facts([...bores(WORN), figure('bore-taper', 0.07)]));
  expect(shown.map(({ feature, value }) => [feature, value])).toEqual([
    ['bore', 81.14],
    ['bore-taper', 0.07],
  ]);
  expect(shown.map(figureSentence)[1]).toBe(
    'Bore taper 0.07\u00A0mm is outside the limit of 0.04\u00A0mm.',
  );
});

describe('whatever is measured', () => {
  const anyFigure = fc
    .record({
      feature: fc.constantFrom(...FEATURES.filter((feature) => feature in LIMITS)),
      share: fc.double({ min: 0.9, max: 1.1, noNaN: true }),
      cylinder: fc.constantFrom(1, 2),
      place: fc.constantFrom('a', 'b', 'c'),
    })
    .map(({ feature, share, cylinder: at, place }) => {
      const { low = 0, high = 0 } = LIMITS[feature] ?? {};
      return figure(feature, (low ?? high ?? 1) * share, place, at);
    });

  it('advice is one of the choices of its part, and says why', () => {
    fc.assert(
      fc.property(
        fc.array(anyFigure, { maxLength: 20 }),
        fc.constantFrom(...DECISION_SUBJECTS),
        (figures, subject) => {
          const advice = adviceOn(
            { subject, cylinder: subject === 'crankshaft' ? 0 : 1 },
            facts(figures),
          );
          if (advice.choice !== null) expect(choicesFor(subject)).toContain(advice.choice);
          expect(advice.reason).toMatch(/^[A-Z0-9].*\.$/su);
        },
      ),
    );
  });

  it('nothing is cleared while a figure of it is outside or too close to call', () => {
    fc.assert(
      fc.property(fc.array(anyFigure, { maxLength: 20 }), (figures) => {
        const given = facts(figures);
        const advice = adviceOn(cylinder, given);
        const bad = figuresBeside(cylinder, given).some(
          ({ verdict }) => verdict === 'outside' || verdict === 'too-close',
        );
        if (bad) expect(['reuse', 'hone']).not.toContain(advice.choice);
      }),
    );
  });
});

it('says of what belongs to one cylinder where, and of the crankshaft which cylinder', () => {
  const measured = facts([
    figure('crankpin', 33.95, 'cylinder 1, first direction'),
    figure('crankpin', 33.94, 'cylinder 2, first direction', 2),
    figure('piston-skirt', 80.92, 'cylinder 1'),
    figure('piston-clearance', 0.1, 'cylinder 1'),
  ]);
  expect(adviceOn({ subject: 'piston', cylinder: 1 }, measured).reason).toBe(
    'Within their limits: piston skirt 80.92\u00A0mm; piston to bore clearance 0.10\u00A0mm.',
  );
  expect(adviceOn({ subject: 'crankshaft', cylinder: 0 }, measured).reason).toBe(
    'Within their limits: crankpin 33.95\u00A0mm (cylinder 1, first direction); crankpin 33.94\u00A0mm (cylinder 2, first direction).',
  );
});
