import { Badge, Text } from '@mantine/core';
import { IconCircleCheck, IconCircleX } from '@tabler/icons-react';
import type { TestRun } from '../../../shared/contract/bench/index.ts';
import { testRunFacts } from '../../../shared/work/bench/test-run-words.ts';
import { Card } from '../../common/card.tsx';
import { useFormat } from '../../common/format.ts';
import classes from './test-run.module.css';

export function PassedBadge({ passed }: { readonly passed: boolean }) {
  const Icon = passed ? IconCircleCheck : IconCircleX;
  return (
    <Badge
      variant="light"
      color={passed ? 'green' : 'red'}
      leftSection={<Icon size={15} aria-hidden />}
    >
      {passed ? 'Passed' : 'Not passed'}
    </Badge>
  );
}

/** Every run of the job, the latest first: a later one erases nothing. */
export function EarlierRuns({ runs }: { readonly runs: readonly TestRun[] }) {
  const format = useFormat();
  return (
    <Card title="Runs so far">
      {runs.length === 0 ? (
        <Text>It was not run yet.</Text>
      ) : (
        <ol className={classes.runs}>
          {runs.map((run) => (
            <li key={run.id}>
              <div className={classes.runHead}>
                <PassedBadge passed={run.passed} />
                <Text>
                  {format.instant(run.at)}, {run.by}
                </Text>
              </div>
              <dl className={classes.runFacts}>
                {testRunFacts(run.findings, run.speeds, run.against).map(([name, words]) => (
                  <div key={name}>
                    <dt>{name}</dt>
                    <dd>{words}</dd>
                  </div>
                ))}
              </dl>
            </li>
          ))}
        </ol>
      )}
    </Card>
  );
}
