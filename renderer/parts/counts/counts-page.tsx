import { Anchor, Button, Stack, Table, Text } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { Link, useNavigate } from 'react-router';
import type { BinToCount, CountCard } from '../../../shared/contract/parts/index.ts';
import { Card } from '../../common/card.tsx';
import { deskQuery } from '../../common/desk.ts';
import { useFormat } from '../../common/format.ts';
import { Empty, Page, QueryView } from '../../common/page.tsx';
import { RefusalAlert } from '../../common/refusal.tsx';
import { useBy } from '../../common/station.tsx';
import { useWrite } from '../../common/use-write.ts';
import { binWords } from './bin-words.ts';
import classes from './counts.module.css';

/** Counting the shelves, a bin at a time: what is going on, what is due, what was found. */
export function CountsPage() {
  const bins = useQuery(deskQuery.parts.binsToCount.queryOptions({ input: {} }));
  const counts = useQuery(deskQuery.parts.counts.queryOptions({ input: {} }));
  return (
    <Page
      title="Counting"
      description="A bin or a whole rack at a time. What should be there is shown when the figures are in."
    >
      <Stack>
        <QueryView query={counts}>{(cards) => <GoingOn cards={cards} />}</QueryView>
        <QueryView query={bins}>
          {(list) =>
            list.length === 0 ? (
              <Empty
                title="There is nothing to count"
                hint="Add parts first, and say their bins."
              />
            ) : (
              <Bins bins={list} />
            )
          }
        </QueryView>
        <QueryView query={counts}>{(cards) => <Closed cards={cards} />}</QueryView>
      </Stack>
    </Page>
  );
}

const isGoingOn = ({ closedAt, unexplained }: CountCard) => closedAt === null || unexplained > 0;

function standing({ closedAt, counted, unexplained }: CountCard): string {
  if (closedAt === null)
    return counted === 0 ? 'Begun' : `${counted} ${counted === 1 ? 'part' : 'parts'} counted`;
  return unexplained === 1 ? '1 difference to explain' : `${unexplained} differences to explain`;
}

function GoingOn({ cards }: { cards: readonly CountCard[] }) {
  const format = useFormat();
  const open = cards.filter(isGoingOn);
  if (open.length === 0) return null;
  return (
    <Card title="To go on with" flush>
      <Table className={classes.counts} verticalSpacing="xs">
        <Table.Tbody>
          {open.map((card) => (
            <Table.Tr key={card.id}>
              <Table.Td>
                <Anchor inherit fw={600} component={Link} to={`/parts/count/${card.id}`}>
                  {binWords(card.bin)}
                </Anchor>
              </Table.Td>
              <Table.Td>{standing(card)}</Table.Td>
              <Table.Td>
                {card.by}, {format.instant(card.at)}
              </Table.Td>
            </Table.Tr>
          ))}
        </Table.Tbody>
      </Table>
    </Card>
  );
}

function Bins({ bins }: { bins: readonly BinToCount[] }) {
  const by = useBy();
  const navigate = useNavigate();
  const format = useFormat();
  const open = useWrite(
    deskQuery.parts.openCount.mutationOptions({
      onSuccess: ({ id }) => navigate(`/parts/count/${id}`),
    }),
  );
  return (
    <Card title="Bins" flush>
      <RefusalAlert error={open.error} />
      <div className={classes.scroll}>
        <Table className={classes.counts} verticalSpacing={6}>
          <Table.Thead>
            <Table.Tr>
              <Table.Th>Bin</Table.Th>
              <Table.Th className={classes.figure}>Parts</Table.Th>
              <Table.Th>Counted last</Table.Th>
              <Table.Th>
                <span className={classes.hidden}>Count</span>
              </Table.Th>
            </Table.Tr>
          </Table.Thead>
          <Table.Tbody>
            {bins.map(({ bin, bins: within, parts, countedOn, openCountId }) => (
              <Table.Tr key={bin}>
                <Table.Td>
                  <span className={classes.number}>{bin === '' ? 'No bin' : bin}</span>
                  {within > 1 && (
                    <Text span inherit c="dimmed">
                      {' '}
                      all {within} bins
                    </Text>
                  )}
                </Table.Td>
                <Table.Td className={classes.figure}>{parts}</Table.Td>
                <Table.Td>
                  {countedOn === null ? (
                    <Text span inherit c="dimmed">
                      Never
                    </Text>
                  ) : (
                    format.date(countedOn)
                  )}
                </Table.Td>
                <Table.Td className={classes.figure}>
                  {openCountId === null ? (
                    <Button
                      size="compact-sm"
                      variant="subtle"
                      aria-label={`Count ${binWords(bin)}`}
                      loading={open.isPending && open.variables?.bin === bin}
                      onClick={() => open.mutate({ by, bin })}
                    >
                      Count
                    </Button>
                  ) : (
                    <Button
                      size="compact-sm"
                      variant="subtle"
                      component={Link}
                      to={`/parts/count/${openCountId}`}
                      aria-label={`Go on with ${binWords(bin)}`}
                    >
                      Go on
                    </Button>
                  )}
                </Table.Td>
              </Table.Tr>
            ))}
          </Table.Tbody>
        </Table>
      </div>
    </Card>
  );
}

function Closed({ cards }: { cards: readonly CountCard[] }) {
  const format = useFormat();
  const closed = cards.filter((card) => !isGoingOn(card));
  if (closed.length === 0) return null;
  return (
    <Card title="Counted" flush>
      <Table className={classes.counts} verticalSpacing={6}>
        <Table.Tbody>
          {closed.map(({ id, bin, by, closedAt, counted }) => (
            <Table.Tr key={id}>
              <Table.Td>
                <Anchor inherit component={Link} to={`/parts/count/${id}`}>
                  {binWords(bin)}
                </Anchor>
              </Table.Td>
              <Table.Td>
                {counted} {counted === 1 ? 'part' : 'parts'}
              </Table.Td>
              <Table.Td>
                {by}
                {closedAt !== null && `, ${format.instant(closedAt)}`}
              </Table.Td>
            </Table.Tr>
          ))}
        </Table.Tbody>
      </Table>
    </Card>
  );
}
