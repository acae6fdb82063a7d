import { Alert, Button, Group, Stack, Text, Textarea } from '@mantine/core';
import { IconPencil, IconScale } from '@tabler/icons-react';
import { isSample, SAMPLE_TEXTS } from '../../shared/work/office/sample-texts.ts';
import { Page } from '../common/page.tsx';
import { RefusalAlert } from '../common/refusal.tsx';
import classes from './office.module.css';
import { SaveBar } from './save-bar.tsx';
import { useHashField } from './use-hash-field.ts';
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
  useHashField();
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
          <Stack key={text.key} gap={4} align="stretch">
            <Textarea
              label={text.label}
              description={text.description}
              minRows={3}
              maxLength={text.most}
              id={text.key}
              value={form.fields[text.key]}
              error={form.errors[text.key]}
              onChange={(event) => form.set({ [text.key]: event.currentTarget.value })}
            />
            {form.fields[text.key].trim() === '' && (
              <Group>
                <Button
                  variant="default"
                  size="compact-sm"
                  leftSection={<IconPencil size={16} aria-hidden />}
                  aria-label={`Start from a sample: ${text.label}`}
                  onClick={() => {
                    form.set({ [text.key]: SAMPLE_TEXTS[text.key] });
                    document.getElementById(text.key)?.focus();
                  }}
                >
                  Start from a sample
                </Button>
              </Group>
            )}
            {isSample(form.fields[text.key]) && (
              <Text size="sm" role="status">
                This is a sample. Fill in what stands in brackets, and change what your shop does
                otherwise.
              </Text>
            )}
          </Stack>
        ))}
        <RefusalAlert error={form.save.error} />
        <SaveBar changed={form.changed} saving={form.save.isPending} onReset={form.reset} />
      </form>
    </Page>
  );
}
