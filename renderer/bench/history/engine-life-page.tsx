import { Anchor } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { Link, useParams } from 'react-router';
import type { EngineHistory } from '../../../shared/contract/bench/index.ts';
import { EngineId } from '../../../shared/contract/ids.ts';
import { MACHINE_KIND_LABELS } from '../../../shared/work/vocabulary.ts';
import { deskQuery } from '../../common/desk.ts';
import { Empty, Page, QueryView } from '../../common/page.tsx';
import { refusalOf } from '../../common/refusal.tsx';
import classes from './history.module.css';
import { LifeList } from './life-list.tsx';
import { WearCard } from './wear-card.tsx';

/** An engine's life on one page: its visits, and how it wore. */
export function EngineLifePage() {
  const { id = '' } = useParams();
  const known = EngineId.safeParse(id);
  return known.success ? <KnownEngine id={known.data} /> : <NoSuchEngine />;
}

function NoSuchEngine() {
  return (
    <Page title="Engine">
      <Empty
        title="There is no such engine"
        hint="Search for its serial number, or come here from one of its jobs."
        action={
          <Anchor component={Link} to="/jobs">
            All jobs
          </Anchor>
        }
      />
    </Page>
  );
}

function KnownEngine({ id }: { readonly id: EngineId }) {
  const query = useQuery(deskQuery.bench.engineHistory.queryOptions({ input: { engineId: id } }));
  if (query.error !== null && refusalOf(query.error).code === 'NOT_FOUND') return <NoSuchEngine />;
  return (
    <Page
      title={query.data === undefined ? 'Engine' : nameOf(query.data)}
      description={query.data && <About life={query.data} />}
    >
      <QueryView query={query}>
        {(life) => (
          <div className={classes.columns}>
            <WearCard features={life.features} />
            <LifeList jobs={life.jobs} />
          </div>
        )}
      </QueryView>
    </Page>
  );
}

function nameOf({ machine: { engine } }: EngineHistory): string {
  const name = [engine.make, engine.model].filter(Boolean).join(' ');
  return name === '' ? 'Engine not identified' : `Engine ${name}`;
}

function About({ life: { machine, engineModel } }: { readonly life: EngineHistory }) {
  const { engine } = machine;
  const plates = [
    engine.typeCode && `type code ${engine.typeCode}`,
    engine.serial && `serial ${engine.serial}`,
    engine.dateCode && `date code ${engine.dateCode}`,
  ].filter(Boolean);
  const words = [MACHINE_KIND_LABELS[machine.kind], machine.make, machine.model].filter(Boolean);
  return (
    <>
      {plates.length > 0 && `${plates.join(' · ')} · `}
      in: {words.join(' ')} of{' '}
      <Anchor component={Link} to={`/customer/${machine.customerId}`} inherit>
        <bdi>{machine.customerName}</bdi>
      </Anchor>
      {engineModel !== null && (
        <>
          {' '}
          · spec book:{' '}
          <Anchor component={Link} to={`/spec-book/${engineModel.id}`} inherit>
            {engineModel.make} {engineModel.model}
          </Anchor>
        </>
      )}
    </>
  );
}
