import { ActionIcon, Button, Text, TextInput } from '@mantine/core';
import { IconPlus, IconTrash } from '@tabler/icons-react';
import type { LabourRate } from '../../../shared/contract/till/index.ts';
import { Card } from '../../common/card.tsx';
import { MoneyInput } from '../../common/money-input.tsx';
import { useMoney, useShop } from '../../common/shop.tsx';
import classes from './prices.module.css';
import type { RulesForm } from './use-rules-form.ts';

const MOST = 20;

/** What an hour is charged at by kind of work, and what it costs. */
export function LabourCard({ form }: { form: RulesForm }) {
  const money = useMoney();
  const { labourRate } = useShop();
  const { labourRates, labourCost } = form.fields;
  const set = (rates: LabourRate[]) => form.set({ labourRates: rates });
  return (
    <Card title="Labour">
      <Text size="sm" c="dimmed" mb="xs">
        The usual rate, {money(labourRate)} an hour, stands with the shop. Kinds of work that cost
        more or less have their own here.
      </Text>
      {labourRates.map((rate, index) => (
        <div
          // biome's noArrayIndexKey does not apply: a rate has no identity but its place.
          key={`rate-${String(index)}`}
          className={classes.row}
        >
          <TextInput
            label={`Kind of work ${index + 1}`}
            required
            maxLength={60}
            value={rate.name}
            error={form.errors[`rules.labourRates.${index}.name`]}
            onChange={(event) =>
              set(labourRates.with(index, { ...rate, name: event.currentTarget.value }))
            }
          />
          <MoneyInput
            label="An hour"
            value={rate.rate}
            onChange={(minor) => set(labourRates.with(index, { ...rate, rate: minor ?? 0 }))}
          />
          <ActionIcon
            variant="default"
            size={42}
            aria-label={`Remove kind of work ${index + 1}${rate.name === '' ? '' : `, ${rate.name}`}`}
            onClick={() => set(labourRates.toSpliced(index, 1))}
          >
            <IconTrash size={20} aria-hidden />
          </ActionIcon>
        </div>
      ))}
      {form.errors['rules.labourRates'] !== undefined && (
        <Text size="sm" c="var(--mantine-color-error)">
          {form.errors['rules.labourRates']}
        </Text>
      )}
      {labourRates.length < MOST && (
        <Button
          variant="default"
          mt="xs"
          leftSection={<IconPlus size={18} aria-hidden />}
          onClick={() => set([...labourRates, { name: '', rate: labourRate }])}
        >
          Add a kind of work
        </Button>
      )}
      <MoneyInput
        mt="md"
        maw="26rem"
        label="An hour costs the shop"
        description="Wages and what goes with them; for margins, never on a customer’s paper"
        value={labourCost}
        onChange={(cost) => form.set({ labourCost: cost })}
      />
    </Card>
  );
}
