import type { Machine } from '../../../shared/contract/counter/index.ts';
import { MACHINE_KIND_LABELS } from '../../../shared/work/vocabulary.ts';

type Named = Pick<Machine, 'kind' | 'make' | 'model'>;

/** Kind, make and model in one line. */
export const machineInWords = ({ kind, make, model }: Named): string =>
  [MACHINE_KIND_LABELS[kind], make, model].filter(Boolean).join(' ');

/** What the engine's plate says, in one line; empty when nothing of it is known. */
export const engineInWords = (engine: Machine['engine']): string =>
  [
    [engine.make, engine.model].filter(Boolean).join(' '),
    engine.typeCode && `type ${engine.typeCode}`,
    engine.serial && `serial ${engine.serial}`,
    engine.dateCode && `date code ${engine.dateCode}`,
  ]
    .filter(Boolean)
    .join(' · ');
