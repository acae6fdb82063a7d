import { display } from '../../../trade/index.ts';
import type { Feature } from '../../features.ts';
import {
  byFigures,
  doubt,
  type EngineFacts,
  figuresOf,
  sentences,
  spoken,
} from './decision-grounds.ts';
import type { Advice } from './decision-rules.ts';

/** Advice on the joint between cylinder and head. */

export const JOINT: readonly Feature[] = ['head-flatness', 'deck-flatness'];

/**
 * mm out of flat that surfacing still mends: more makes the chamber too small, and a valve or piston may
 * touch. Common practice, no source; the maker’s limit comes first.
 */
const MOST_TO_SURFACE = 0.25;

const WHY_NOT_MORE = `Common practice takes off no more than ${display(MOST_TO_SURFACE, 'mm')}: the chamber gets smaller, and valves and piston come closer. The maker’s manual comes first.`;

export function onHead(facts: EngineFacts, cylinder: number): Advice {
  return byFigures(figuresOf(facts, JOINT, cylinder), (worn) => {
    const past = worn.filter(({ value }) => value > MOST_TO_SURFACE);
    const why = sentences(worn);
    if (past.some(({ feature }) => feature === 'deck-flatness'))
      return doubt(
        `${why} That is the deck of the cylinder, which a new head does not mend: another cylinder, or what the maker lets be machined. ${WHY_NOT_MORE}`,
      );
    return past.length > 0
      ? spoken('replace', `${why} Too much to surface. ${WHY_NOT_MORE}`)
      : spoken('resurface', `${why} Take off as little as cleans it up. ${WHY_NOT_MORE}`);
  });
}
