import { Group, Stack, Text } from '@mantine/core';
import type { JobDossier } from '../../../shared/contract/counter.ts';
import { Card } from '../../common/card.tsx';
import { ClearanceSheetButton } from '../../common/clearance-sheet-button.tsx';
import { useFormat } from '../../common/format.ts';
import { PaperButton } from '../../common/paper-button.tsx';

/** Every paper of the job; each comes out byte for byte as it was issued. */
export function PapersCard({ job }: { job: JobDossier }) {
  const format = useFormat();
  return (
    <Card title="Papers" aside={<ClearanceSheetButton jobId={job.id} />}>
      {job.papers.length === 0 ? (
        <Text size="sm">No paper was issued yet.</Text>
      ) : (
        <Stack component="ul" gap="xs" p={0} m={0} style={{ listStyle: 'none' }}>
          {job.papers.map((paper) => (
            <Group component="li" key={paper.id} justify="space-between" gap="xs">
              <PaperButton paper={paper} />
              <Text size="sm" c="dimmed">
                {format.instant(paper.issuedAt)}, {paper.issuedBy}
              </Text>
            </Group>
          ))}
        </Stack>
      )}
    </Card>
  );
}
