import { Button, FileButton, Group, Text } from '@mantine/core';
import { IconFileImport } from '@tabler/icons-react';
import { useMutation } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import type { BackUpSource, LongWork } from '../../../shared/contract/back-ups.ts';
import type { LongWorkId, StaffId } from '../../../shared/contract/ids.ts';
import { deskQuery } from '../../common/desk.ts';
import { RefusalAlert } from '../../common/refusal.tsx';
import classes from './back-ups.module.css';
import { ConfirmBringBack } from './confirm-bring-back.tsx';
import { sendBackUp } from './file-transfer.ts';
import { FoundFacts } from './found-facts.tsx';
import { ProgressLine } from './progress-line.tsx';
import { useTransfer } from './use-transfer.ts';
import { useWork } from './use-work.ts';
import { WorkProgress } from './work-progress.tsx';

interface BringBackProps {
  /** Who does it; null before the shop is set up, when it is somebody on the back-up's own list. */
  by: StaffId | null;
  /** The name of a back-up of the list, to be checked at once. */
  listed: string | null;
  onBegun: (work: LongWork, by: StaffId) => void;
}

/** A back-up is chosen, checked and looked at, and only then brought back. */
export function BringBack({ by, listed, onBegun }: BringBackProps) {
  const [from, setFrom] = useState<BackUpSource | null>(null);
  const [checking, setChecking] = useState<LongWorkId | null>(null);
  const check = useMutation(
    deskQuery.office.checkBackUp.mutationOptions({ onSuccess: ({ id }) => setChecking(id) }),
  );
  const begin = (source: BackUpSource) => {
    setFrom(source);
    setChecking(null);
    check.mutate({ from: source, wait: false });
  };
  const send = useTransfer(async (file: File, transfer) => {
    setChecking(null);
    const upload = await sendBackUp(file, transfer);
    begin({ fileName: file.name, upload });
  });
  const { work, error } = useWork(checking);

  const first = check.mutate;
  useEffect(() => {
    if (listed === null) return;
    const source = { fileName: listed, upload: null };
    setFrom(source);
    first({ from: source, wait: false });
  }, [listed, first]);

  const found = work?.state === 'done' ? work.found : null;
  const busy = send.isPending || check.isPending || work?.state === 'running';
  const chooseFile = (
    <FileButton onChange={(file) => file !== null && send.begin(file)} accept=".db">
      {(button) => (
        <Button
          {...button}
          variant={from === null ? 'filled' : 'default'}
          leftSection={<IconFileImport size={20} aria-hidden />}
        >
          {from === null ? 'Choose a file…' : 'Choose another file…'}
        </Button>
      )}
    </FileButton>
  );
  return (
    <div className={classes.column}>
      {!busy && found === null && (
        <div>
          <Text mb="sm" maw="65ch">
            Choose the file of a back-up: its name begins with “tappet-” and ends in “.db”. It is
            checked first, and you see what is in it before anything changes.
          </Text>
          {chooseFile}
        </div>
      )}
      <div aria-live="polite" className={classes.live}>
        {send.isPending && (
          <ProgressLine
            doing={`Taking in ${send.input?.name}`}
            share={send.share}
            onStop={send.stop}
          />
        )}
        <RefusalAlert error={send.error ?? check.error ?? error} />
        {work !== undefined && <WorkProgress work={work} />}
      </div>
      {found !== null && from !== null && (
        <>
          <FoundFacts found={found} />
          <ConfirmBringBack
            key={found.sha256}
            by={by}
            from={from}
            found={found}
            onBegun={onBegun}
            onCheckAgain={() => begin(from)}
            otherFile={busy ? null : chooseFile}
          />
        </>
      )}
      {check.isPending && <Group role="status">Opening the file…</Group>}
    </div>
  );
}
