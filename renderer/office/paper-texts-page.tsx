import { Alert, Textarea } from '@mantine/core';
import { IconScale } from '@tabler/icons-react';
import { Page } from '../common/page.tsx';
import { RefusalAlert } from '../common/refusal.tsx';
import classes from './office.module.css';
import { SaveBar } from './save-bar.tsx';
import { useShopForm } from './use-shop-form.ts';

const TEXTS = [
  {
    key: 'claimTerms',
    label: 'Terms on the claim ticket',
    description: 'Storage, uncollected machines, fuel, what was left with the machine',
    most: 2000,
  },
  {
    key: 'estimateTerms',
    label: 'Terms on the estimate',
    description: 'How long it holds; what happens when more is found',
    most: 2000,
  },
  {
    key: 'invoiceTerms',
    label: 'Terms on the invoice',
    description: 'When and how it is paid',
    most: 2000,
  },
  {
    key: 'warranty',
    label: 'Warranty on the work order',
    description: 'What is covered, for how long, and what ends it',
    most: 1000,
  },
] as const;

const KEYS = TEXTS.map(({ key }) => key);

/** The shop's own words on its papers. */
export function PaperTextsPage() {
  const form = useShopForm('paper-texts', KEYS);
  return (
    <Page
      title="Words on papers"
      description="They stand on papers issued from now on; a paper that is issued keeps the words it has."
    >
      <form onSubmit={form.submit} className={classes.form}>
        <Alert variant="light" color="gray" icon={<IconScale aria-hidden />}>
          Local law on estimates, storage, liens, tax and signatures comes before anything written
          here. Have the words read by somebody who knows it.
        </Alert>
        {TEXTS.map((text) => (
          <Textarea
            key={text.key}
            label={text.label}
            description={text.description}
            minRows={3}
            maxLength={text.most}
            value={form.fields[text.key]}
            error={form.errors[text.key]}
            onChange={(event) => form.set({ [text.key]: event.currentTarget.value })}
          />
        ))}
        <RefusalAlert error={form.save.error} />
        <SaveBar changed={form.changed} saving={form.save.isPending} onReset={form.reset} />
      </form>
    </Page>
  );
}
