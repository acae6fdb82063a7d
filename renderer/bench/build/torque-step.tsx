import { Anchor, SegmentedControl, Text } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { Link } from 'react-router';
import type { JobId } from '../../../shared/contract/ids.ts';
import {
  FEATURE_LABELS,
  FEATURE_UNITS,
  type MeasuredFeature,
} from '../../../shared/work/features.ts';
import { deskQuery } from '../../common/desk.ts';
import { useJob } from '../../common/job.tsx';
import { QueryView } from '../../common/page.tsx';
import { RefusalAlert, refusalOf } from '../../common/refusal.tsx';
import classes from './build.module.css';
import { TorqueWalkPanel } from './torque-walk-panel.tsx';

/** The bolts that a step tightens: one group of one head at a time. */
export function TorqueStep({
  jobId,
  needs,
}: {
  readonly jobId: JobId;
  readonly needs: readonly MeasuredFeature[];
}) {
  const groups = needs.filter((feature) => FEATURE_UNITS[feature] === 'N·m');
  const [chosen, setChosen] = useState<MeasuredFeature | undefined>(groups[0]);
  if (chosen === undefined) return null;
  return (
    <div className={classes.page}>
      {groups.length > 1 && (
        <SegmentedControl
          aria-label="Which bolts"
          size="md"
          value={chosen}
          onChange={setChosen}
          data={groups.map((feature) => ({ value: feature, label: FEATURE_LABELS[feature] }))}
        />
      )}
      <Group key={chosen} jobId={jobId} feature={chosen} />
    </div>
  );
}

function Group({ jobId, feature }: { readonly jobId: JobId; readonly feature: MeasuredFeature }) {
  const [cylinder, setCylinder] = useState(1);
  const query = useQuery({
    ...deskQuery.bench.torqueWalk.queryOptions({ input: { jobId, feature, cylinder } }),
    retry: false,
  });
  if (query.error !== null && refusalOf(query.error).code === 'TORQUE_UNKNOWN')
    return <Unknown error={query.error} feature={feature} />;
  return (
    <QueryView query={query}>
      {(walk) => (
        <>
          {walk.cylinders > 1 && (
            <SegmentedControl
              aria-label="Cylinder"
              size="md"
              value={String(cylinder)}
              onChange={(value) => setCylinder(Number(value))}
              data={Array.from({ length: walk.cylinders }, (_, index) => ({
                value: String(index + 1),
                label: `Cylinder ${index + 1}`,
              }))}
            />
          )}
          <TorqueWalkPanel key={cylinder} walk={walk} />
        </>
      )}
    </QueryView>
  );
}

function Unknown({ error, feature }: { readonly error: unknown; readonly feature: string }) {
  const { code, machineDetails } = useJob();
  const { engineModelId } = machineDetails.engine;
  return (
    <div>
      <RefusalAlert error={error} />
      <Text mt="xs">
        {engineModelId !== null && (
          <>
            <Anchor component={Link} to={`/spec-book/${engineModelId}?for=${code}`} inherit>
              Open its entry in the spec book
            </Anchor>
            {' · '}
          </>
        )}
        <Anchor component={Link} to={`/job/${code}/bench?at=${feature}`} inherit>
          Type the torques in instead
        </Anchor>
      </Text>
    </div>
  );
}
