import { describe, expect, it } from 'vitest';
import { type DecidedPart, proposalsFrom } from './decision-proposals.ts';

const shelf = [
  {
    number: 'VK-1',
    description: 'Piston, 0.25 oversize, D-680',
    onHand: 1000,
    unit: 'pc',
    sellsAt: 6740,
  },
  { number: 'VK-3', description: 'Gasket set, D-680', onHand: 3000, unit: 'pc', sellsAt: 5460 },
  { number: 'VK-4', description: 'Head gasket, D-680', onHand: 6000, unit: 'pc', sellsAt: 1380 },
];
const shop = { parts: shelf, models: ['D-680'], cylinders: 2, labourRate: 8500 };

const decided = (
  subject: DecidedPart['subject'],
  choice: DecidedPart['choice'],
  more: Partial<DecidedPart> = {},
): DecidedPart => ({ subject, choice, cylinder: 1, step: null, machineTo: null, ...more });

const oversize = { step: 0.25, machineTo: { low: 81.25, high: 81.27 } };

const brief = (decisions: DecidedPart[]) =>
  proposalsFrom(decisions, shop).map(({ kind, description, quantity, unitPrice, priceToSet }) => [
    kind,
    description,
    quantity,
    unitPrice,
    priceToSet,
  ]);

describe('the lines that follow', () => {
  it('from both bores to the first oversize: boring, pistons of the shelf, rings to be priced', () => {
    const decisions = [1, 2].flatMap((cylinder) => [
      decided('cylinder', 'next-oversize', { cylinder, ...oversize }),
      decided('piston', 'next-oversize', { cylinder, step: 0.25 }),
      decided('rings', 'next-oversize', { cylinder, step: 0.25 }),
    ]);
    const bored = 'to 81.25–81.27\u00A0mm';
    expect(brief(decisions)).toEqual([
      ['outside', `Bore and hone cylinder 1 +0.25\u00A0mm, ${bored}`, 1000, 0, true],
      ['part', 'Piston, 0.25 oversize, D-680', 2000, 6740, false],
      ['part', 'Ring set, 0.25\u00A0mm oversize, D-680', 2000, 0, true],
      ['outside', `Bore and hone cylinder 2 +0.25\u00A0mm, ${bored}`, 1000, 0, true],
      ['part', 'Gasket set, D-680', 1000, 5460, false],
    ]);
    const notes = proposalsFrom(decisions, shop).map(({ note }) => note);
    expect(notes[1]).toBe(
      'Piston, cylinder 1: oversize piston. Piston, cylinder 2: oversize piston. The shelf holds fewer: order.',
    );
    expect(notes[2]).toMatch(/Price to be set\.$/);
    expect(notes[4]).toBe('The engine was open.');
  });

  it('from a head alone: its gasket and no set', () => {
    expect(brief([decided('head', 'resurface')])).toEqual([
      ['outside', 'Surface the head joint flat, cylinder 1', 1000, 0, true],
      ['part', 'Head gasket, D-680', 1000, 1380, false],
    ]);
  });

  it('from a honed bore: labour at the shop’s rate, its hours to be set', () => {
    expect(proposalsFrom([decided('cylinder', 'hone')], shop)[0]).toMatchObject({
      kind: 'labour',
      unit: 'h',
      unitPrice: 8500,
      note: 'Cylinder bore, cylinder 1: hone. One hour is written in: set the hours.',
    });
  });

  it('from a ground crankpin: the size it is ground to, and rods of that undersize', () => {
    expect(
      brief([
        decided('crankshaft', 'undersize', {
          cylinder: 0,
          step: 0.25,
          machineTo: { low: 33.7, high: 33.716 },
        }),
        decided('connecting-rod', 'undersize', { step: 0.25 }),
      ]).map(([, description]) => description),
    ).toEqual([
      'Grind crankpin −0.25\u00A0mm, to 33.70–33.716\u00A0mm',
      'Connecting rod, 0.25\u00A0mm undersize, D-680',
      'Gasket set, D-680',
    ]);
  });

  it('from short springs: two springs, and the head stays on', () => {
    expect(brief([decided('valve-springs', 'replace')])).toEqual([
      ['part', 'Valve spring, D-680', 2000, 0, true],
    ]);
  });

  it('from the valve train: what each part wants, and its gasket once', () => {
    expect(
      brief([
        decided('valves', 'reface'),
        decided('valve-guides', 'replace'),
        decided('valve-seats', 'cut'),
      ]),
    ).toEqual([
      ['outside', 'Reface valves, cylinder 1', 1000, 0, true],
      ['part', 'Valve guide, D-680', 2000, 0, true],
      ['outside', 'Fit and ream valve guides, cylinder 1', 1000, 0, true],
      [
        'outside',
        'Cut valve seats 30, 45 and 60 degrees and narrow them, cylinder 1',
        1000,
        0,
        true,
      ],
      ['part', 'Head gasket, D-680', 1000, 1380, false],
    ]);
  });

  it('from a coil: no gasket', () => {
    expect(brief([decided('coil', 'replace', { cylinder: 0 })])).toEqual([
      ['part', 'Ignition coil, D-680', 1000, 0, true],
    ]);
  });

  it('none while a stop stands anywhere', () => {
    expect(
      brief([decided('cylinder', 'next-oversize', oversize), decided('crankshaft', 'stop')]),
    ).toEqual([]);
  });

  it('of an exchanged engine: the exchange and nothing for its parts', () => {
    expect(
      brief([
        decided('cylinder', 'next-oversize', oversize),
        decided('engine', 'replace', { cylinder: 0 }),
      ]).map(([kind]) => kind),
    ).toEqual(['part', 'labour']);
  });
});
