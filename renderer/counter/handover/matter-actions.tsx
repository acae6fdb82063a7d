import { Button, Stack } from '@mantine/core';
import { IconArrowRight, IconPackageExport } from '@tabler/icons-react';
import { useQuery } from '@tanstack/react-query';
import { Link } from 'react-router';
import type { JobDossier } from '../../../shared/contract/counter/index.ts';
import type { JobId } from '../../../shared/contract/ids.ts';
import { deskQuery } from '../../common/desk.ts';
import { partsInWords } from '../../common/parts-in-words.ts';
import { RefusalAlert } from '../../common/refusal.tsx';
import { useShop } from '../../common/shop.tsx';
import { useBy } from '../../common/station.tsx';
import { useWrite } from '../../common/use-write.ts';

/** The last move of the bench, made from here when only that is missing. */
export function MarkReady({ job }: { job: JobDossier }) {
  const by = useBy();
  const move = useWrite(deskQuery.counter.moveJob.mutationOptions());
  return (
    <Stack gap="xs" align="flex-end">
      <Button
        variant="default"
        size="compact-sm"
        data-settles
        loading={move.isPending}
        onClick={() => move.mutate({ by, jobId: job.id, to: 'ready', note: '' })}
      >
        Mark it ready
      </Button>
      <RefusalAlert error={move.error} />
    </Stack>
  );
}

/** Takes what is billed off the shelf; where nothing of it is there, the way to the parts. */
export function IssueBilled({ jobId }: { jobId: JobId }) {
  const by = useBy();
  const { locale } = useShop();
  const job = useQuery(deskQuery.parts.jobParts.queryOptions({ input: { jobId } }));
  const issue = useWrite(deskQuery.parts.issueBilled.mutationOptions());
  const there = job.data?.notIssued.filter(({ onShelf }) => onShelf > 0) ?? [];
  return (
    <Stack gap={4} align="flex-end">
      {there.length > 0 && (
        <Button
          variant="default"
          size="compact-sm"
          data-settles
          leftSection={<IconPackageExport size={16} aria-hidden />}
          loading={issue.isPending}
          onClick={() => issue.mutate({ by, jobId })}
        >
          Issue {partsInWords(there, locale)}
        </Button>
      )}
      <Button
        component={Link}
        to="../parts"
        relative="path"
        variant="default"
        size="compact-sm"
        rightSection={<IconArrowRight size={16} aria-hidden />}
      >
        Go to the parts
      </Button>
      <RefusalAlert error={issue.error} />
    </Stack>
  );
}
