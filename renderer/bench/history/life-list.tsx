import { Anchor, Text } from '@mantine/core';
import { Link } from 'react-router';
import type { JobOfEngine } from '../../../shared/contract/bench/index.ts';
import { display } from '../../../shared/trade/index.ts';
import {
  DECISION_CHOICE_LABELS,
  DECISION_SUBJECT_LABELS,
} from '../../../shared/work/bench/deciding/decisions.ts';
import { StateBadge } from '../../common/badges.tsx';
import { Card } from '../../common/card.tsx';
import { useFormat } from '../../common/format.ts';
import { PassedBadge } from '../test-run/earlier-runs.tsx';
import classes from './history.module.css';

/** Every visit of the engine, the latest first: what was said, decided and done. */
export function LifeList({ jobs }: { readonly jobs: readonly JobOfEngine[] }) {
  return (
    <Card title={jobs.length === 1 ? 'One visit so far' : `${jobs.length} visits`}>
      <ol className={classes.visits}>
        {jobs.map((job) => (
          <Visit key={job.id} job={job} />
        ))}
      </ol>
    </Card>
  );
}

function Visit({ job }: { readonly job: JobOfEngine }) {
  const format = useFormat();
  const [run] = job.testRuns;
  return (
    <li>
      <div className={classes.visitHead}>
        <Anchor component={Link} to={`/job/${job.code}`} fw={600}>
          {job.code}
        </Anchor>
        <Text span>{format.date(job.takenInOn)}</Text>
        <Text span>
          {job.engineHours === null ? 'hours not noted' : `${job.engineHours} running hours`}
        </Text>
        <StateBadge state={job.state} />
      </div>
      <Text>
        <q dir="auto">{job.complaint}</q>
      </Text>
      {job.decisions.length > 0 && (
        <ul className={classes.decisions}>
          {job.decisions.map((decision) => (
            <li key={`${decision.subject} ${decision.cylinder}`}>
              <strong>
                {DECISION_SUBJECT_LABELS[decision.subject]}
                {decision.cylinder > 1 && `, cylinder ${decision.cylinder}`}:{' '}
                {DECISION_CHOICE_LABELS[decision.choice].toLowerCase()}
                {decision.step !== null && ` (${display(decision.step, 'mm')})`}
              </strong>{' '}
              {decision.reason !== '' && <>– {decision.reason} </>}
              <Text span size="sm" c="dimmed">
                {decision.by}, {format.day(decision.at)}
              </Text>
            </li>
          ))}
        </ul>
      )}
      {job.workDone !== '' && <Text className={classes.done}>{job.workDone}</Text>}
      {run !== undefined && (
        <div className={classes.visitHead}>
          <Text span size="sm">
            Last test run, {format.day(run.at)}, {run.by}:
          </Text>
          <PassedBadge passed={run.passed} />
        </div>
      )}
    </li>
  );
}
