import { Alert, Button, Stack, Text } from '@mantine/core';
import { IconHandStop } from '@tabler/icons-react';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { PartToDecide } from '../../../shared/contract/bench/index.ts';
import { Card } from '../../common/card.tsx';
import { deskQuery } from '../../common/desk.ts';
import { useJob } from '../../common/job.tsx';
import { QueryView } from '../../common/page.tsx';
import { MoveDialog } from '../../counter/move-dialog.tsx';
import { ProposedLines } from '../proposed-lines.tsx';

/** What follows from the decisions: lines for the estimate, or the end of the job. */
export function ProposalsCard({ parts }: { readonly parts: readonly PartToDecide[] }) {
  const open = parts.filter(({ standing }) => standing === null).length;
  const job = useJob();
  const proposals = useQuery(deskQuery.bench.proposals.queryOptions({ input: { jobId: job.id } }));
  return (
    <Card title="What follows for the estimate">
      <QueryView query={proposals}>
        {({ lines, moveTo }) =>
          moveTo === 'stopped' ? (
            <Stopped />
          ) : lines.length === 0 ? (
            <Text c="dimmed">
              Nothing yet: lines are proposed as soon as something is decided that costs work or
              parts.
            </Text>
          ) : (
            <Stack gap="sm">
              {open > 0 && (
                <Text fw={650}>
                  {open} of {parts.length} not decided: their lines are not among these yet.
                </Text>
              )}
              <ProposedLines lines={lines} />
            </Stack>
          )
        }
      </QueryView>
    </Card>
  );
}

function Stopped() {
  const job = useJob();
  const [moving, setMoving] = useState(false);
  return (
    <Alert
      color="red"
      icon={<IconHandStop aria-hidden />}
      title="A stop stands: nothing is proposed"
    >
      {job.nextStates.includes('stopped') ? (
        <Stack gap="sm" align="flex-start">
          <Text>
            The job itself has not moved. Move it to ‘Stopped’ if that is what was decided, and let
            the customer know.
          </Text>
          <Button variant="default" h={48} onClick={() => setMoving(true)}>
            Move {job.code} to ‘Stopped’ …
          </Button>
        </Stack>
      ) : (
        <Text>Decide anew on that part to go on.</Text>
      )}
      {moving && <MoveDialog job={job} to="stopped" onClose={() => setMoving(false)} />}
    </Alert>
  );
}
