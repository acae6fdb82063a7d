import { Alert } from '@mantine/core';
import { IconLock } from '@tabler/icons-react';
import { useQuery } from '@tanstack/react-query';
import type { TillRules } from '../../../shared/contract/till/index.ts';
import { deskQuery } from '../../common/desk.ts';
import { Page, QueryView } from '../../common/page.tsx';
import { RefusalAlert } from '../../common/refusal.tsx';
import { useStation } from '../../common/station.tsx';
import classes from '../office.module.css';
import { SaveBar } from '../save-bar.tsx';
import { BundlesCard } from './bundles-card.tsx';
import { LabourCard } from './labour-card.tsx';
import { LimitsCard } from './limits-card.tsx';
import { MarkupCard } from './markup-card.tsx';
import { StaffCostsCard } from './staff-costs-card.tsx';
import { StorageCard } from './storage-card.tsx';
import { SuppliesCard } from './supplies-card.tsx';
import { useRulesForm } from './use-rules-form.ts';

/** How the shop comes by its prices, and how far a bill may go. */
export function PricesPage() {
  const query = useQuery(deskQuery.till.rules.queryOptions({ input: {} }));
  return (
    <Page
      title="Prices and limits"
      description="How the shop comes by its prices, and how far a bill may go. Taxes and rounding stand with the shop."
    >
      <QueryView query={query}>{(rules) => <Rules rules={rules} />}</QueryView>
    </Page>
  );
}

function Rules({ rules }: { rules: TillRules }) {
  const { staff } = useStation();
  const form = useRulesForm(rules);
  return (
    <>
      <form onSubmit={form.submit} className={classes.form}>
        {staff?.role !== 'owner' && (
          <Alert icon={<IconLock aria-hidden />} title="Only an owner saves this page">
            Everybody may read it. Let the owner take this station to change something.
          </Alert>
        )}
        <LabourCard form={form} />
        <MarkupCard form={form} />
        <SuppliesCard form={form} />
        <LimitsCard form={form} />
        <StorageCard form={form} />
        <RefusalAlert error={form.save.error} />
        <SaveBar changed={form.changed} saving={form.save.isPending} onReset={form.reset} />
      </form>
      <StaffCostsCard />
      <BundlesCard />
    </>
  );
}
