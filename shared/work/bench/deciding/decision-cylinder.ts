import { display } from '../../../trade/index.ts';
import type { Feature } from '../../features.ts';
import { standOf, tellingFigures } from './decision-figures.ts';
import {
  byFigures,
  doubt,
  type EngineFacts,
  figuresOf,
  none,
  over,
  sentences,
  spoken,
  standingOn,
} from './decision-grounds.ts';
import type { Advice } from './decision-rules.ts';
import { nextOversize } from './decision-sizes.ts';

/** Advice on the bore, and on the piston and rings that go with it. */

export const BORE: readonly Feature[] = ['bore', 'bore-taper', 'bore-out-of-round', 'bore-wear'];

function mendBore(facts: EngineFacts, cylinder: number, why: string): Advice {
  const { nominalBore, oversizes, allowance } = facts;
  if (nominalBore === null)
    return doubt(`${why} The spec book has no nominal bore, so no oversize can be worked out.`);
  const bores = figuresOf(facts, ['bore'], cylinder).map(({ value }) => value);
  const step = nextOversize(bores, nominalBore, oversizes, allowance);
  const largest = display(Math.max(...bores), 'mm');
  const stock = `${display(allowance, 'mm')} to take off`;
  const tried = bores.length < facts.borePlaces ? measuredSoFar(bores.length, facts) : '';
  return step === null
    ? spoken(
        'replace',
        `${why} No oversize up to ${over(Math.max(...oversizes))} cleans up ${largest} with ${stock}.${tried}`,
      )
    : spoken(
        'next-oversize',
        `${why} ${over(step)} is the smallest oversize that cleans up ${largest} with ${stock}.${tried}`,
        step,
      );
}

const measuredSoFar = (measured: number, { borePlaces }: EngineFacts): string =>
  ` Measured at ${measured} of ${borePlaces} places: the others may be worn more.`;

export function onBore(facts: EngineFacts, cylinder: number): Advice {
  const advice = byFigures(figuresOf(facts, BORE, cylinder), (worn) =>
    mendBore(facts, cylinder, sentences(worn)),
  );
  if (advice.choice !== 'reuse') return advice;
  const bores = figuresOf(facts, ['bore'], cylinder);
  if (bores.length < facts.borePlaces)
    return none(`${advice.reason}${measuredSoFar(bores.length, facts)}`);
  return spoken(
    'hone',
    `${advice.reason} Hone it lightly for new rings; reuse it as it is if the old rings go back.`,
  );
}

/** Where the bore of a cylinder goes: as decided, else as advised. */
function boreCourse(facts: EngineFacts, cylinder: number) {
  const decided = standingOn(facts, { subject: 'cylinder', cylinder });
  const course = decided ?? onBore(facts, cylinder);
  const by = decided === undefined ? 'is advised' : 'is decided';
  return { ...course, by };
}

export function onPiston(facts: EngineFacts, cylinder: number): Advice {
  const bore = boreCourse(facts, cylinder);
  if (bore.choice === 'next-oversize' && bore.step !== null)
    return spoken(
      'next-oversize',
      `Goes with the bore, for which ${over(bore.step)} ${bore.by}.`,
      bore.step,
    );
  return byFigures(figuresOf(facts, ['piston-skirt', 'piston-clearance'], cylinder), (worn) =>
    spoken('replace', sentences(worn)),
  );
}

/** Common practice, no source. */
const FILE_IT =
  'Rings that have run do not close up: see that it sits square, without carbon behind it, and is the right ring. Then file the ends square to the gap, a little at a time, burr off; a gap that closes when hot breaks the ring or scores the bore.';

export const RINGS: readonly Feature[] = ['ring-end-gap', 'ring-side-clearance'];

export function onRings(facts: EngineFacts, cylinder: number): Advice {
  const bore = boreCourse(facts, cylinder);
  if (bore.choice === 'next-oversize' && bore.step !== null)
    return spoken(
      'next-oversize',
      `Go with the bore, for which ${over(bore.step)} ${bore.by}.`,
      bore.step,
    );
  if (bore.choice === 'hone')
    return spoken('replace', `For the bore honing ${bore.by}: a honed bore wants new rings.`);
  const figures = figuresOf(facts, RINGS, cylinder);
  const tight = tellingFigures(figures).filter(
    (figure) => figure.feature === 'ring-end-gap' && standOf(figure) === 'odd',
  );
  if (tight.length > 0 && tellingFigures(figures).every((figure) => standOf(figure) !== 'worn'))
    return spoken('file', `${sentences(tight)} ${FILE_IT}`);
  return byFigures(figures, (worn) => {
    const gap = worn.some(({ feature }) => feature === 'ring-end-gap')
      ? ' Try a new ring in the bore: if its gap is too large as well, it is the wrong ring or the bore is worn.'
      : '';
    const groove = worn.some(({ feature }) => feature === 'ring-side-clearance')
      ? ' Try a new ring in the groove: if it is loose there too, the groove is worn and the piston goes.'
      : '';
    return spoken('replace', `${sentences(worn)}${gap}${groove}`);
  });
}
