import { Button } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { deskQuery } from '../common/desk.ts';
import { useJob } from '../common/job.tsx';
import { Page, QueryView } from '../common/page.tsx';
import { BenchView } from './bench-view.tsx';
import { ChooseEngine } from './choose-engine.tsx';

/** The bench of one job: its engine is chosen, measured, and built past its hold points. */
export function BenchPage() {
  const job = useJob();
  const sheet = useQuery(deskQuery.bench.sheet.queryOptions({ input: { jobId: job.id } }));
  const [changing, setChanging] = useState(false);
  const model = sheet.data?.engineModel ?? null;
  const choosing = changing || model === null;
  return (
    <Page
      title="Bench"
      description={model === null ? undefined : `Measured against ${model.make} ${model.model}`}
      actions={
        model === null || sheet.data?.closed === true ? undefined : (
          <Button variant="default" onClick={() => setChanging(!changing)}>
            {changing ? `Stay with ${model.model}` : 'Another engine'}
          </Button>
        )
      }
    >
      <QueryView query={sheet}>
        {(data) =>
          choosing || data.engineModel === null ? (
            <ChooseEngine job={job} onDone={() => setChanging(false)} />
          ) : (
            <BenchView sheet={data} engineModelId={data.engineModel.id} jobCode={job.code} />
          )
        }
      </QueryView>
    </Page>
  );
}
