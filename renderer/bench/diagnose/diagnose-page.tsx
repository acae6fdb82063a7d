import { Alert, Stack, Text } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { flushSync } from 'react-dom';
import type { Diagnosis } from '../../../shared/contract/bench/index.ts';
import { CHECKS, type Check } from '../../../shared/work/bench/diagnosis.ts';
import { Card } from '../../common/card.tsx';
import { deskQuery } from '../../common/desk.ts';
import { useJob } from '../../common/job.tsx';
import { Page, QueryView } from '../../common/page.tsx';
import classes from '../bench.module.css';
import { Cautions } from '../cautions.tsx';
import { ProposedLines } from '../proposed-lines.tsx';
import { CheckList } from './check-list.tsx';
import { CheckPanel } from './check-panel.tsx';
import { standingOn } from './finding-draft.ts';

/** What is wrong with it, before anything is taken apart: check by check, and what it takes. */
export function DiagnosePage() {
  const job = useJob();
  const query = useQuery(deskQuery.bench.diagnosis.queryOptions({ input: { jobId: job.id } }));
  return (
    <Page
      title="Diagnose"
      description={query.data === undefined ? undefined : progress(query.data, job.complaint)}
    >
      <QueryView query={query}>
        {(diagnosis) => <Checks key={job.id} diagnosis={diagnosis} />}
      </QueryView>
    </Page>
  );
}

const isOpen = (diagnosis: Diagnosis) => (check: Check) =>
  standingOn(diagnosis, check).length === 0;

function progress(diagnosis: Diagnosis, complaint: string): string {
  const done = CHECKS.filter((check) => !isOpen(diagnosis)(check)).length;
  return `${done} of ${CHECKS.length} checks noted. The complaint: ${complaint}`;
}

function Checks({ diagnosis }: { readonly diagnosis: Diagnosis }) {
  const [at, setAt] = useState<Check>(() => CHECKS.find(isOpen(diagnosis)) ?? 'turning');
  // The work goes on at the next check that nobody looked at, else it stays.
  const goOn = (noted: Diagnosis) => {
    const place = CHECKS.indexOf(at);
    const next = [...CHECKS.slice(place + 1), ...CHECKS.slice(0, place)].find(isOpen(noted));
    flushSync(() => setAt(next ?? at));
    document.querySelector<HTMLElement>(`[data-check="${next ?? at}"]`)?.focus();
  };
  return (
    <Stack gap="md">
      <Cautions />
      {diagnosis.closed && (
        <Alert color="gray" title="The job was handed over">
          Its record is closed: everything can be read, nothing added.
        </Alert>
      )}
      <div className={classes.layout}>
        <CheckList diagnosis={diagnosis} at={at} onGo={setAt} />
        <CheckPanel key={at} diagnosis={diagnosis} check={at} onNoted={goOn} />
      </div>
      <Card title="What follows for the estimate">
        {diagnosis.lines.length === 0 ? (
          <Text c="dimmed">
            Nothing yet: what a check says it takes is proposed here, a line each.
          </Text>
        ) : (
          <ProposedLines lines={diagnosis.lines} />
        )}
      </Card>
    </Stack>
  );
}
