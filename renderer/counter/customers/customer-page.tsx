import { Anchor, Button, Text } from '@mantine/core';
import { useDisclosure } from '@mantine/hooks';
import { IconCoins, IconEdit, IconPlus } from '@tabler/icons-react';
import { useQuery } from '@tanstack/react-query';
import { Link, useParams } from 'react-router';
import { CustomerId } from '../../../shared/contract/ids.ts';
import { useArrowRows } from '../../common/arrow-rows.ts';
import { Card } from '../../common/card.tsx';
import { deskQuery } from '../../common/desk.ts';
import { Empty, Page, QueryView } from '../../common/page.tsx';
import { JobsTable } from '../jobs/jobs-table.tsx';
import { CustomerFacts } from './customer-facts.tsx';
import classes from './customers.module.css';
import { MachineList } from './machine-list.tsx';
import { ReviseCustomer } from './revise-customer.tsx';
import { TermsCard } from './terms-card.tsx';

/** One customer: how to reach them, their machines, and every job. */
export function CustomerPage() {
  const { id = '' } = useParams();
  const known = CustomerId.safeParse(id);
  if (!known.success)
    return (
      <Page title="No such customer">
        <Text mb="md">That address names no customer.</Text>
        <Anchor component={Link} to="/customers">
          All customers
        </Anchor>
      </Page>
    );
  return <KnownCustomer id={known.data} />;
}

function KnownCustomer({ id }: { id: CustomerId }) {
  const query = useQuery(deskQuery.counter.customer.queryOptions({ input: { id } }));
  const [editing, dialog] = useDisclosure(false);
  const rows = useArrowRows<HTMLTableElement>();
  return (
    <Page
      key={query.data?.customer.id}
      title={query.data?.customer.name ?? 'Customer'}
      description={
        query.data === undefined ? undefined : `Customer no. ${query.data.customer.number}`
      }
      actions={
        <>
          <Button
            variant="default"
            component={Link}
            to={`/office/books/customer/${id}`}
            leftSection={<IconCoins size={20} aria-hidden />}
          >
            Account
          </Button>
          <Button
            variant="default"
            leftSection={<IconEdit size={20} aria-hidden />}
            onClick={dialog.open}
          >
            Edit
          </Button>
          <Button
            component={Link}
            to={`/take-in?customer=${id}`}
            leftSection={<IconPlus size={20} aria-hidden />}
          >
            Take in a machine
          </Button>
        </>
      }
    >
      <QueryView query={query}>
        {({ customer, machines, jobs }) => (
          <div className={classes.columns}>
            <div className={classes.side}>
              <Card title="How to reach them">
                <CustomerFacts customer={customer} />
              </Card>
              <TermsCard customer={customer} />
              <Card title="Machines" flush aside={<Text fw={700}>{machines.length}</Text>}>
                <MachineList machines={machines} />
              </Card>
            </div>
            <Card title="Jobs" flush={jobs.length > 0} aside={<Text fw={700}>{jobs.length}</Text>}>
              {jobs.length === 0 ? (
                <Empty
                  title="No jobs yet"
                  hint="Take a machine in for this customer and its job stands here."
                />
              ) : (
                <JobsTable
                  jobs={jobs}
                  listRef={rows.list}
                  onKeyDown={rows.onListKey}
                  withoutCustomer
                  bare
                />
              )}
            </Card>
            <ReviseCustomer customer={customer} opened={editing} onClose={dialog.close} />
          </div>
        )}
      </QueryView>
    </Page>
  );
}
