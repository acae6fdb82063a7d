import { Text, Timeline } from '@mantine/core';
import type { JobDossier } from '../../../shared/contract/counter/index.ts';
import { JOB_STATE_LABELS } from '../../../shared/work/counter/job-state.ts';
import { Card } from '../../common/card.tsx';
import { useFormat } from '../../common/format.ts';

/** How the job went so far, the last move first. */
export function MovesCard({ job }: { job: JobDossier }) {
  const format = useFormat();
  return (
    <Card title="How it went">
      <Timeline bulletSize={14} lineWidth={2} active={0}>
        {job.moves.toReversed().map((move) => (
          <Timeline.Item key={`${move.at} ${move.to}`} title={JOB_STATE_LABELS[move.to]}>
            {move.note !== '' && (
              <Text size="sm" dir="auto" style={{ overflowWrap: 'anywhere' }}>
                {move.note}
              </Text>
            )}
            <Text size="xs" c="dimmed">
              {format.instant(move.at)}, {move.by}
            </Text>
          </Timeline.Item>
        ))}
      </Timeline>
    </Card>
  );
}
