import { Button, Group, Text } from '@mantine/core';
import { IconArrowRight, IconRepeat } from '@tabler/icons-react';
import { useQuery } from '@tanstack/react-query';
import { Link } from 'react-router';
import type { TestRun } from '../../../shared/contract/bench/index.ts';
import { Card } from '../../common/card.tsx';
import { deskQuery } from '../../common/desk.ts';
import { useFormat } from '../../common/format.ts';
import { useJob } from '../../common/job.tsx';
import { PassedBadge } from './earlier-runs.tsx';

/** The last run was signed off: what the job wants after it, and the way to run it once more. */
export function PassedRun({
  run,
  onAgain,
}: {
  readonly run: TestRun;
  readonly onAgain: () => void;
}) {
  const { id: jobId, code } = useJob();
  const format = useFormat();
  const build = useQuery(deskQuery.bench.build.queryOptions({ input: { jobId } }));
  const open = build.data?.steps.filter(({ state }) => state === 'open') ?? [];
  const step = open.find((each) => each.run !== null);
  return (
    <Card title="Signed off as passed" aside={<PassedBadge passed />}>
      <Text role="status" mb="md">
        {format.instant(run.at)}, {run.by}.
        {step !== undefined && ` The build still asks for its step “${step.label}”.`}
        {build.data !== undefined && step === undefined && nextWords(open.length)}
      </Text>
      <Group gap="sm">
        {build.data !== undefined && (
          <Button
            component={Link}
            to={whereNext(code, step?.key, open.length)}
            size="lg"
            h={56}
            rightSection={<IconArrowRight size={22} aria-hidden />}
          >
            {step !== undefined
              ? 'Pass the step'
              : open.length > 0
                ? 'Go to the build'
                : 'Hand over'}
          </Button>
        )}
        <Button
          size="lg"
          h={56}
          variant="default"
          leftSection={<IconRepeat size={22} aria-hidden />}
          onClick={onAgain}
        >
          Write another run down
        </Button>
      </Group>
    </Card>
  );
}

const nextWords = (open: number): string =>
  open === 0
    ? ' Every step of the build is done.'
    : ` Of the build, ${open === 1 ? 'one step is' : `${open} steps are`} open.`;

function whereNext(code: string, step: string | undefined, open: number): string {
  if (step !== undefined) return `/job/${code}/bench/build?step=${step}`;
  return open > 0 ? `/job/${code}/bench/build` : `/job/${code}/handover`;
}
