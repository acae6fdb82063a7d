import { display } from '../../../trade/index.ts';
import type { Feature } from '../../features.ts';
import {
  figureSentence,
  type PartFigure,
  soundSentence,
  standOf,
  tellingFigures,
  withoutCylinder,
} from './decision-figures.ts';
import type { Advice, DecisionPart } from './decision-rules.ts';
import type { DecisionChoice } from './decisions.ts';

/** What advice is taken from, and the rule that all of it goes by. */

/** A decision that stands. */
export interface StandingDecision extends DecisionPart {
  choice: DecisionChoice;
  step: number | null;
}

export interface EngineFacts {
  /** Figures as received. */
  figures: readonly PartFigure[];
  /** Diameter of a new bore, mm; null when the spec book doesn't know it. */
  nominalBore: number | null;
  /** Places of one bore that are to be measured. */
  borePlaces: number;
  /** Largest diameter of a new crankpin, mm; null when the spec book doesn't know it. */
  newCrankpin: number | null;
  /** Steps that are to be had, mm. */
  oversizes: readonly number[];
  undersizes: readonly number[];
  /** Stock on the diameter for cleaning up, mm. */
  allowance: number;
  /** Every part of this engine that is decided on. */
  parts: readonly DecisionPart[];
  standing: readonly StandingDecision[];
}

export const none = (reason: string): Advice => ({
  choice: null,
  step: null,
  reason,
  grounds: 'none',
});
export const doubt = (reason: string): Advice => ({
  choice: null,
  step: null,
  reason,
  grounds: 'doubt',
});
export const spoken = (
  choice: DecisionChoice,
  reason: string,
  step: number | null = null,
): Advice => ({
  choice,
  step,
  reason,
  grounds: 'figures',
});

export const sentences = (figures: readonly PartFigure[]): string =>
  figures.map(figureSentence).join(' ');

/** The figures of some features, of one cylinder; of all of them for what an engine has once. */
export const figuresOf = (
  { figures }: Pick<EngineFacts, 'figures'>,
  features: readonly Feature[],
  cylinder: number,
) =>
  cylinder === 0
    ? figures.filter(({ feature }) => features.includes(feature))
    : figures
        .filter((figure) => features.includes(figure.feature) && figure.cylinder === cylinder)
        .map(withoutCylinder);

/** Sound: reuse. Worn: what mends it. Doubtful: what would settle it. */
export function byFigures(
  figures: readonly PartFigure[],
  mend: (worn: PartFigure[]) => Advice,
): Advice {
  if (figures.length === 0) return none('Nothing of it is measured as received yet.');
  const telling = tellingFigures(figures);
  const standing = (stand: ReturnType<typeof standOf>) =>
    telling.filter((figure) => standOf(figure) === stand);
  const worn = standing('worn');
  if (worn.length > 0) return mend(worn);
  const odd = standing('odd');
  if (odd.length > 0) return doubt(`${sentences(odd)} Measure again, and look which size it is.`);
  const close = standing('close');
  if (close.length > 0)
    return doubt(
      `${sentences(close)} A finer gauge or more readings settle it; until then it may be worn.`,
    );
  const sound = standing('sound');
  return sound.length > 0 ? spoken('reuse', soundSentence(sound)) : none(sentences(telling));
}

export const over = (step: number): string => `+${display(step, 'mm')}`;
export const under = (step: number): string => `−${display(step, 'mm')}`;

export const standingOn = ({ standing }: EngineFacts, { subject, cylinder }: DecisionPart) =>
  standing.find((each) => each.subject === subject && each.cylinder === cylinder);
