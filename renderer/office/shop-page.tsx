import { Autocomplete, Checkbox, Select, Textarea, TextInput } from '@mantine/core';
import { Card } from '../common/card.tsx';
import { MoneyInput } from '../common/money-input.tsx';
import { Page } from '../common/page.tsx';
import { RefusalAlert } from '../common/refusal.tsx';
import classes from './office.module.css';
import { CURRENCIES, TIME_ZONES } from './places.ts';
import { SaveBar } from './save-bar.tsx';
import { TaxRules } from './tax-rules.tsx';
import { useHashField } from './use-hash-field.ts';
import { useShopForm } from './use-shop-form.ts';

const KEYS = [
  'name',
  'address',
  'phone',
  'email',
  'taxNumber',
  'currency',
  'locale',
  'timeZone',
  'paperSize',
  'country',
  'rounding',
  'taxBasis',
  'taxes',
  'labourRate',
  'bothUnits',
] as const;

const ROUNDINGS = [
  { value: 'half-up', label: 'Halves up: 0.5 becomes 1' },
  { value: 'half-even', label: 'Halves to even: 0.5 becomes 0, 1.5 becomes 2' },
] as const;

const TAX_BASES = [
  { value: 'line', label: 'On each line' },
  { value: 'invoice', label: 'On the bill’s sums' },
] as const;

type TextKey = 'name' | 'address' | 'phone' | 'email' | 'taxNumber' | 'locale' | 'country';

/** The shop itself: what stands on its papers, where it is, and how it reckons. */
export function ShopPage() {
  const form = useShopForm('shop', KEYS);
  const { fields, set, errors } = form;
  useHashField();
  const text = (key: TextKey, label: string) => ({
    id: key,
    label,
    value: fields[key],
    error: errors[key],
    onChange: (event: { currentTarget: { value: string } }) =>
      set({ [key]: event.currentTarget.value }),
  });
  return (
    <Page title="Shop" description="What stands on the papers, and how the shop reckons.">
      <form onSubmit={form.submit} className={classes.form}>
        <Card title="On the papers">
          <div className={classes.fields}>
            <TextInput {...text('name', 'Name of the shop')} required />
            <TextInput {...text('taxNumber', 'Tax number')} />
            <TextInput {...text('phone', 'Telephone')} />
            <TextInput {...text('email', 'E-mail')} />
            <Textarea {...text('address', 'Address')} className={classes.wide} minRows={3} />
          </div>
        </Card>
        <Card title="Where it is">
          <div className={classes.fields}>
            <TextInput
              {...text('country', 'Country')}
              description="Two capitals, for example US"
              maxLength={2}
            />
            <Autocomplete
              label="Time zone"
              description="Days begin and end by it"
              size="md"
              limit={8}
              data={TIME_ZONES}
              value={fields.timeZone}
              error={errors.timeZone}
              onChange={(timeZone) => set({ timeZone })}
            />
            <TextInput
              {...text('locale', 'Language tag')}
              description="How dates and amounts are written: en-US, en-GB, de-DE"
            />
            <Select
              label="Paper"
              description="For papers issued from now on"
              data={['A4', 'Letter']}
              value={fields.paperSize}
              onChange={(paperSize) => paperSize !== null && set({ paperSize })}
            />
          </div>
        </Card>
        <Card title="Money">
          <div className={classes.fields}>
            <Autocomplete
              label="Currency"
              size="md"
              limit={8}
              data={CURRENCIES}
              value={fields.currency}
              error={errors.currency}
              onChange={(currency) => set({ currency })}
            />
            <MoneyInput
              label="Labour, an hour"
              id="labourRate"
              value={fields.labourRate}
              error={errors.labourRate}
              onChange={(labourRate) => set({ labourRate: labourRate ?? 0 })}
            />
            <Select
              label="Rounding"
              data={ROUNDINGS}
              value={fields.rounding}
              onChange={(rounding) => rounding !== null && set({ rounding })}
            />
            <Select
              label="Tax is rounded"
              data={TAX_BASES}
              value={fields.taxBasis}
              onChange={(taxBasis) => taxBasis !== null && set({ taxBasis })}
            />
          </div>
          <TaxRules taxes={fields.taxes} errors={errors} onChange={(taxes) => set({ taxes })} />
        </Card>
        <Card title="Measuring">
          <Checkbox
            label="Show both units beside each reading, on screens and papers"
            checked={fields.bothUnits}
            onChange={(event) => set({ bothUnits: event.currentTarget.checked })}
          />
        </Card>
        <RefusalAlert error={form.save.error} />
        <SaveBar changed={form.changed} saving={form.save.isPending} onReset={form.reset} />
      </form>
    </Page>
  );
}
