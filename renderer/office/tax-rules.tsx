import { ActionIcon, Button, Checkbox, Fieldset, Text, TextInput } from '@mantine/core';
import { IconPlus, IconTrash } from '@tabler/icons-react';
import { useEffect, useRef, useState } from 'react';
import type { TaxRule } from '../../shared/contract/office.ts';
import { LINE_KIND_LABELS, LINE_KINDS } from '../../shared/work/vocabulary.ts';
import { DateField } from '../common/date-field.tsx';
import { RateInput } from '../common/rate-input.tsx';
import classes from './office.module.css';

const MOST = 6;

interface TaxRulesProps {
  taxes: readonly TaxRule[];
  errors: Record<string, string>;
  onChange: (taxes: TaxRule[]) => void;
}

/** The taxes of the place: each with its rate and the kinds of line that it falls on. */
export function TaxRules({ taxes, errors, onChange }: TaxRulesProps) {
  const [added, setAdded] = useState<number | null>(null);
  const change = (index: number, rule: TaxRule) =>
    onChange(taxes.map((one, at) => (at === index ? rule : one)));
  return (
    <Fieldset variant="unstyled" legend={<Text fw={600}>Taxes</Text>} mt="md">
      <Text size="sm" c="dimmed" mb="xs">
        Local law says which kinds of line are taxed, and at what rate. A tax of a place is charged
        to customers of that place only; without dates it holds always.
      </Text>
      {taxes.map((rule, index) => (
        <TaxRow
          // biome's noArrayIndexKey does not apply: a rule has no identity but its place.
          key={`tax-${String(index)}`}
          place={index + 1}
          rule={rule}
          fresh={added === index}
          nameError={errors[`taxes.${index}.name`]}
          onChange={(next) => change(index, next)}
          onRemove={() => onChange(taxes.filter((_, at) => at !== index))}
        />
      ))}
      {taxes.length < MOST && (
        <Button
          id="taxes"
          variant="default"
          mt="xs"
          leftSection={<IconPlus size={18} aria-hidden />}
          onClick={() => {
            setAdded(taxes.length);
            onChange([
              ...taxes,
              { name: '', ratePpm: 0, kinds: ['part'], place: '', from: null, until: null },
            ]);
          }}
        >
          Add a tax
        </Button>
      )}
    </Fieldset>
  );
}

interface TaxRowProps {
  place: number;
  rule: TaxRule;
  /** It was added just now: its name is wanted next. */
  fresh: boolean;
  nameError: string | undefined;
  onChange: (rule: TaxRule) => void;
  onRemove: () => void;
}

function TaxRow({ place, rule, fresh, nameError, onChange, onRemove }: TaxRowProps) {
  const name = useRef<HTMLInputElement>(null);
  useEffect(() => {
    if (fresh) name.current?.focus();
  }, [fresh]);
  return (
    <div className={classes.tax}>
      <TextInput
        ref={name}
        label={`Tax ${place}`}
        required
        value={rule.name}
        error={nameError}
        onChange={(event) => onChange({ ...rule, name: event.currentTarget.value })}
      />
      <RateInput
        label="Rate, %"
        value={rule.ratePpm}
        onChange={(ratePpm) => onChange({ ...rule, ratePpm: ratePpm ?? 0 })}
      />
      <TextInput
        label="Place"
        placeholder="Everywhere"
        maxLength={60}
        value={rule.place}
        onChange={(event) => onChange({ ...rule, place: event.currentTarget.value })}
      />
      <DateField label="From" value={rule.from} onChange={(from) => onChange({ ...rule, from })} />
      <DateField
        label="Until"
        value={rule.until}
        onChange={(until) => onChange({ ...rule, until })}
      />
      <Fieldset variant="unstyled" aria-label={`Tax ${place} falls on`} className={classes.kinds}>
        {LINE_KINDS.map((kind) => (
          <Checkbox
            key={kind}
            label={LINE_KIND_LABELS[kind]}
            checked={rule.kinds.includes(kind)}
            onChange={(event) =>
              onChange({
                ...rule,
                kinds: LINE_KINDS.filter((one) =>
                  one === kind ? event.currentTarget.checked : rule.kinds.includes(one),
                ),
              })
            }
          />
        ))}
      </Fieldset>
      <ActionIcon
        variant="default"
        size={42}
        aria-label={`Remove tax ${place}${rule.name === '' ? '' : `, ${rule.name}`}`}
        onClick={onRemove}
      >
        <IconTrash size={20} aria-hidden />
      </ActionIcon>
    </div>
  );
}
