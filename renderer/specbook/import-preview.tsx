import { Alert, Stack, Table, Text } from '@mantine/core';
import { IconAlertTriangle, IconEqual, IconPencil, IconPlus } from '@tabler/icons-react';
import type {
  FileIssue,
  ImportedSpecification,
  ImportPreview,
} from '../../shared/contract/specbook-exchange.ts';
import { FEATURE_LABELS } from '../../shared/work/features.ts';
import { printedLimits } from '../common/measure/measure-words.ts';
import { FIELD_LABELS } from './revised-fields.ts';
import classes from './specbook.module.css';

/** What an import would do to the book, or what is wrong with the file and on which line. */
export function ImportPreviewView({ preview }: { readonly preview: ImportPreview }) {
  const { model, newSources, specifications, issues } = preview;
  return (
    <Stack gap="sm">
      {issues.length > 0 && (
        <Alert
          role="alert"
          color="red"
          variant="light"
          icon={<IconAlertTriangle aria-hidden />}
          title="This file can’t be taken in as it is. Mend these and choose it again:"
        >
          <ul className={classes.issues}>
            {issues.map((issue) => (
              <li key={`${issue.line} ${issue.path} ${issue.message}`}>{issueWords(issue)}</li>
            ))}
          </ul>
        </Alert>
      )}
      {model !== null && (
        <Text>
          <strong>
            {model.make} {model.model}
          </strong>{' '}
          {model.isNew ? 'is new in the book.' : 'is in the book already.'}
          {model.differs.length > 0 &&
            ` The file has another ${model.differs.join(' and ')}; the book keeps its own.`}
          {newSources.length > 0 && ` New sources: ${newSources.join('; ')}.`}
        </Text>
      )}
      {specifications.length > 0 && (
        <Table.ScrollContainer minWidth={560}>
          <Table verticalSpacing={6} className={classes.changes}>
            <Table.Thead>
              <Table.Tr>
                <Table.Th>Specification</Table.Th>
                <Table.Th>In the file</Table.Th>
                <Table.Th>In the book</Table.Th>
                <Table.Th>What happens</Table.Th>
              </Table.Tr>
            </Table.Thead>
            <Table.Tbody>
              {specifications.map((each) => (
                <Table.Tr key={each.feature}>
                  <Table.Td>
                    {FEATURE_LABELS[each.feature]}
                    <Text size="sm" c="dimmed">
                      {each.source}
                    </Text>
                  </Table.Td>
                  <Table.Td>{printedLimits(each.inFile)}</Table.Td>
                  <Table.Td>{each.inBook === null ? '–' : printedLimits(each.inBook)}</Table.Td>
                  <Table.Td>
                    <Happens specification={each} />
                  </Table.Td>
                </Table.Tr>
              ))}
            </Table.Tbody>
          </Table>
        </Table.ScrollContainer>
      )}
      {model !== null && (
        <Text size="sm" c="dimmed">
          Whoever imports it has entered it: it is a single source until somebody here confirms it.
        </Text>
      )}
    </Stack>
  );
}

const CHANGES = {
  new: { icon: IconPlus, words: 'is added' },
  revised: { icon: IconPencil, words: 'becomes a revision' },
  unchanged: { icon: IconEqual, words: 'stays as it is' },
} as const;

function Happens({ specification }: { readonly specification: ImportedSpecification }) {
  const { icon: Icon, words } = CHANGES[specification.change];
  const { questioned } = specification;
  return (
    <>
      <Text size="sm" className={classes.inherited}>
        <Icon size={16} aria-hidden /> {words}
      </Text>
      {specification.changes.length > 0 && (
        <Text size="sm" c="dimmed">
          {specification.changes.map((field) => FIELD_LABELS[field]).join(', ')}
        </Text>
      )}
      {questioned !== null && (
        <Text size="sm" className={classes.unconfirmed}>
          <IconAlertTriangle size={16} aria-hidden /> {questioned.verdict} for its thread:{' '}
          {questioned.preloadShareOfProof.toFixed(2)} of the proof load
        </Text>
      )}
    </>
  );
}

const issueWords = ({ line, path, message }: FileIssue): string =>
  [line === null ? '' : `Line ${line}`, path === '' ? '' : `(${path})`, message]
    .filter((words) => words !== '')
    .join(line === null && path === '' ? '' : ' ');
