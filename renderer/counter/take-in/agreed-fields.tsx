import { Group, Radio, Stack } from '@mantine/core';
import type { ReactNode } from 'react';
import { REACH_BY, REACH_BY_LABELS, type ReachBy } from '../../../shared/work/vocabulary.ts';
import { DateField } from '../../common/date-field.tsx';
import { MoneyInput } from '../../common/money-input.tsx';
import type { DraftPart } from './draft.ts';
import { Signing } from './signing.tsx';
import classes from './take-in.module.css';

/** What shop and customer agree on, and the customer's signature under it. */
export function AgreedFields({ draft, change, faults, children }: AgreedFieldsProps) {
  return (
    <div className={classes.agreed}>
      <Stack gap="xs">
        <div className={classes.pair}>
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
        </div>
        <ReachByField
          value={draft.reachBy}
          onChange={(reachBy) => change({ reachBy })}
          error={faults.reachBy}
        />
      </Stack>
      <Stack gap="xs">
        <Signing
          label="Customer’s signature"
          field="signature"
          value={draft.signature}
          onChange={(signature) => change({ signature })}
          suggestedName={draft.knownCustomer?.name ?? draft.name.trim()}
          error={faults.signature}
        />
        {children}
      </Stack>
    </div>
  );
}

interface AgreedFieldsProps extends DraftPart {
  /** What stands under the signature. */
  children: ReactNode;
}

interface ReachByFieldProps {
  value: ReachBy;
  onChange: (reachBy: ReachBy) => void;
  error?: string;
}

const isWay = (text: string): text is ReachBy => REACH_BY.some((way) => way === text);

/** One stop for Tab; the arrow keys choose. */
export function ReachByField({ value, onChange, error }: ReachByFieldProps) {
  return (
    <Radio.Group
      label="Reach the customer by"
      data-field="reachBy"
      value={value}
      onChange={(way) => {
        if (isWay(way)) onChange(way);
      }}
      error={error}
    >
      <Group gap="sm" mt={4} wrap="wrap">
        {REACH_BY.map((way) => (
          <Radio
            key={way}
            value={way}
            label={REACH_BY_LABELS[way]}
            styles={{ label: { paddingInlineStart: 6 } }}
          />
        ))}
      </Group>
    </Radio.Group>
  );
}
