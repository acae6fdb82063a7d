import { Anchor, SegmentedControl } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { Link } from 'react-router';
import { PHASE_LABELS, PHASES } from '../../shared/work/vocabulary.ts';
import { ClearanceSheetButton } from '../common/clearance-sheet-button.tsx';
import { deskQuery } from '../common/desk.ts';
import { useJob } from '../common/job.tsx';
import { Page, QueryView } from '../common/page.tsx';
import classes from './bench.module.css';
import { usePhase } from './bench-habits.ts';
import { BenchView } from './bench-view.tsx';
import { ChooseEngine } from './choose-engine.tsx';

/** The bench of one job: its engine is chosen, measured, and built past its hold points. */
export function BenchPage() {
  const job = useJob();
  const sheet = useQuery(deskQuery.bench.sheet.queryOptions({ input: { jobId: job.id } }));
  const [changing, setChanging] = useState(false);
  const [phase, setPhase] = usePhase();
  const model = sheet.data?.engineModel ?? null;
  const choosing = changing || model === null;
  return (
    <Page
      title="Measure"
      description={
        model !== null && (
          <>
            Against{' '}
            <Anchor component={Link} to={`/spec-book/${model.id}?for=${job.code}`} inherit>
              {model.make} {model.model}
            </Anchor>
            {sheet.data?.closed === false && (
              <>
                {' · '}
                <Anchor
                  component="button"
                  type="button"
                  inherit
                  onClick={() => setChanging(!changing)}
                >
                  {changing ? `Stay with ${model.model}` : 'Another engine'}
                </Anchor>
              </>
            )}
            {' · '}
            <Anchor component={Link} to={`/engine/${job.machineDetails.engine.id}`} inherit>
              Engine’s life
            </Anchor>
            {' · '}
            <ClearanceSheetButton jobId={job.id} inText />
          </>
        )
      }
      actions={
        choosing ? undefined : (
          <SegmentedControl
            aria-label="Phase"
            value={phase}
            onChange={setPhase}
            data={PHASES.map((each) => ({ value: each, label: PHASE_LABELS[each] }))}
            size="md"
            classNames={{ label: classes.segment }}
          />
        )
      }
    >
      <QueryView query={sheet}>
        {(data) =>
          choosing || data.engineModel === null ? (
            <ChooseEngine job={job} onDone={() => setChanging(false)} />
          ) : (
            <BenchView
              sheet={data}
              engineModelId={data.engineModel.id}
              jobCode={job.code}
              phase={phase}
            />
          )
        }
      </QueryView>
    </Page>
  );
}
