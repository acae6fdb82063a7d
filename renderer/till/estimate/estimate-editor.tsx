import { Alert, Box, Button, Group, Text, Textarea } from '@mantine/core';
import { IconAlertTriangle, IconFileInvoice } from '@tabler/icons-react';
import { useRef, useState } from 'react';
import type { Account } from '../../../shared/contract/till/index.ts';
import { Card } from '../../common/card.tsx';
import { DateField } from '../../common/date-field.tsx';
import { deskQuery } from '../../common/desk.ts';
import { PaperButton } from '../../common/paper-button.tsx';
import { RefusalAlert } from '../../common/refusal.tsx';
import { useBy } from '../../common/station.tsx';
import { useWrite } from '../../common/use-write.ts';
import { DiscountInput } from '../lines/discount-input.tsx';
import { LinesGrid } from '../lines/lines-grid.tsx';
import { MarginNote } from '../lines/margin-note.tsx';
import { useMoneyRules } from '../lines/use-money-rules.ts';
import { Options } from './options.tsx';
import classes from './totals.module.css';
import { TotalsList } from './totals.tsx';
import type { EstimateDraft } from './use-estimate-draft.ts';

/** Where the next revision is typed and written. */
export function EstimateEditor({ account, draft }: { account: Account; draft: EstimateDraft }) {
  const by = useBy();
  const rules = useMoneyRules();
  const writeButton = useRef<HTMLButtonElement>(null);
  const written = useRef<HTMLParagraphElement>(null);
  const typed = useRef<HTMLDivElement>(null);
  const [showMissing, setShowMissing] = useState(false);
  const latest = account.estimates.at(-1);
  const next = (latest?.revision ?? 0) + 1;
  const write = useWrite(
    deskQuery.till.writeEstimate.mutationOptions({
      onSuccess: () => {
        draft.startOver();
        setShowMissing(false);
        // The button rests until something is changed: the focus goes to what was done.
        written.current?.focus();
      },
    }),
  );

  const send = () => {
    setShowMissing(true);
    // A discount that can't be read counts as none: nothing goes out before somebody has looked at it.
    const unreadable = typed.current?.querySelector<HTMLInputElement>('input:invalid');
    unreadable?.focus();
    if (unreadable != null || draft.written === null) return;
    write.mutate({
      by,
      jobId: account.jobId,
      ...draft.written,
      note: draft.note,
      validUntil: draft.validUntil,
    });
  };

  return (
    <Card
      title={latest === undefined ? 'Estimate' : `Estimate, revision ${latest.revision}`}
      aside={latest !== undefined && <PaperButton paper={latest.paper} />}
    >
      {draft.overtaken && <Overtaken draft={draft} />}
      <div ref={typed}>
        <Options draft={draft} showMissing={showMissing}>
          <LinesGrid
            key={draft.shown}
            lines={draft.lines}
            readings={draft.readings}
            rules={rules}
            showMissing={showMissing}
            onChange={draft.setLines}
            onDone={() => writeButton.current?.focus()}
          />
        </Options>
        <Group align="flex-start" gap="xl" mt="md">
          <div style={{ flex: '1 1 20rem' }}>
            <Textarea
              label="Note on the estimate"
              autosize
              minRows={2}
              maxRows={6}
              maxLength={2000}
              value={draft.note}
              onChange={(event) => draft.setNote(event.currentTarget.value)}
            />
            <DateField
              label="Valid until"
              mt="sm"
              maw="16rem"
              value={draft.validUntil}
              onChange={draft.setValidUntil}
            />
          </div>
          <div className={classes.sums}>
            <DiscountInput
              label="Discount on the whole"
              value={draft.discount}
              onChange={draft.setDiscount}
            />
            <TotalsList
              totals={draft.totals}
              unpriced={draft.unpriced}
              uncounted={draft.uncounted}
            />
            <MarginNote margin={draft.margin} />
          </div>
        </Group>
      </div>
      <Box mt="md">
        <RefusalAlert error={write.error} />
      </Box>
      <Group justify="space-between" mt="sm">
        <Text size="sm" ref={written} tabIndex={-1} role="status">
          {statusWords(latest?.revision, draft, showMissing)}
        </Text>
        <Group gap="sm">
          {draft.changed && latest !== undefined && (
            <Button variant="subtle" color="gray" onClick={draft.startOver}>
              Back to revision {latest.revision}
            </Button>
          )}
          <Button
            ref={writeButton}
            leftSection={<IconFileInvoice size={18} aria-hidden />}
            loading={write.isPending}
            disabled={!draft.changed}
            onClick={send}
          >
            {latest === undefined ? 'Write the estimate' : `Write revision ${next}`}
          </Button>
        </Group>
      </Group>
    </Card>
  );
}

function statusWords(revision: number | undefined, draft: EstimateDraft, asked: boolean): string {
  if (asked && draft.written === null)
    return 'Not written yet: mend what is marked above, or add a line.';
  if (revision === undefined) return draft.changed ? 'Kept on this computer until written.' : '';
  return draft.changed
    ? `Changed since revision ${revision}; kept on this computer until written.`
    : `Revision ${revision} is written and stays as it is. A change makes revision ${revision + 1}.`;
}

function Overtaken({ draft }: { draft: EstimateDraft }) {
  return (
    <Alert
      color="yellow"
      icon={<IconAlertTriangle aria-hidden />}
      title="A newer revision was written while this one was typed"
      mb="sm"
    >
      <Group gap="sm">
        <Button variant="default" size="sm" onClick={draft.startOver}>
          Start from the newer one
        </Button>
        <Button variant="default" size="sm" onClick={draft.keepTyped}>
          Keep what is typed
        </Button>
      </Group>
    </Alert>
  );
}
