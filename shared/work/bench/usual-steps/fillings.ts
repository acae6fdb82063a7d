import { display } from '../../../trade/index.ts';
import type { BuildStep } from '../build-steps.ts';

/** What an engine is filled and fitted with, as the spec book has it. */
export interface Fillings {
  /** ml */
  oilAmount: number | null;
  oilGrade: string;
  /** Parts of fuel to one of oil. */
  fuelRatio: number | null;
  plug: string;
}

const BY_THE_BOOK: Partial<Record<string, (fillings: Fillings) => string>> = {
  oil: ({ oilGrade, oilAmount }) =>
    [oilGrade, oilAmount === null ? '' : display(oilAmount, 'ml')].filter(Boolean).join(', '),
  'fuel-mix': ({ fuelRatio, oilGrade }) =>
    fuelRatio === null ? '' : [`${fuelRatio}:1`, oilGrade].filter(Boolean).join(', '),
  'plug-gap': ({ plug }) => plug,
};

/** The steps that fill and fit something, each with what the spec book says of it. */
export const withFillings = (steps: readonly BuildStep[], fillings: Fillings): BuildStep[] =>
  steps.map((step) => {
    const told = BY_THE_BOOK[step.key]?.(fillings) ?? '';
    if (told === '') return step;
    return { ...step, note: [`The spec book: ${told}.`, step.note].filter(Boolean).join(' ') };
  });
