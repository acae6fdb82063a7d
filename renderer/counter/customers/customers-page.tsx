import { Button, TextInput } from '@mantine/core';
import { useDebouncedValue, useDisclosure } from '@mantine/hooks';
import { IconFilter, IconUserPlus } from '@tabler/icons-react';
import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { type ReactNode, useState } from 'react';
import { useArrowRows } from '../../common/arrow-rows.ts';
import { deskQuery } from '../../common/desk.ts';
import { Empty, Page, QueryView } from '../../common/page.tsx';
import { AddCustomer } from './add-customer.tsx';
import classes from './customers.module.css';
import { CustomersTable } from './customers-table.tsx';

const LIMIT = 200;

/** Everybody whose machine was ever here. */
export function CustomersPage() {
  const [typed, setTyped] = useState('');
  const [text] = useDebouncedValue(typed.trim(), 130);
  const [adding, dialog] = useDisclosure(false);
  const query = useQuery(
    deskQuery.counter.findCustomers.queryOptions({
      input: { text, limit: LIMIT },
      placeholderData: keepPreviousData,
    }),
  );
  const rows = useArrowRows<HTMLTableElement>(
    text === typed.trim() && query.data !== undefined && !query.isPlaceholderData,
  );
  const addButton = (
    <Button leftSection={<IconUserPlus size={20} aria-hidden />} onClick={dialog.open}>
      Add a customer
    </Button>
  );
  return (
    <Page title="Customers" actions={addButton}>
      <TextInput
        ref={rows.filter}
        aria-label="Narrow the list"
        placeholder="Name, telephone, e-mail …"
        leftSection={<IconFilter size={18} aria-hidden />}
        autoFocus
        autoComplete="off"
        value={typed}
        onChange={(event) => setTyped(event.currentTarget.value)}
        onKeyDown={rows.onFilterKey}
        className={classes.filter}
      />
      <QueryView query={query}>
        {(customers) =>
          customers.length === 0 ? (
            <NoCustomers narrowed={text !== ''} action={addButton} />
          ) : (
            <>
              <p role="status" className={classes.count}>
                {customers.length === LIMIT
                  ? `The first ${LIMIT} customers; narrow the list for the others`
                  : countOf(customers.length)}
              </p>
              <CustomersTable
                customers={customers}
                listRef={rows.list}
                onKeyDown={rows.onListKey}
              />
            </>
          )
        }
      </QueryView>
      <AddCustomer opened={adding} onClose={dialog.close} />
    </Page>
  );
}

const countOf = (count: number): string => (count === 1 ? '1 customer' : `${count} customers`);

function NoCustomers({ narrowed, action }: { narrowed: boolean; action: ReactNode }) {
  return narrowed ? (
    <Empty
      title="No customer answers to that"
      hint="Type fewer letters; accents and case don’t matter. Part of the telephone number works as well."
      action={action}
    />
  ) : (
    <Empty
      title="No customers yet"
      hint="They are added as their machines are taken in, or here beforehand."
      action={action}
    />
  );
}
