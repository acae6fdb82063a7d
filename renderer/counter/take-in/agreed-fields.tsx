import { Group, Input, SegmentedControl, Stack } from '@mantine/core';
import { useId } from 'react';
import { REACH_BY, REACH_BY_LABELS } from '../../../shared/work/vocabulary.ts';
import { DateField } from '../../common/date-field.tsx';
import { MoneyInput } from '../../common/money-input.tsx';
import type { DraftPart } from './draft.ts';
import { Signing } from './signing.tsx';

const WAYS = REACH_BY.map((value) => ({ value, label: REACH_BY_LABELS[value] }));

/** What shop and customer agree on, and the customer's signature under it. */
export function AgreedFields({ draft, change, faults }: DraftPart) {
  const reachLabel = useId();
  return (
    <Stack gap="xs">
      <Group grow gap="xs" align="flex-start">
        <MoneyInput
          label="Diagnosis fee"
          data-field="diagnosisFee"
          value={draft.diagnosisFee}
          onChange={(diagnosisFee) => change({ diagnosisFee })}
          error={faults.diagnosisFee}
        />
        <MoneyInput
          label="Spending limit"
          data-field="spendingLimit"
          value={draft.spendingLimit}
          onChange={(spendingLimit) => change({ spendingLimit })}
          error={faults.spendingLimit}
        />
      </Group>
      <Group grow gap="xs" align="flex-start">
        <MoneyInput
          label="Deposit"
          data-field="deposit"
          value={draft.deposit}
          onChange={(deposit) => change({ deposit })}
          error={faults.deposit}
        />
        <DateField
          label="Promised for"
          data-field="promisedFor"
          value={draft.promisedFor}
          onChange={(promisedFor) => change({ promisedFor })}
          error={faults.promisedFor}
        />
      </Group>
      <div data-field="reachBy">
        <Input.Label id={reachLabel}>Reach the customer by</Input.Label>
        <SegmentedControl
          fullWidth
          aria-labelledby={reachLabel}
          data={WAYS}
          value={draft.reachBy}
          onChange={(reachBy) => change({ reachBy })}
        />
        {faults.reachBy && <Input.Error>{faults.reachBy}</Input.Error>}
      </div>
      <Signing
        label="Customer’s signature"
        field="signature"
        value={draft.signature}
        onChange={(signature) => change({ signature })}
        suggestedName={draft.knownCustomer?.name ?? draft.name.trim()}
        error={faults.signature}
      />
    </Stack>
  );
}
