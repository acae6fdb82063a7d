import { describe, expect, it } from 'vitest';
import { type FittedPart, fittingParts, oversizesKept, stepIn } from './decision-parts.ts';
import { partLabel } from './decision-rules.ts';

const part = (description: string, onHand = 1000, number = 'A 1') => ({
  number,
  description,
  onHand,
});

describe('stepIn', () => {
  it.each([
    ['Piston, standard, OH-172', 0],
    ['Piston, 0.25 oversize, OH-172', 0.25],
    ['Piston +0.50 with rings, OH 172', 0.5],
    ['Piston + 0,75 mm, OH-172', 0.75],
    ['Piston .020 over, OH-172', 0.508],
    ['Piston, .010 in oversize, OH-172', 0.254],
    ['Connecting rod, 0.25 undersize, OH-172', -0.25],
    ['Bolt M8 × 1.25, OH-172', 0],
  ])('%s: %d mm', (description, step) => {
    expect(stepIn(description)).toBe(step);
  });
});

describe('fittingParts', () => {
  it.each<[string, FittedPart]>([
    ['Piston, standard, D-680', 'piston'],
    ['Piston with pin, D-680', 'piston'],
    ['Piston ring set, D-680', 'rings'],
    ['Ring set, standard, D-680', 'rings'],
    ['Gasket set, complete, D-680', 'gasket-set'],
    ['Head gasket, D-680', 'head-gasket'],
    ['Cylinder head, D-680', 'head'],
    ['Connecting rod with bush, D-680', 'connecting-rod'],
    ['Intake valve, D-680', 'intake-valve'],
    ['Valve spring, D-680', 'valve-spring'],
    ['Valve guide, exhaust, D-680', 'valve-guide'],
    ['Valve seat, D-680', 'valve-seat'],
    ['Ignition coil, D-680', 'coil'],
  ])('%s is a %s and nothing else', (description, name) => {
    const parts = [part(description)];
    expect(fittingParts(parts, { part: name, step: 0, models: ['D 680'] })).toEqual(parts);
    const other = name === 'piston' ? 'rings' : 'piston';
    expect(fittingParts(parts, { part: other, step: 0, models: ['D 680'] })).toEqual([]);
  });

  it('takes a bolt, a seal or a guide for none of them', () => {
    const parts = ['Cylinder head bolt, D-680', 'Crankshaft seal, D-680', 'Piston pin, D-680'];
    for (const name of ['head', 'crankshaft', 'piston'] as const)
      expect(
        fittingParts(
          parts.map((each) => part(each)),
          { part: name, step: 0, models: ['D-680'] },
        ),
      ).toEqual([]);
  });

  it('wants the model as a word of its own and the very step', () => {
    const wanted = { part: 'piston', step: 0.25, models: ['D-680'] } as const;
    expect(fittingParts([part('Piston, 0.25 oversize, D-6800')], wanted)).toEqual([]);
    expect(fittingParts([part('Piston, 0.50 oversize, D-680')], wanted)).toEqual([]);
    expect(fittingParts([part('Piston, 0.25 oversize, AD-680')], wanted)).toEqual([]);
    expect(fittingParts([part('Piston, 0.25 oversize')], { ...wanted, models: [] })).toEqual([]);
  });

  it('takes a part that names the family of a variant', () => {
    const parts = [part('Piston, D-680')];
    expect(fittingParts(parts, { part: 'piston', step: 0, models: ['D-680 E', 'D-680'] })).toEqual(
      parts,
    );
    expect(fittingParts(parts, { part: 'piston', step: 0, models: ['D-680 E'] })).toEqual([]);
  });

  it('puts what is on the shelf first', () => {
    const none = part('Piston, D-680', 0);
    const some = part('Piston, D-680', 2000);
    expect(fittingParts([none, some], { part: 'piston', step: 0, models: ['d680'] })).toEqual([
      some,
      none,
    ]);
  });
});

it('knows in which oversizes pistons are kept', () => {
  const parts = [
    part('Piston, standard, D-680'),
    part('Piston, .020 over, D-680'),
    part('Ring set, 0.75 oversize, D-680'),
    part('Piston, 0.25 oversize, D-680', 0),
    part('Piston, 0.50 oversize, K-416'),
  ];
  expect(oversizesKept(parts, ['D-680'])).toEqual([0.508, 0.25]);
});

describe('what somebody said that a part fits', () => {
  const wanted = { part: 'piston', step: 0.5, models: ['D-680'] } as const;
  const said = (onHand: number, fitted: FittedPart | 'other', step: number) => ({
    ...part('Second rebore, red box', onHand),
    fits: [{ fitted, step }],
  });

  it('comes before the words of a description, even with less on the shelf', () => {
    const byWords = part('Piston, 0.50 oversize, D-680', 9000);
    const bySaying = said(0, 'piston', 0.5);
    expect(fittingParts([byWords, bySaying], wanted)).toEqual([bySaying, byWords]);
  });

  it('counts instead of the words, and not beside them', () => {
    const otherwise = {
      ...part('Piston, 0.50 oversize, D-680'),
      fits: said(0, 'piston', 0.25).fits,
    };
    expect(fittingParts([otherwise, said(1000, 'other', 0.5)], wanted)).toEqual([]);
    expect(fittingParts([otherwise], { ...wanted, step: 0.25 })).toEqual([otherwise]);
  });

  it('is an oversize that is kept', () => {
    expect(oversizesKept([said(0, 'piston', 0.5)], ['D-680'])).toEqual([0.5]);
  });
});

it('a part is said with its cylinder only where an engine has several', () => {
  expect(partLabel({ subject: 'piston', cylinder: 2 }, 2)).toMatch(/, cylinder 2$/);
  expect(partLabel({ subject: 'piston', cylinder: 1 }, 1)).not.toContain('cylinder 1');
  expect(partLabel({ subject: 'crankshaft', cylinder: 0 }, 2)).not.toContain('cylinder');
});
