import { Anchor, Box, Table, Text } from '@mantine/core';
import type { ReactNode } from 'react';
import { Link } from 'react-router';
import type {
  PriceFileLine,
  RepricedPart,
  UnreadableLine,
} from '../../../shared/contract/parts/index.ts';
import { LINE_PROBLEM_SENTENCES } from '../../../shared/work/parts/price-file/words.ts';
import { Sheet } from '../../common/sheet.tsx';
import { useMoney } from '../../common/shop.tsx';
import classes from './price-files.module.css';
import { useCount } from './use-count.ts';

function LinesTable({ head, children }: { head: ReactNode; children: ReactNode }) {
  return (
    <Box component="section" className={classes.scroll} aria-label="Lines" tabIndex={0}>
      <Sheet>
        <Table className={classes.lines}>
          <Table.Thead>
            <Table.Tr>{head}</Table.Tr>
          </Table.Thead>
          <Table.Tbody>{children}</Table.Tbody>
        </Table>
      </Sheet>
    </Box>
  );
}

/** An amount, and under it what it was before. */
function FormerAndNow({ former, now }: { former: number | null; now: number | null }) {
  const money = useMoney();
  const text = (amount: number | null) => (amount === null ? '–' : money(amount));
  return (
    <>
      {text(now)}
      {former !== null && former !== now && (
        <Text size="sm" c="dimmed">
          was {text(former)}
        </Text>
      )}
    </>
  );
}

export function PriceLines({ lines }: { lines: readonly PriceFileLine[] }) {
  const count = useCount();
  return (
    <LinesTable
      head={
        <>
          <Table.Th className={classes.figure}>Line</Table.Th>
          <Table.Th>Number</Table.Th>
          <Table.Th>Description</Table.Th>
          <Table.Th className={classes.figure}>Cost</Table.Th>
          <Table.Th className={classes.figure}>List price</Table.Th>
        </>
      }
    >
      {lines.map((line) => (
        <Table.Tr key={line.line}>
          <Table.Td className={classes.figure}>{count(line.line)}</Table.Td>
          <Table.Td className={classes.number}>
            {line.number}
            {line.supersededBy !== '' && (
              <Text size="sm" fw={400}>
                replaced by {line.supersededBy}
              </Text>
            )}
          </Table.Td>
          <Table.Td>{line.description}</Table.Td>
          <Table.Td className={classes.figure}>
            <FormerAndNow former={line.formerCost} now={line.cost} />
          </Table.Td>
          <Table.Td className={classes.figure}>
            <FormerAndNow former={line.formerListPrice} now={line.listPrice} />
          </Table.Td>
        </Table.Tr>
      ))}
    </LinesTable>
  );
}

export function UnreadableLines({ lines }: { lines: readonly UnreadableLine[] }) {
  const count = useCount();
  return (
    <LinesTable
      head={
        <>
          <Table.Th className={classes.figure}>Line</Table.Th>
          <Table.Th>Why it can’t be used</Table.Th>
          <Table.Th>What stands there</Table.Th>
        </>
      }
    >
      {lines.map(({ line, problem, firstLine, raw }) => (
        <Table.Tr key={line}>
          <Table.Td className={classes.figure}>{count(line)}</Table.Td>
          <Table.Td miw="16rem">
            {LINE_PROBLEM_SENTENCES[problem]}
            {firstLine !== null && ` First on line ${count(firstLine)}.`}
          </Table.Td>
          <Table.Td className={classes.raw}>{raw}</Table.Td>
        </Table.Tr>
      ))}
    </LinesTable>
  );
}

export function RepricedParts({ parts }: { parts: readonly RepricedPart[] }) {
  return (
    <LinesTable
      head={
        <>
          <Table.Th>Number</Table.Th>
          <Table.Th>Part</Table.Th>
          <Table.Th className={classes.figure}>Cost</Table.Th>
          <Table.Th className={classes.figure}>Sells at</Table.Th>
        </>
      }
    >
      {parts.map((part) => (
        <Table.Tr key={part.id}>
          <Table.Td className={classes.number}>
            <Anchor component={Link} to={`/part/${part.id}`}>
              {part.number}
            </Anchor>
            {part.supersededBy !== '' && (
              <Text size="sm" fw={400}>
                replaced by {part.supersededBy}
              </Text>
            )}
          </Table.Td>
          <Table.Td>{part.description}</Table.Td>
          <Table.Td className={classes.figure}>
            <FormerAndNow former={part.formerCost} now={part.cost} />
          </Table.Td>
          <Table.Td className={classes.figure}>
            <FormerAndNow former={part.formerlySellsAt} now={part.sellsAt} />
          </Table.Td>
        </Table.Tr>
      ))}
    </LinesTable>
  );
}
