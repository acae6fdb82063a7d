import { Button, Group, Table, Text } from '@mantine/core';
import {
  IconArrowBackUp,
  IconCircleCheck,
  IconDownload,
  IconHelpCircle,
} from '@tabler/icons-react';
import { useState } from 'react';
import { Link } from 'react-router';
import type { BackUpFile } from '../../../shared/contract/back-ups.ts';
import { BACK_UP_ORIGIN_LABELS } from '../../../shared/work/office/back-ups.ts';
import { useFormat } from '../../common/format.ts';
import { Empty } from '../../common/page.tsx';
import { RefusalAlert } from '../../common/refusal.tsx';
import { useShop } from '../../common/shop.tsx';
import classes from './back-ups.module.css';
import { bringBackAddress } from './bring-back-page.tsx';
import { saveBackUp } from './file-transfer.ts';
import { ProgressLine } from './progress-line.tsx';
import { sizeText } from './size-text.ts';
import { useTransfer } from './use-transfer.ts';

const FEW = 6;

/** The back-ups there are, newest first. */
export function BackUpList({ files, folder }: { files: readonly BackUpFile[]; folder: string }) {
  const [all, setAll] = useState(false);
  const save = useTransfer(saveBackUp);
  if (files.length === 0)
    return (
      <Empty
        title="There is no back-up yet"
        hint="Make one now; it takes a moment. From then on one is made by itself each day."
      />
    );
  return (
    <>
      <RefusalAlert error={save.error} mb="sm" />
      {save.isPending && (
        <ProgressLine doing={`Fetching ${save.input}`} share={save.share} onStop={save.stop} />
      )}
      <div className={classes.scroll}>
        <Table verticalSpacing={6}>
          <Table.Thead>
            <Table.Tr>
              <Table.Th>Made</Table.Th>
              <Table.Th>Verified</Table.Th>
              <Table.Th className={classes.size}>Size</Table.Th>
              <Table.Th>
                <span className={classes.unseen}>What to do with it</span>
              </Table.Th>
            </Table.Tr>
          </Table.Thead>
          <Table.Tbody>
            {files.slice(0, all ? files.length : FEW).map((file) => (
              <Row key={file.fileName} file={file} busy={save.isPending} onSave={save.begin} />
            ))}
          </Table.Tbody>
        </Table>
      </div>
      {files.length > FEW && !all && (
        <Button variant="default" mt="sm" onClick={() => setAll(true)}>
          Show all {files.length}
        </Button>
      )}
      <Text size="sm" c="dimmed" mt="sm" className={classes.folder}>
        They are in {folder}
      </Text>
    </>
  );
}

interface RowProps {
  file: BackUpFile;
  busy: boolean;
  onSave: (fileName: string) => void;
}

function Row({ file, busy, onSave }: RowProps) {
  const format = useFormat();
  const { locale } = useShop();
  const { fileName, origin, verified, bytes } = file;
  const made = format.instant(file.at);
  return (
    <Table.Tr>
      <Table.Td>
        <Text size="sm" fw={600} className={classes.made}>
          {made}
        </Text>
        <Text size="sm" c="dimmed" className={classes.folder}>
          {BACK_UP_ORIGIN_LABELS[origin]}
          {origin === 'put-there' && `: ${fileName}`}
        </Text>
      </Table.Td>
      <Table.Td>
        <Group gap={6} wrap="nowrap" className={classes.made}>
          {verified ? (
            <IconCircleCheck size={18} aria-hidden />
          ) : (
            <IconHelpCircle size={18} aria-hidden />
          )}
          {verified ? 'Yes' : 'Not yet'}
        </Group>
      </Table.Td>
      <Table.Td className={classes.size}>{sizeText(bytes, locale)}</Table.Td>
      <Table.Td>
        <Group gap="xs" wrap="nowrap" justify="flex-end">
          <Button
            variant="default"
            leftSection={<IconDownload size={18} aria-hidden />}
            disabled={busy}
            aria-label={`Save a copy of the back-up of ${made}`}
            onClick={() => onSave(fileName)}
          >
            Save a copy
          </Button>
          <Button
            component={Link}
            to={bringBackAddress(fileName)}
            variant="default"
            leftSection={<IconArrowBackUp size={18} aria-hidden />}
            aria-label={`Bring back the back-up of ${made}`}
          >
            Bring back…
          </Button>
        </Group>
      </Table.Td>
    </Table.Tr>
  );
}
