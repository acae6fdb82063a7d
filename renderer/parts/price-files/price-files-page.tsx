import { Box, Button, Table, Text } from '@mantine/core';
import { IconFileImport } from '@tabler/icons-react';
import { useQuery } from '@tanstack/react-query';
import { Link } from 'react-router';
import type { PriceFileCard } from '../../../shared/contract/parts/index.ts';
import { Card } from '../../common/card.tsx';
import { deskQuery } from '../../common/desk.ts';
import { useFormat } from '../../common/format.ts';
import { Empty, Page, QueryView } from '../../common/page.tsx';
import tableClasses from '../parts-table.module.css';
import { OfferSearch } from './offer-search.tsx';
import { PriceFileStateBadge } from './price-file-state.tsx';
import classes from './price-files.module.css';
import { useCount } from './use-count.ts';

/** Suppliers' price lists: what they offer, and the files that said so. */
export function PriceFilesPage() {
  const query = useQuery(
    deskQuery.parts.priceFiles.queryOptions({
      input: {},
      refetchInterval: ({ state }) =>
        state.data?.some((file) => file.state === 'reading') === true ? 500 : false,
    }),
  );
  const readOne = (
    <Button
      component={Link}
      to="/parts/price-files/new"
      leftSection={<IconFileImport size={18} aria-hidden />}
    >
      Read a price file
    </Button>
  );
  return (
    <Page title="Price lists" actions={readOne}>
      <OfferSearch />
      <QueryView query={query}>
        {(files) =>
          files.length === 0 ? (
            <Empty
              title="No price file was read yet"
              hint="A supplier’s file (CSV or XLSX) keeps costs, list prices and replaced numbers up to date. You see what would change before anything does."
              action={readOne}
            />
          ) : (
            <Card title="Files" flush>
              <Files files={files} />
            </Card>
          )
        }
      </QueryView>
    </Page>
  );
}

function Files({ files }: { files: readonly PriceFileCard[] }) {
  const format = useFormat();
  const count = useCount();
  return (
    <Box component="section" className={classes.scroll} aria-label="Price files" tabIndex={0}>
      <Table className={classes.files}>
        <Table.Thead>
          <Table.Tr>
            <Table.Th>File</Table.Th>
            <Table.Th>State</Table.Th>
            <Table.Th className={classes.figure}>Lines</Table.Th>
            <Table.Th className={classes.figure}>Can’t be used</Table.Th>
            <Table.Th>When</Table.Th>
          </Table.Tr>
        </Table.Thead>
        <Table.Tbody>
          {files.map((file) => (
            <Table.Tr key={file.id} className={tableClasses.row}>
              <Table.Td>
                <Link to={`/parts/price-files/${file.id}`} className={tableClasses.link}>
                  {file.supplier}
                </Link>
                <Text size="sm" c="dimmed">
                  {file.fileName}
                </Text>
              </Table.Td>
              <Table.Td>
                <PriceFileStateBadge state={file.state} />
              </Table.Td>
              <Table.Td className={classes.figure}>{count(file.lines)}</Table.Td>
              <Table.Td className={classes.figure}>{count(file.counts.unreadable)}</Table.Td>
              <Table.Td>
                {format.instant(file.undoneAt ?? file.appliedAt ?? file.at)}
                <Text size="sm" c="dimmed">
                  {file.by}
                </Text>
              </Table.Td>
            </Table.Tr>
          ))}
        </Table.Tbody>
      </Table>
    </Box>
  );
}
