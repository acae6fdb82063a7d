import { DEMO_ENGINES } from '../../../db/demo/engines/index.ts';
import { scatter } from '../../../db/demo/random.ts';
import type { MachineKind } from '../../../shared/work/vocabulary.ts';
import type { BenchJob } from './bench-work.ts';
import type { OpenShop } from './set-up.ts';

/** Machines of the demo that have something that guards whoever drives or pushes them. */
const GUARDED: readonly MachineKind[] = ['tiller', 'mower', 'riding-mower', 'snow-thrower'];

/** Invented speeds, rpm: what an engine of this cycle runs at. */
const SPEEDS = {
  'four-stroke': { idle: 1700, top: 3550 },
  'two-stroke': { idle: 2700, top: 11_600 },
} as const;

/** The engine runs before it is called ready: what was built passes, and leaks as little as a good one. */
export async function runEngine(
  { desk }: OpenShop,
  { jobId, by, engine, seed }: BenchJob,
  kind: MachineKind,
): Promise<void> {
  const { cycle, cylinders } = DEMO_ENGINES[engine];
  const random = scatter(`${seed} run`);
  const speed = (about: number) => about + Math.round(random() * 10) * 10;
  await desk.bench.recordTestRun({
    by,
    jobId,
    findings: {
      idleSpeed: speed(SPEEDS[cycle].idle),
      topSpeed: speed(SPEEDS[cycle].top),
      leakDown: Array.from({ length: cylinders }, () => ({
        percent: 6 + Math.round(random() * 9),
        path: 'crankcase' as const,
      })),
      stopSwitch: 'works',
      interlocks: GUARDED.includes(kind) ? 'works' : 'not-fitted',
      governor: cycle === 'four-stroke' ? 'works' : 'not-fitted',
      note: 'Ran for twenty minutes, dry all round.',
    },
    passed: true,
  });
}
