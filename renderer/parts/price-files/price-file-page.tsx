import { Alert, Anchor, Button, Group, Progress, Stack, Text } from '@mantine/core';
import { IconArrowBackUp, IconChecks, IconPlayerStop, IconTrash } from '@tabler/icons-react';
import { useQuery } from '@tanstack/react-query';
import { Link, useParams } from 'react-router';
import { PriceFileId } from '../../../shared/contract/ids.ts';
import type { PriceFileCard } from '../../../shared/contract/parts/index.ts';
import { deskQuery } from '../../common/desk.ts';
import { useFormat } from '../../common/format.ts';
import { Empty, Page, QueryView } from '../../common/page.tsx';
import { RefusalAlert } from '../../common/refusal.tsx';
import { useBy } from '../../common/station.tsx';
import { useWrite } from '../../common/use-write.ts';
import { PriceFileContent } from './price-file-content.tsx';
import { PriceFileStateBadge } from './price-file-state.tsx';
import { useCount } from './use-count.ts';

/** One price file: being read, to be applied, applied. */
export function PriceFilePage() {
  const { id } = useParams();
  const fileId = PriceFileId.safeParse(id);
  return fileId.success ? (
    <OnePriceFile id={fileId.data} />
  ) : (
    <Page title="Price file">
      <Empty title="No such price file" hint="Go back to the price lists, and choose one there." />
    </Page>
  );
}

function OnePriceFile({ id }: { id: PriceFileId }) {
  const query = useQuery(
    deskQuery.parts.priceFile.queryOptions({
      input: { id },
      refetchInterval: ({ state }) => (state.data?.state === 'reading' ? 250 : false),
    }),
  );
  const file = query.data;
  return (
    <Page
      title={file === undefined ? 'Price file' : `Price file of ${file.supplier}`}
      description={
        <Group gap="sm">
          <Anchor inherit component={Link} to="/parts/price-files">
            Price lists
          </Anchor>
          {file !== undefined && (
            <>
              <span>{file.fileName}</span>
              <PriceFileStateBadge state={file.state} />
            </>
          )}
        </Group>
      }
    >
      <QueryView query={query}>{(card) => <Steps file={card} />}</QueryView>
    </Page>
  );
}

function Steps({ file }: { file: PriceFileCard }) {
  switch (file.state) {
    case 'reading':
      return <BeingRead file={file} />;
    case 'stopped':
      return (
        <Empty
          title="This file was stopped"
          hint="Nothing of it was taken over: the price list and your parts are as they were."
          action={
            <Button
              component={Link}
              variant="light"
              to={`/parts/price-files/new?supplier=${file.supplierId}`}
            >
              Read a price file
            </Button>
          }
        />
      );
    case 'read':
      return <ToApply file={file} />;
    case 'applied':
    case 'undone':
      return <Applied file={file} />;
  }
}

function useStop() {
  return useWrite(deskQuery.parts.stopPriceFile.mutationOptions());
}

function BeingRead({ file }: { file: PriceFileCard }) {
  const by = useBy();
  const count = useCount();
  const stop = useStop();
  const percent = Math.floor(file.share * 100);
  return (
    <Stack maw="40rem">
      <Progress.Root size="xl" radius="sm">
        <Progress.Section value={percent} aria-label="How much of the file is read" />
      </Progress.Root>
      <Text role="status">
        {count(file.lines)} lines read, {percent} %. Nothing changes before you apply it, and you
        can go on with other work meanwhile.
      </Text>
      <RefusalAlert error={stop.error} />
      <div>
        <Button
          variant="default"
          leftSection={<IconPlayerStop size={18} aria-hidden />}
          loading={stop.isPending}
          onClick={() => stop.mutate({ by, id: file.id })}
        >
          Stop reading
        </Button>
      </div>
    </Stack>
  );
}

const usable = ({ counts }: PriceFileCard): number =>
  counts.new + counts.dearer + counts.cheaper + counts.unchanged + counts.superseded;

function ToApply({ file }: { file: PriceFileCard }) {
  const by = useBy();
  const count = useCount();
  const stop = useStop();
  const apply = useWrite(deskQuery.parts.applyPriceFile.mutationOptions());
  const lines = usable(file);
  return (
    <>
      <Stack mb="md">
        <Text maw="70ch">
          Nothing has changed yet. {count(lines)} lines can be applied
          {file.counts.unreadable > 0 &&
            `; ${count(file.counts.unreadable)} can’t be used and are left out`}
          . A part of yours follows if this supplier is named on it.
        </Text>
        <RefusalAlert error={apply.error ?? stop.error} />
        <Group>
          <Button
            leftSection={<IconChecks size={18} aria-hidden />}
            disabled={lines === 0}
            loading={apply.isPending}
            onClick={() => apply.mutate({ by, id: file.id })}
          >
            Apply all {count(lines)} lines
          </Button>
          <Button
            variant="default"
            leftSection={<IconTrash size={18} aria-hidden />}
            loading={stop.isPending}
            onClick={() => stop.mutate({ by, id: file.id })}
          >
            Put the file away
          </Button>
        </Group>
      </Stack>
      <PriceFileContent file={file} />
    </>
  );
}

function Applied({ file }: { file: PriceFileCard }) {
  const by = useBy();
  const format = useFormat();
  const undo = useWrite(deskQuery.parts.undoPriceFile.mutationOptions());
  return (
    <>
      <Stack mb="md">
        {file.undoneAt === null ? (
          <Text>
            Applied {file.appliedAt !== null && format.instant(file.appliedAt)}.
            {!file.canBeUndone && ' A later file of this supplier was applied since.'}
          </Text>
        ) : (
          <Alert color="gray" role="status" title="Undone">
            {format.instant(file.undoneAt)}: the price list and your parts are as they were before
            this file.
          </Alert>
        )}
        <RefusalAlert error={undo.error} />
        {file.canBeUndone && (
          <div>
            <Button
              variant="default"
              leftSection={<IconArrowBackUp size={18} aria-hidden />}
              loading={undo.isPending}
              onClick={() => undo.mutate({ by, id: file.id })}
            >
              Undo the whole file
            </Button>
          </div>
        )}
      </Stack>
      <PriceFileContent file={file} />
    </>
  );
}
