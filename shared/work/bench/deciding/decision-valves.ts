import type { Feature } from '../../features.ts';
import { standOf, tellingFigures } from './decision-figures.ts';
import {
  byFigures,
  doubt,
  type EngineFacts,
  figuresOf,
  none,
  sentences,
  spoken,
  standingOn,
} from './decision-grounds.ts';
import type { Advice } from './decision-rules.ts';

/** Advice on valves, and on their springs, guides and seats. Common practice, no source. */

export const STEMS: readonly Feature[] = ['valve-stem-intake', 'valve-stem-exhaust'];
export const SPRINGS: readonly Feature[] = ['valve-spring-length'];
export const GUIDES: readonly Feature[] = [
  'valve-guide-intake',
  'valve-guide-exhaust',
  'stem-clearance-intake',
  'stem-clearance-exhaust',
];
export const SEATS: readonly Feature[] = ['seat-width'];

const LOOK_AT_THEM =
  'Lash is set when it is built. Look at faces and margins: a face that is burnt, or a margin ground thin, wants a new valve. A leak-down test says where the air goes; a low cranking pressure alone condemns nothing.';

export function onValves(facts: EngineFacts, cylinder: number): Advice {
  const guides = standingOn(facts, { subject: 'valve-guides', cylinder });
  if (guides?.choice === 'ream')
    return spoken('replace', 'The guides are reamed: valves with stems of that oversize go in.');
  const figures = figuresOf(facts, STEMS, cylinder);
  if (figures.length === 0) return none(`No stem is measured as received. ${LOOK_AT_THEM}`);
  const advice = byFigures(figures, (worn) => spoken('replace', sentences(worn)));
  return { ...advice, reason: `${advice.reason} ${LOOK_AT_THEM}` };
}

export const onSprings = (facts: EngineFacts, cylinder: number): Advice =>
  byFigures(figuresOf(facts, SPRINGS, cylinder), (worn) =>
    spoken(
      'replace',
      `${sentences(worn)} A spring that has set is not stretched: a new one goes in.`,
    ),
  );

export function onGuides(facts: EngineFacts, cylinder: number): Advice {
  return byFigures(figuresOf(facts, GUIDES, cylinder), (worn) => {
    const why = sentences(worn);
    const bores = worn.some(({ feature }) => feature.startsWith('valve-guide'));
    const stems = tellingFigures(figuresOf(facts, STEMS, cylinder)).filter(
      (figure) => standOf(figure) === 'worn',
    );
    if (!bores && stems.length > 0)
      return doubt(`${why} The stem is worn too: try a new valve in the guide, and measure again.`);
    return spoken(
      'replace',
      `${why} A new guide where the model has one to press in; else ream it for an oversize stem, if the maker sells such a valve.`,
    );
  });
}

export function onSeats(facts: EngineFacts, cylinder: number): Advice {
  const guides = standingOn(facts, { subject: 'valve-guides', cylinder });
  if (guides?.choice === 'ream' || guides?.choice === 'replace')
    return spoken('cut', 'The guides are worked on: the seats are cut true to them afterwards.');
  const advice = byFigures(figuresOf(facts, SEATS, cylinder), (worn) =>
    spoken(
      'cut',
      `${sentences(worn)} A wide seat is narrowed from above and below, usually with cutters of 30 and 60 degrees about a face of 45; the maker’s angles come first. A seat that is loose, cracked or sunk is replaced.`,
    ),
  );
  return advice.choice === 'reuse'
    ? { ...advice, reason: `${advice.reason} Lap it where the contact is not even all round.` }
    : advice;
}
