import type { Feature } from '../../features.ts';
import { standOf, tellingFigures } from './decision-figures.ts';
import {
  byFigures,
  type EngineFacts,
  figuresOf,
  sentences,
  spoken,
  standingOn,
  under,
} from './decision-grounds.ts';
import type { Advice } from './decision-rules.ts';
import { nextUndersize } from './decision-sizes.ts';

/** Advice on the crankshaft, and on the connecting rods that go with it. */

export const PIN: readonly Feature[] = ['crankpin', 'crankpin-out-of-round'];
export const MAINS: readonly Feature[] = ['main-journal', 'main-journal-out-of-round'];

function mendPin(facts: EngineFacts, why: string): Advice {
  const { newCrankpin, undersizes, allowance } = facts;
  const pins = figuresOf(facts, ['crankpin'], 0).map(({ value }) => value);
  const step =
    newCrankpin === null ? null : nextUndersize(pins, newCrankpin, undersizes, allowance);
  return step === null
    ? spoken('replace', `${why} No usual undersize cleans it up.`)
    : spoken(
        'undersize',
        `${why} ${under(step)} is the smallest undersize that cleans up, if a rod for it is to be had; else replace.`,
        step,
      );
}

export function onCrankshaft(facts: EngineFacts): Advice {
  const advice = byFigures(figuresOf(facts, [...PIN, ...MAINS], 0), (worn) =>
    worn.some(({ feature }) => MAINS.includes(feature))
      ? spoken('replace', sentences(worn))
      : mendPin(facts, sentences(worn)),
  );
  const play = tellingFigures(figuresOf(facts, ['crankshaft-end-play'], 0)).filter(
    (figure) => standOf(figure) !== 'sound',
  );
  return play.length === 0
    ? advice
    : {
        ...advice,
        reason: `${advice.reason} ${sentences(play)} End play is set by shim or gasket when it is built.`,
      };
}

export function onRod(facts: EngineFacts, cylinder: number): Advice {
  const decided = standingOn(facts, { subject: 'crankshaft', cylinder: 0 });
  const crank = decided ?? onCrankshaft(facts);
  if (crank.choice === 'undersize' && crank.step !== null)
    return spoken(
      'undersize',
      `Goes with the crankpin, for which ${under(crank.step)} ${decided === undefined ? 'is advised' : 'is decided'}.`,
      crank.step,
    );
  // The clearance on a crankpin that goes says nothing of the rod.
  const features: Feature[] =
    crank.choice === 'replace' ? ['rod-big-end'] : ['rod-big-end', 'rod-clearance'];
  return byFigures(figuresOf(facts, features, cylinder), (worn) =>
    spoken('replace', sentences(worn)),
  );
}
