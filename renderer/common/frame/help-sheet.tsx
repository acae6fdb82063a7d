import { Kbd, Modal, Table, Text, Title } from '@mantine/core';
import { Fragment } from 'react';
import { GO_KEYS, JOB_KEYS, SHORTCUTS } from '../keyboard.ts';
import classes from './help-sheet.module.css';

/** The keys that work from anywhere, and how a scanner is used. */
export function HelpSheet({ opened, onClose }: { opened: boolean; onClose: () => void }) {
  return (
    <Modal opened={opened} onClose={onClose} title="Keys" size="46rem">
      <div className={classes.columns}>
        <KeyTable
          title="Anywhere"
          rows={SHORTCUTS.map(({ keys, does }) => ({ keys, joint: '+', does }))}
        />
        <div>
          <KeyTable
            title="Rooms: G, then a letter"
            rows={GO_KEYS.map(({ key, does }) => ({
              keys: ['G', key.toUpperCase()],
              joint: 'then',
              does,
            }))}
          />
          <KeyTable
            title="In a job: G, then a letter"
            rows={JOB_KEYS.map(({ key, does }) => ({
              keys: ['G', key.toUpperCase()],
              joint: 'then',
              does,
            }))}
          />
        </div>
      </div>
      <Title order={3} mt="md">
        Barcode reader
      </Title>
      <Text size="sm">
        Scan a machine’s tag on any page and its job opens; no field needs the focus, and a field
        that has it keeps what you typed. Set the reader to send Enter or Tab after the code.
      </Text>
    </Modal>
  );
}

interface KeyRow {
  keys: readonly string[];
  joint: string;
  does: string;
}

function KeyTable({ title, rows }: { title: string; rows: readonly KeyRow[] }) {
  return (
    <section>
      <Title order={3} mb={4}>
        {title}
      </Title>
      <Table verticalSpacing={5} horizontalSpacing="xs" mb="md">
        <Table.Tbody>
          {rows.map((row) => (
            <Table.Tr key={row.does}>
              <Table.Th scope="row" className={classes.keys}>
                {row.keys.map((key, index) => (
                  <Fragment key={key}>
                    {index > 0 && <span className={classes.joint}> {row.joint} </span>}
                    <Kbd>{key}</Kbd>
                  </Fragment>
                ))}
              </Table.Th>
              <Table.Td>{row.does}</Table.Td>
            </Table.Tr>
          ))}
        </Table.Tbody>
      </Table>
    </section>
  );
}
