import { Text } from '@mantine/core';
import type { JobDossier } from '../../../shared/contract/counter/index.ts';
import { Card } from '../../common/card.tsx';
import { ClearanceSheetButton } from '../../common/clearance-sheet-button.tsx';
import { useFormat } from '../../common/format.ts';
import { PaperButton } from '../../common/paper-button.tsx';
import classes from './overview.module.css';

/** Every paper of the job; each comes out byte for byte as it was issued. */
export function PapersCard({ job }: { job: JobDossier }) {
  const format = useFormat();
  return (
    <Card title="Papers" aside={<ClearanceSheetButton jobId={job.id} />}>
      {job.papers.length === 0 ? (
        <Text size="sm">No paper was issued yet.</Text>
      ) : (
        <ul className={classes.papers}>
          {job.papers.map((paper) => (
            <li key={paper.id}>
              <PaperButton paper={paper} quiet />
              <Text size="sm" c="dimmed">
                {format.instant(paper.issuedAt)}, {paper.issuedBy}
              </Text>
            </li>
          ))}
        </ul>
      )}
    </Card>
  );
}
