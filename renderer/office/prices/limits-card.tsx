import { Alert, NumberInput } from '@mantine/core';
import { IconScale } from '@tabler/icons-react';
import { Card } from '../../common/card.tsx';
import { MoneyInput } from '../../common/money-input.tsx';
import { RateInput } from '../../common/rate-input.tsx';
import officeClasses from '../office.module.css';
import type { RulesForm } from './use-rules-form.ts';

/** How far a bill may pass what was approved, and what is asked about. */
export function LimitsCard({ form }: { form: RulesForm }) {
  const { tolerancePpm, toleranceCap, estimateDays, forgottenAfterHours } = form.fields;
  return (
    <Card title="Limits">
      <div className={officeClasses.fields}>
        <RateInput
          label="A bill may pass what was approved by"
          description="Zero: not by a cent without another approval"
          value={tolerancePpm}
          onChange={(ppm) => form.set({ tolerancePpm: ppm ?? 0 })}
        />
        <MoneyInput
          label="And by this much at most"
          description="Empty: the share alone decides"
          value={toleranceCap}
          onChange={(cap) => form.set({ toleranceCap: cap })}
        />
        <NumberInput
          label="An estimate is good for, days"
          description="When nobody writes a date; empty for no end"
          min={1}
          max={365}
          allowDecimal={false}
          value={estimateDays ?? ''}
          error={form.errors['rules.estimateDays']}
          onChange={(days) => form.set({ estimateDays: typeof days === 'number' ? days : null })}
        />
        <NumberInput
          label="A clock is asked about after, hours"
          description="Somebody may have forgotten to clock off"
          min={1}
          max={48}
          allowDecimal={false}
          value={forgottenAfterHours}
          error={form.errors['rules.forgottenAfterHours']}
          onChange={(hours) =>
            typeof hours === 'number' && form.set({ forgottenAfterHours: hours })
          }
        />
      </div>
      <Alert mt="md" icon={<IconScale aria-hidden />} title="Local law decides">
        In many places a bill must not pass a written estimate without the customer’s consent, or
        only by so much. What the law there allows comes before what is set here; ask somebody who
        knows it.
      </Alert>
    </Card>
  );
}
