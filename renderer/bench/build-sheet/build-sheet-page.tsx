import { Anchor } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { Link, useParams } from 'react-router';
import type { BuildSheet } from '../../../shared/contract/bench/index.ts';
import { EngineModelId } from '../../../shared/contract/ids.ts';
import { deskQuery } from '../../common/desk.ts';
import { useFormat } from '../../common/format.ts';
import { Empty, Page, QueryView } from '../../common/page.tsx';
import { BuildSheetEditor } from './build-sheet-editor.tsx';

/** The build sheet of an engine model, or, without one in the address, of every engine. */
export function BuildSheetPage() {
  const { id } = useParams();
  const known = EngineModelId.nullable().safeParse(id ?? null);
  return known.success ? (
    <KnownSheet key={known.data} engineModelId={known.data} />
  ) : (
    <Page title="Build sheet">
      <Empty
        title="The spec book has no such engine"
        hint="Open the engine in the spec book and go to its build sheet from there."
      />
    </Page>
  );
}

function KnownSheet({ engineModelId }: { readonly engineModelId: EngineModelId | null }) {
  const sheet = useQuery(deskQuery.bench.buildSheet.queryOptions({ input: { engineModelId } }));
  const model = sheet.data?.engineModel ?? null;
  return (
    <Page
      title={
        engineModelId === null
          ? 'Build sheet of every engine'
          : model === null
            ? 'Build sheet'
            : `Build sheet: ${model.make} ${model.model}`
      }
      description={sheet.data && <Whence sheet={sheet.data} />}
    >
      <QueryView query={sheet}>
        {(data) => <BuildSheetEditor key={data.revision} sheet={data} />}
      </QueryView>
    </Page>
  );
}

function Whence({ sheet }: { readonly sheet: BuildSheet }) {
  const format = useFormat();
  const { engineModel, inherited } = sheet;
  return (
    <>
      {sheet.revision === 0
        ? `No sheet of its own yet: these are the steps that it takes from ${inherited.name}. `
        : `Revision ${sheet.revision}, by ${sheet.by}${sheet.at === null ? '' : `, ${format.instant(sheet.at)}`}. `}
      Jobs whose build has begun keep the steps that they have.
      {engineModel !== null && (
        <>
          {' '}
          <Anchor component={Link} to={`/spec-book/${engineModel.id}`} inherit>
            Specifications
          </Anchor>
          {' · '}
          <Anchor component={Link} to="/build-sheet" inherit>
            Sheet of every engine
          </Anchor>
        </>
      )}
    </>
  );
}
