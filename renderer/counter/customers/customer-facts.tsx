import { Anchor } from '@mantine/core';
import type { Customer } from '../../../shared/contract/counter/index.ts';
import { REACH_BY_LABELS } from '../../../shared/work/vocabulary.ts';
import { useFormat } from '../../common/format.ts';
import classes from './customers.module.css';

export function CustomerFacts({ customer }: { customer: Customer }) {
  const format = useFormat();
  const international = customer.phoneInternational;
  return (
    <dl className={classes.facts}>
      <dt>Telephone</dt>
      <dd>
        {customer.phone === '' ? '–' : customer.phone}
        {!sameNumber(international, customer.phone) && (
          <span className={classes.small}>{international}</span>
        )}
      </dd>
      <dt>E-mail</dt>
      <dd>
        {customer.email === '' ? (
          '–'
        ) : (
          <Anchor href={`mailto:${customer.email}`}>
            <EMailWords address={customer.email} />
          </Anchor>
        )}
      </dd>
      <dt>Reach by</dt>
      <dd>{REACH_BY_LABELS[customer.reachBy]}</dd>
      {customer.address !== '' && (
        <>
          <dt>Address</dt>
          <dd dir="auto">{customer.address}</dd>
        </>
      )}
      {customer.note !== '' && (
        <>
          <dt>Note</dt>
          <dd dir="auto">{customer.note}</dd>
        </>
      )}
      <dt>Customer since</dt>
      <dd>{format.day(customer.since)}</dd>
    </dl>
  );
}

/** Written internationally a number of this country only gains its country's digits. */
const sameNumber = (international: string, phone: string): boolean =>
  international.endsWith(phone.replace(/\D/g, '').replace(/^0+/, ''));

/** An address breaks before its @, not in the middle of a name. */
function EMailWords({ address }: { address: string }) {
  const [name = '', host = ''] = address.split('@');
  return (
    <>
      {name}
      <wbr />@{host}
    </>
  );
}
