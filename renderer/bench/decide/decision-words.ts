import type { Decision } from '../../../shared/contract/bench/index.ts';
import { display, displayNumber } from '../../../shared/trade/index.ts';

/** '+0.25 mm' for an oversize, '−0.25 mm' for an undersize. */
export const stepWords = (choice: Decision['choice'], step: number): string =>
  `${choice === 'undersize' ? '−' : '+'}${display(step, 'mm')}`;

/** '81.25–81.27 mm'. */
export const sizeWords = ({ low, high }: NonNullable<Decision['machineTo']>): string =>
  low === high ? display(low, 'mm') : `${displayNumber(low, 'mm')}–${display(high, 'mm')}`;

/** 'Next oversize +0.25 mm, to 81.25–81.27 mm'. */
export const decisionWords = ({ choice, choiceLabel, step, machineTo }: Decision): string =>
  [
    step === null ? choiceLabel : `${choiceLabel} ${stepWords(choice, step)}`,
    machineTo === null ? '' : `to ${sizeWords(machineTo)}`,
  ]
    .filter(Boolean)
    .join(', ');
