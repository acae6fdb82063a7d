import { Anchor, Button, Table, Text } from '@mantine/core';
import { useState } from 'react';
import { Link } from 'react-router';
import type { JobPart, JobParts, PartName } from '../../../shared/contract/parts/index.ts';
import { formatQuantity } from '../../../shared/money/index.ts';
import { useShop } from '../../common/shop.tsx';
import classes from './job-parts.module.css';
import { PartStanding } from './part-standing.tsx';
import { TakeBackDialog } from './take-back-dialog.tsx';

/** A part that is with the job, of the line's own number or one in its place. */
export interface WithJob {
  part: PartName;
  withJob: number;
}

/** The parts of a job, one line each; unused ones go back from here. */
export function JobPartsTable({ job }: { job: JobParts }) {
  const { locale } = useShop();
  const [back, setBack] = useState<WithJob | null>(null);
  const figure = (thousandths: number) =>
    thousandths === 0 ? '–' : formatQuantity(thousandths, locale);
  return (
    <>
      <Table.ScrollContainer minWidth={720}>
        <Table className={classes.parts}>
          <Table.Thead>
            <Table.Tr>
              <Table.Th>Part</Table.Th>
              <Table.Th>Bin</Table.Th>
              <Table.Th className={classes.figure}>Needed</Table.Th>
              <Table.Th className={classes.figure}>Kept for it</Table.Th>
              <Table.Th className={classes.figure}>Issued</Table.Th>
              <Table.Th className={classes.figure}>Missing</Table.Th>
              <Table.Th>How it stands</Table.Th>
              <Table.Th>
                <span className={classes.hidden}>Take back</span>
              </Table.Th>
            </Table.Tr>
          </Table.Thead>
          <Table.Tbody>
            {job.parts.map((line) => (
              <Table.Tr key={line.part.id}>
                <Table.Td>
                  <Anchor component={Link} inherit to={`/part/${line.part.id}`}>
                    {line.part.number}
                  </Anchor>{' '}
                  {line.part.description}
                  <InItsPlace line={line} />
                </Table.Td>
                <Table.Td className={classes.bin}>
                  {line.part.bin === '' ? '–' : line.part.bin}
                </Table.Td>
                <Table.Td className={classes.figure}>
                  {figure(line.needed)} {line.needed === 0 ? '' : line.part.unit}
                </Table.Td>
                <Table.Td className={classes.figure}>{figure(line.promised)}</Table.Td>
                <Table.Td className={classes.figure}>
                  {figure(line.issued)}
                  {line.returned > 0 && (
                    <Text size="xs" c="dimmed">
                      {figure(line.returned)} came back
                    </Text>
                  )}
                </Table.Td>
                <Table.Td className={classes.figure}>
                  <Text span fw={line.missing > 0 ? 700 : undefined}>
                    {figure(line.missing)}
                  </Text>
                </Table.Td>
                <Table.Td>
                  <PartStanding line={line} />
                </Table.Td>
                <Table.Td className={classes.figure}>
                  {withJobOf(line).map((held) => (
                    <Button
                      key={held.part.id}
                      size="compact-sm"
                      variant="subtle"
                      aria-label={`Take ${held.part.number} back`}
                      onClick={() => setBack(held)}
                    >
                      Take back
                    </Button>
                  ))}
                </Table.Td>
              </Table.Tr>
            ))}
          </Table.Tbody>
        </Table>
      </Table.ScrollContainer>
      <TakeBackDialog jobId={job.jobId} held={back} onClose={() => setBack(null)} />
    </>
  );
}

const withJobOf = ({ part, withJob, inItsPlace }: JobPart): WithJob[] =>
  [
    { part, withJob },
    ...inItsPlace.map((other) => ({ part: other, withJob: other.withJob })),
  ].filter((held) => held.withJob > 0);

/** Other numbers of the same part: what lies under them, and what of them the job has. */
function InItsPlace({ line }: { line: JobPart }) {
  const { locale } = useShop();
  return line.inItsPlace.map((other) => {
    const amount = (thousandths: number) => `${formatQuantity(thousandths, locale)} ${other.unit}`;
    const facts = [
      other.withJob > 0 ? `${amount(other.withJob)} issued` : '',
      other.promised > 0 ? `${amount(other.promised)} for this job` : '',
      other.onHand > 0 ? `${amount(other.onHand)} on hand` : '',
      other.bin === '' ? '' : `bin ${other.bin}`,
    ].filter(Boolean);
    return (
      <Text key={other.id} size="sm" c="dimmed">
        {other.former ? 'Former number' : 'Newer number'}{' '}
        <Anchor component={Link} inherit to={`/part/${other.id}`}>
          {other.number}
        </Anchor>
        : {facts.join(', ')}
      </Text>
    );
  });
}
