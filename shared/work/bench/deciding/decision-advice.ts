import type { Feature } from '../../features.ts';
import { MAINS, onCrankshaft, onRod, PIN } from './decision-crankshaft.ts';
import { BORE, onBore, onPiston, onRings, RINGS } from './decision-cylinder.ts';
import { type PartFigure, tellingFigures } from './decision-figures.ts';
import {
  byFigures,
  type EngineFacts,
  figuresOf,
  none,
  sentences,
  spoken,
} from './decision-grounds.ts';
import { JOINT, onHead } from './decision-head.ts';
import type { Advice, DecisionPart } from './decision-rules.ts';
import {
  GUIDES,
  onGuides,
  onSeats,
  onSprings,
  onValves,
  SEATS,
  SPRINGS,
  STEMS,
} from './decision-valves.ts';
import { DECISION_SUBJECT_LABELS } from './decisions.ts';

/** What the figures as received come to for each part. Advice, with its reason; a person decides. */

function onEngine({ parts, standing }: EngineFacts): Advice {
  const stopped = standing.find(({ subject, choice }) => subject !== 'engine' && choice === 'stop');
  if (stopped !== undefined)
    return spoken(
      'stop',
      `A stop stands on ${DECISION_SUBJECT_LABELS[stopped.subject].toLowerCase()}.`,
    );
  const open = parts.filter(
    (part) =>
      part.subject !== 'engine' &&
      !standing.some(
        ({ subject, cylinder }) => subject === part.subject && cylinder === part.cylinder,
      ),
  ).length;
  return open === 0
    ? spoken('reuse', 'Every part has its decision and none of them is to stop.')
    : none(
        `${open} ${open === 1 ? 'part is' : 'parts are'} not decided yet. Weigh the sum of the estimate against what the machine is worth.`,
      );
}

/** What the figures come to for one part. */
export function adviceOn({ subject, cylinder }: DecisionPart, facts: EngineFacts): Advice {
  switch (subject) {
    case 'cylinder':
      return onBore(facts, cylinder);
    case 'piston':
      return onPiston(facts, cylinder);
    case 'rings':
      return onRings(facts, cylinder);
    case 'crankshaft':
      return onCrankshaft(facts);
    case 'connecting-rod':
      return onRod(facts, cylinder);
    case 'valves':
      return onValves(facts, cylinder);
    case 'valve-springs':
      return onSprings(facts, cylinder);
    case 'valve-guides':
      return onGuides(facts, cylinder);
    case 'valve-seats':
      return onSeats(facts, cylinder);
    case 'head':
      return onHead(facts, cylinder);
    case 'coil':
      return byFigures(figuresOf(facts, ['coil-resistance'], cylinder), (worn) =>
        spoken('replace', sentences(worn)),
      );
    case 'engine':
      return onEngine(facts);
  }
}

const SHOWN: Record<DecisionPart['subject'], readonly Feature[]> = {
  cylinder: BORE,
  piston: ['piston-skirt', 'piston-clearance'],
  rings: RINGS,
  crankshaft: [...PIN, ...MAINS, 'crankshaft-end-play'],
  'connecting-rod': ['rod-big-end', 'rod-clearance'],
  valves: [...STEMS, 'valve-lash-intake', 'valve-lash-exhaust', 'compression'],
  'valve-springs': SPRINGS,
  'valve-guides': GUIDES,
  'valve-seats': SEATS,
  head: JOINT,
  coil: ['coil-resistance'],
  engine: [],
};

/** The figures that belong beside a decision: one a feature, the one that asks for most attention. */
export function figuresBeside(
  { subject, cylinder }: DecisionPart,
  facts: Pick<EngineFacts, 'figures'>,
): PartFigure[] {
  const shown = SHOWN[subject];
  return tellingFigures(figuresOf(facts, shown, cylinder)).toSorted(
    (a, b) => shown.indexOf(a.feature) - shown.indexOf(b.feature) || a.cylinder - b.cylinder,
  );
}
