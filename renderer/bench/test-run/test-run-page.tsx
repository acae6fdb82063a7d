import { Alert, Stack } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { TestRuns } from '../../../shared/contract/bench/index.ts';
import { deskQuery } from '../../common/desk.ts';
import { useJob } from '../../common/job.tsx';
import { Page, QueryView } from '../../common/page.tsx';
import { EarlierRuns } from './earlier-runs.tsx';
import { PassedRun } from './passed-run.tsx';
import { RunCautions } from './run-cautions.tsx';
import { TestRunForm } from './test-run-form.tsx';

/** The engine runs: what it showed, signed off by whoever ran it. */
export function TestRunPage() {
  const job = useJob();
  const runs = useQuery(deskQuery.bench.testRuns.queryOptions({ input: { jobId: job.id } }));
  return (
    <Page title="Test run" description="Warmed up, tried and signed off by whoever ran it.">
      <QueryView query={runs}>
        {(state) => (
          <Stack gap="md">
            <RunCautions />
            {state.closed ? (
              <Alert color="gray" title="The job was handed over">
                Its record is closed: everything can be read, nothing added.
              </Alert>
            ) : (
              <NextRun key={state.runs[0]?.id ?? 'first'} state={state} />
            )}
            <EarlierRuns runs={state.runs} />
          </Stack>
        )}
      </QueryView>
    </Page>
  );
}

/** The form of the next run; after one that passed only when another is wanted. */
function NextRun({ state }: { readonly state: TestRuns }) {
  const [again, setAgain] = useState(false);
  const [latest] = state.runs;
  if (latest?.passed === true && !again)
    return <PassedRun run={latest} onAgain={() => setAgain(true)} />;
  return <TestRunForm state={state} />;
}
