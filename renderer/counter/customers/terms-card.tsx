import { ActionIcon } from '@mantine/core';
import { useDisclosure } from '@mantine/hooks';
import { IconEdit } from '@tabler/icons-react';
import { useQuery } from '@tanstack/react-query';
import type { Customer } from '../../../shared/contract/counter/index.ts';
import type { CustomerTerms } from '../../../shared/contract/till/index.ts';
import { exemptionOn } from '../../../shared/money/index.ts';
import { Card } from '../../common/card.tsx';
import { deskQuery } from '../../common/desk.ts';
import { useFormat } from '../../common/format.ts';
import { QueryView } from '../../common/page.tsx';
import { useMoney, useToday } from '../../common/shop.tsx';
import classes from './customers.module.css';
import { EditTerms } from './edit-terms.tsx';

/** How a customer is taxed and when they pay. */
export function TermsCard({ customer }: { customer: Customer }) {
  const input = { customerId: customer.id };
  const query = useQuery(deskQuery.till.customerTerms.queryOptions({ input }));
  const [editing, dialog] = useDisclosure(false);
  return (
    <Card
      title="Tax and payment"
      aside={
        <ActionIcon
          variant="subtle"
          size={36}
          aria-label="Change tax and payment"
          onClick={dialog.open}
        >
          <IconEdit size={20} aria-hidden />
        </ActionIcon>
      }
    >
      <QueryView query={query}>
        {(terms) => (
          <>
            <TermFacts terms={terms} />
            {editing && <EditTerms customer={customer} terms={terms} onClose={dialog.close} />}
          </>
        )}
      </QueryView>
    </Card>
  );
}

function taxedWords(place: string, exempt: boolean): string {
  if (exempt) return 'not at all';
  return place === '' ? 'as everybody here' : `in ${place}`;
}

function TermFacts({ terms }: { terms: CustomerTerms }) {
  const money = useMoney();
  const format = useFormat();
  const today = useToday();
  const { exemptCertificate, exemptUntil } = terms;
  const exempt = exemptionOn(terms, today) !== '';
  return (
    <dl className={classes.facts}>
      <dt>Taxed</dt>
      <dd>{taxedWords(terms.taxPlace, exempt)}</dd>
      {exemptCertificate !== '' && (
        <>
          <dt>Certificate</dt>
          <dd>
            {exemptCertificate}
            <span className={classes.small}>
              {!exempt
                ? `Ran out on ${format.date(exemptUntil ?? today)}: tax is charged again`
                : exemptUntil === null
                  ? 'No tax, without an end'
                  : `No tax until ${format.date(exemptUntil)}`}
            </span>
          </dd>
        </>
      )}
      <dt>Pays</dt>
      <dd>
        {terms.onAccount
          ? terms.termsDays === 0
            ? 'on account, due at once'
            : `on account, within ${terms.termsDays} days`
          : 'when the machine is collected'}
      </dd>
      {terms.onAccount && (
        <>
          <dt>May owe</dt>
          <dd>{terms.creditLimit === null ? 'without an end' : money(terms.creditLimit)}</dd>
        </>
      )}
    </dl>
  );
}
