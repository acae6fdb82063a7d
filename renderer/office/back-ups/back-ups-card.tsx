import { Alert, Box, Button, Group, Text } from '@mantine/core';
import {
  IconAlertTriangle,
  IconCircleCheck,
  IconDeviceFloppy,
  IconFileImport,
} from '@tabler/icons-react';
import type { UseQueryResult } from '@tanstack/react-query';
import { useState } from 'react';
import { Link } from 'react-router';
import type { BackUpsList } from '../../../shared/contract/back-ups.ts';
import type { LongWorkId } from '../../../shared/contract/ids.ts';
import { Card } from '../../common/card.tsx';
import { deskQuery } from '../../common/desk.ts';
import { QueryView } from '../../common/page.tsx';
import { RefusalAlert } from '../../common/refusal.tsx';
import { useBy } from '../../common/station.tsx';
import { useWrite } from '../../common/use-write.ts';
import { BackUpList } from './back-up-list.tsx';
import classes from './back-ups.module.css';
import { bringBackAddress } from './bring-back-page.tsx';
import { useWork } from './use-work.ts';
import { WorkProgress } from './work-progress.tsx';

/** Copies of the whole store: made here, kept elsewhere, brought back. */
export function BackUpsCard({ query }: { query: UseQueryResult<BackUpsList, unknown> }) {
  const list = query.data;
  return (
    <Card title="Back-ups">
      <Text size="sm" mb="sm" maw="75ch">
        A copy of the whole store, read through before it counts. One is made by itself on each day
        that Tappet is open
        {list !== undefined && `, and the last ${list.dailyKept} of those are kept`}; the others
        stay until you delete them. A laptop that dies takes its folder with it: save a copy on a
        stick or on another machine.
      </Text>
      {list?.underWay?.kind !== 'bring-back' && (
        <MakeBackUp underWay={list?.underWay?.id ?? null} />
      )}
      {list !== undefined && list.dailyTrouble !== null && (
        <Alert
          color="orange"
          variant="light"
          mt="sm"
          icon={<IconAlertTriangle aria-hidden />}
          title="Today’s own back-up was not made"
        >
          {list.dailyTrouble}
        </Alert>
      )}
      <Box mt="md">
        <QueryView query={query}>
          {({ files, folder }) => <BackUpList files={files} folder={folder} />}
        </QueryView>
      </Box>
    </Card>
  );
}

function MakeBackUp({ underWay }: { underWay: LongWorkId | null }) {
  const by = useBy();
  const [asked, setAsked] = useState<LongWorkId | null>(null);
  const make = useWrite(
    deskQuery.office.backUp.mutationOptions({ onSuccess: ({ id }) => setAsked(id) }),
  );
  const { work } = useWork(underWay ?? asked);
  const made = work?.state === 'done' ? work.backUp : null;
  return (
    <>
      {work?.state !== 'running' && (
        <Group mb="sm">
          <Button
            loading={make.isPending}
            leftSection={<IconDeviceFloppy size={20} aria-hidden />}
            onClick={() => make.mutate({ by, wait: false })}
          >
            Back up now
          </Button>
          <Button
            component={Link}
            to={bringBackAddress()}
            variant="default"
            leftSection={<IconFileImport size={20} aria-hidden />}
          >
            Bring back from a file…
          </Button>
        </Group>
      )}
      <div aria-live="polite">
        <RefusalAlert error={make.error} />
        {work !== undefined && <WorkProgress work={work} />}
        {made !== null && (
          <Alert
            color="green"
            variant="light"
            icon={<IconCircleCheck aria-hidden />}
            title="Backed up and verified"
          >
            <dl className={classes.facts}>
              <dt>File</dt>
              <dd>{made.fileName}</dd>
              <dt>SHA-256</dt>
              <dd className={classes.fingerprint}>{made.sha256}</dd>
            </dl>
          </Alert>
        )}
      </div>
    </>
  );
}
