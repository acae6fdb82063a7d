import type { Cycle, MachineKind, ValveLayout } from '../../vocabulary.ts';
import type { BuildStep } from '../build-steps.ts';
import type { WorkArea } from '../work/kinds-of-work.ts';

type Named = 'key' | 'kind' | 'label';

/** A step that every build has, as far as the engine and the machine are such as it is meant for. */
export interface UsualStep extends Pick<BuildStep, Named>, Partial<Omit<BuildStep, Named>> {
  /** What has to be touched for it to be done; `always` for every job on the bench. */
  areas: readonly WorkArea[] | 'always';
  /** Of engines of this cycle only. */
  cycle?: Cycle;
  /** Of engines whose valves stand so. */
  valves?: ValveLayout;
  /** Of engines whose valves do not stand so, be they known or not. */
  notValves?: ValveLayout;
  /** Of engines with more than one cylinder. */
  several?: true;
  /** Of machines of these kinds. */
  machines?: readonly MachineKind[];
}

export const EARTH_THE_LEAD = 'Plug lead off and earthed before the engine is turned by hand.';
