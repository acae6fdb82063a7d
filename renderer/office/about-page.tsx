import { Text } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { Card } from '../common/card.tsx';
import { deskQuery } from '../common/desk.ts';
import { Page, QueryView } from '../common/page.tsx';
import classes from './office.module.css';

export function AboutPage() {
  const query = useQuery(deskQuery.office.about.queryOptions({ input: {} }));
  return (
    <Page title="About">
      <QueryView query={query}>
        {(about) => (
          <div className={classes.form}>
            <Card title={`${about.program} ${about.version}`}>
              <dl className={classes.facts}>
                <dt>Data folder</dt>
                <dd className={classes.mono}>{about.dataFolder}</dd>
                <dt>Store</dt>
                <dd>brought up to date by {about.schema} migrations</dd>
                <dt>Shop</dt>
                <dd>{about.demo ? 'the invented demo shop' : 'your own'}</dd>
              </dl>
            </Card>
            <Card title="What it does not decide">
              <Text size="sm" maw="70ch">
                Tappet keeps the record; the mechanic judges. A figure that it questions is
                questioned and never changed, and the maker’s word comes before its arithmetic.
                Local law on estimates, storage, liens, tax and signatures comes before anything
                that it prints. Generators on house wiring, gas-fuelled engines and pressure vessels
                are for licensed people.
              </Text>
            </Card>
          </div>
        )}
      </QueryView>
    </Page>
  );
}
