import { DEMO_ENGINES } from '../../../db/demo/engines/index.ts';
import { scatter } from '../../../db/demo/random.ts';
import { runDemands } from '../../../shared/work/bench/run-safety.ts';
import type { RunFeature } from '../../../shared/work/features.ts';
import type { Cycle, MachineKind } from '../../../shared/work/vocabulary.ts';
import type { BenchJob } from './bench-work.ts';
import { idOf, type OpenShop } from './set-up.ts';

/** Machines of the demo that have something that guards whoever drives or pushes them. */
const GUARDED: readonly MachineKind[] = ['tiller', 'mower', 'riding-mower', 'snow-thrower'];

/** Where the book says nothing, rpm: what an engine of this cycle runs at. Invented. */
const SPEEDS = {
  'four-stroke': { 'idle-speed': 1750, 'top-speed': 3600 },
  'two-stroke': { 'idle-speed': 2750, 'top-speed': 11_650 },
} as const;

/** Why a machine of the demo has no interlock or no governor, where such machines may have them. */
const notFittedWhy = (machine: MachineKind, cycle: Cycle): string => {
  const { interlocks, governor } = runDemands(machine, cycle);
  const lacks = (interlocks === 'ask' && !GUARDED.includes(machine)) || governor === 'ask';
  return lacks ? 'Built without it by its maker' : '';
};

/** The engine runs before it is called ready: what was built passes, and leaks as little as a good one. */
export async function runEngine(
  { desk, gauges }: OpenShop,
  { jobId, by, engine, machine, seed }: BenchJob,
): Promise<void> {
  const { cycle, cylinders, specifications } = DEMO_ENGINES[engine];
  const random = scatter(`${seed} run`);
  const { bladeStop } = runDemands(machine, cycle);
  // Near the middle of what the book allows, as somebody who sets it by tachometer leaves it.
  const speed = (feature: RunFeature) => {
    const { low = '', high = '' } = specifications[feature] ?? {};
    const middle = (Number(low) + Number(high)) / 2;
    const aim = low === '' || high === '' ? SPEEDS[cycle][feature] : middle;
    return Math.round(aim / 10 + (random() - 0.5) * 6) * 10;
  };
  await desk.bench.recordTestRun({
    by,
    jobId,
    findings: {
      idleSpeed: speed('idle-speed'),
      topSpeed: speed('top-speed'),
      leakDown: Array.from({ length: cylinders }, () => ({
        percent: 6 + Math.round(random() * 9),
        path: 'crankcase' as const,
      })),
      stopSwitch: 'works',
      interlocks: GUARDED.includes(machine) ? 'works' : 'not-fitted',
      governor: cycle === 'four-stroke' ? 'works' : 'not-fitted',
      fuelTight: 'works',
      chainBrake: machine === 'chainsaw' ? 'works' : null,
      bladeStop: bladeStop === null ? null : Math.round(bladeStop * (6 + random() * 2)) / 10,
      notFittedWhy: notFittedWhy(machine, cycle),
      tachometer: idOf(gauges, 'tachometer'),
      note: 'Ran for twenty minutes, dry all round.',
    },
    passed: true,
  });
}
