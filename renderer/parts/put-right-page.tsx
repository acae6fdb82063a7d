import { Anchor, Button, Stack, Table, Text } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { Link } from 'react-router';
import type { ShelfToPutRight } from '../../shared/contract/parts/index.ts';
import { formatQuantity } from '../../shared/money/index.ts';
import { deskQuery } from '../common/desk.ts';
import { useFormat } from '../common/format.ts';
import { Empty, Page, QueryView } from '../common/page.tsx';
import { Sheet } from '../common/sheet.tsx';
import { useShop } from '../common/shop.tsx';
import classes from './parts-table.module.css';
import { PutRightDialog } from './put-right-dialog.tsx';

/** Shelves below nothing: somebody took what the books did not know of. */
export function PutRightPage() {
  const query = useQuery(deskQuery.parts.toPutRight.queryOptions({ input: {} }));
  const [chosen, setChosen] = useState<ShelfToPutRight | null>(null);
  return (
    <Page
      title="To put right"
      description="Shelves below nothing. Receive what came in without being written down, or say what the difference is."
    >
      <QueryView query={query}>
        {(shelves) =>
          shelves.length === 0 ? (
            <Empty
              title="Every shelf adds up"
              hint="A part that is issued though the shelf should hold none is listed here until somebody puts it right."
            />
          ) : (
            <Stack>
              <Shelves shelves={shelves} onChoose={setChosen} />
              <PutRightDialog shelf={chosen} onClose={() => setChosen(null)} />
            </Stack>
          )
        }
      </QueryView>
    </Page>
  );
}

function Shelves(props: {
  shelves: readonly ShelfToPutRight[];
  onChoose: (shelf: ShelfToPutRight) => void;
}) {
  const format = useFormat();
  const { locale } = useShop();
  return (
    <Sheet>
      <Table className={classes.parts}>
        <Table.Thead>
          <Table.Tr>
            <Table.Th>Part</Table.Th>
            <Table.Th>Bin</Table.Th>
            <Table.Th className={classes.figure}>On hand</Table.Th>
            <Table.Th>Since</Table.Th>
            <Table.Th>Reason given</Table.Th>
            <Table.Th>
              <span className={classes.hidden}>Put right</span>
            </Table.Th>
          </Table.Tr>
        </Table.Thead>
        <Table.Tbody>
          {props.shelves.map((shelf) => (
            <Table.Tr key={shelf.id}>
              <Table.Td>
                <Anchor component={Link} inherit to={`/part/${shelf.id}`}>
                  {shelf.number}
                </Anchor>{' '}
                {shelf.description}
              </Table.Td>
              <Table.Td>{shelf.bin === '' ? '–' : shelf.bin}</Table.Td>
              <Table.Td className={classes.figure}>
                −{formatQuantity(-shelf.onHand, locale)} {shelf.unit}
              </Table.Td>
              <Table.Td>{format.instant(shelf.since)}</Table.Td>
              <Table.Td>
                {shelf.reason}
                <Text size="xs" c="dimmed">
                  {shelf.by}
                  {shelf.jobCode !== '' && (
                    <>
                      {', for '}
                      <Anchor component={Link} inherit to={`/job/${shelf.jobCode}/parts`}>
                        {shelf.jobCode}
                      </Anchor>
                    </>
                  )}
                </Text>
              </Table.Td>
              <Table.Td>
                <Button
                  size="compact-sm"
                  variant="default"
                  aria-label={`Put ${shelf.number} right`}
                  onClick={() => props.onChoose(shelf)}
                >
                  Put right
                </Button>
              </Table.Td>
            </Table.Tr>
          ))}
        </Table.Tbody>
      </Table>
    </Sheet>
  );
}
