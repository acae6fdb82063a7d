import { holdPointEventsOf } from '../../../db/queries/bench.ts';
import { dossierOf } from '../../../db/queries/counter/jobs.ts';
import { standingDecisions } from '../../../db/queries/decisions.ts';
import { testRunsOf } from '../../../db/queries/test-runs.ts';
import type { ReadStore } from '../../../db/store.ts';
import type { JobDossier, LeavingWords } from '../../../shared/contract/counter/index.ts';
import { holdPointState } from '../../../shared/work/bench/hold-points.ts';
import { careAdvice, wantsRunningIn, whyNotToRun } from '../../../shared/work/care-advice.ts';
import { handoverCautions, LOCAL_LAW, NOT_TO_BE_RUN } from '../../../shared/work/cautions.ts';
import { engineOf, seemsOf, stepsOfJob } from '../bench/job-steps.ts';
import { os } from '../implementer.ts';
import { found } from '../refuse.ts';

/** What a customer is told when the machine goes home: by its kind, its engine, and what was done to it. */
export function leavingWords(store: ReadStore, job: JobDossier): LeavingWords {
  const [lastRun = null] = testRunsOf(store, job.id);
  const doNotRun = whyNotToRun(job.doNotRun, lastRun);
  const cautions = [...handoverCautions(job.machineDetails.kind), LOCAL_LAW];
  if (doNotRun !== '') return { doNotRun, advice: [], cautions: [NOT_TO_BE_RUN, ...cautions] };
  return { doNotRun, advice: job.state === 'stopped' ? [] : adviceFor(store, job), cautions };
}

function adviceFor(store: ReadStore, job: JobDossier): string[] {
  const { cycle, fuelRatio } = engineOf(store, job.machineDetails.engine.engineModelId);
  const events = holdPointEventsOf(store, job.id);
  const passed = (key: string) => holdPointState(key, events) === 'passed';
  const { work } = stepsOfJob(store, job);
  const seems = seemsOf(store, job.id);
  return careAdvice({
    cycle,
    fuelRatio,
    renewed: wantsRunningIn(standingDecisions(store, job.id), { work, seems }),
    headOpened: passed('head-bolts'),
    oilFilled: passed('oil'),
  });
}

export const leaving = os.counter.leaving.handler(({ input: { jobId }, context: { store } }) =>
  leavingWords(store.read, found(dossierOf(store.read, jobId), 'job')),
);
