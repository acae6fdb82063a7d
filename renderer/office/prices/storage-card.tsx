import { Checkbox, NumberInput, Text } from '@mantine/core';
import { Card } from '../../common/card.tsx';
import { MoneyInput } from '../../common/money-input.tsx';
import officeClasses from '../office.module.css';
import type { RulesForm } from './use-rules-form.ts';

/** What is charged for a machine that is ready and not collected. */
export function StorageCard({ form }: { form: RulesForm }) {
  const { storage } = form.fields;
  return (
    <Card title="Storage">
      <Checkbox
        label="Machines that are not collected cost storage"
        checked={storage !== null}
        onChange={(event) =>
          form.set({
            storage: event.currentTarget.checked ? { afterDays: 30, perDay: 0, cap: null } : null,
          })
        }
      />
      {storage !== null && (
        <div className={officeClasses.fields}>
          <NumberInput
            mt="sm"
            label="Days without charge, once it is ready"
            min={0}
            max={1000}
            allowDecimal={false}
            value={storage.afterDays}
            error={form.errors['rules.storage.afterDays']}
            onChange={(days) =>
              typeof days === 'number' && form.set({ storage: { ...storage, afterDays: days } })
            }
          />
          <MoneyInput
            mt="sm"
            label="Each day after that"
            value={storage.perDay}
            onChange={(perDay) => form.set({ storage: { ...storage, perDay: perDay ?? 0 } })}
          />
          <MoneyInput
            mt="sm"
            label="At most"
            placeholder="No cap"
            value={storage.cap}
            onChange={(cap) => form.set({ storage: { ...storage, cap } })}
          />
        </div>
      )}
      <Text size="sm" c="dimmed" mt="sm">
        Whether storage may be charged, after what notice, and what may become of a machine that
        nobody collects, local law decides. Say so on the claim ticket, which the customer signs.
      </Text>
    </Card>
  );
}
