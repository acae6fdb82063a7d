import { useQuery } from '@tanstack/react-query';
import { useSearchParams } from 'react-router';
import type { Build } from '../../../shared/contract/bench/index.ts';
import { deskQuery } from '../../common/desk.ts';
import { useJob } from '../../common/job.tsx';
import { Empty, Page, QueryView } from '../../common/page.tsx';
import { Cautions } from '../cautions.tsx';
import classes from './build.module.css';
import { StepList } from './step-list.tsx';
import { StepPanel } from './step-panel.tsx';
import { WorkChoice } from './work-choice.tsx';

const ORIGIN_WORDS: Record<Build['origin'], string> = {
  model: 'by the build sheet of this engine',
  family: 'by the build sheet of its family',
  shop: 'by the shop’s build sheet',
  usual: 'by the usual steps',
};

/** The build of a job: its steps in order, the one that is due large. */
export function BuildPage() {
  const { id: jobId } = useJob();
  const build = useQuery(deskQuery.bench.build.queryOptions({ input: { jobId } }));
  return (
    <Page title="Build" description={build.data === undefined ? undefined : summaryOf(build.data)}>
      <QueryView query={build}>{(data) => <Steps build={data} />}</QueryView>
    </Page>
  );
}

function summaryOf({ steps, origin }: Build): string {
  const open = steps.filter(({ state }) => state === 'open');
  const held = open.filter(({ hold }) => hold).length;
  const done = `${steps.length - open.length} of ${steps.length} steps done`;
  const still =
    held === 0 ? 'no hold point is open' : `${held} hold point${held === 1 ? '' : 's'} open`;
  return `${done}, ${still}; ${ORIGIN_WORDS[origin]}.`;
}

function Steps({ build }: { readonly build: Build }) {
  const [parameters, setParameters] = useSearchParams();
  const due = build.steps.find(({ state }) => state === 'open');
  const step = build.steps.find(({ key }) => key === parameters.get('step')) ?? due;
  const go = (key: string | null) => setParameters(key === null ? {} : { step: key });
  return (
    <div className={classes.page}>
      <Cautions />
      <WorkChoice build={build} />
      <div className={classes.layout}>
        <StepList steps={build.steps} due={due?.key ?? null} at={step?.key ?? null} onGo={go} />
        {step === undefined ? (
          <Empty
            title="Every step is done"
            hint="Choose a step of the list to read how it was done, or to reopen it."
          />
        ) : (
          <StepPanel
            key={step.key}
            build={build}
            step={step}
            due={due ?? null}
            onDone={() => {
              // Whoever is somewhere else by the time it is written is not fetched back.
              const { pathname, search } = window.location;
              const still = new URLSearchParams(search).get('step') === step.key;
              if (still && pathname.endsWith('/bench/build')) go(null);
            }}
            onGo={go}
          />
        )}
      </div>
    </div>
  );
}
