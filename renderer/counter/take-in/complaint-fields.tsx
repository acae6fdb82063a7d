import { Badge, Group, Stack, Text, Textarea, TextInput } from '@mantine/core';
import { IconCheck, IconPencil } from '@tabler/icons-react';
import { fold } from '../../../shared/work/fold.ts';
import { SYMPTOM_LABELS } from '../../../shared/work/vocabulary.ts';
import type { TakeInDraft } from './draft.ts';
import type { Suggestion } from './suggesting-input.tsx';
import { pieces, readSymptoms, symptomsFor } from './symptom-words.ts';
import classes from './take-in.module.css';
import { TokenField } from './token-field.tsx';
import { tooLong } from './too-long.ts';

/** What people usually leave with a machine; anything else is typed. */
const USUALLY_LEFT = ['key', 'bag', 'blade', 'charger', 'fuel cap', 'wheel', 'chain', 'manual'];

const suggestSymptoms = (piece: string): Suggestion[] =>
  symptomsFor(piece).map((symptom) => ({
    value: SYMPTOM_LABELS[symptom],
    label: SYMPTOM_LABELS[symptom],
  }));

const suggestLeft = (piece: string): Suggestion[] =>
  piece === ''
    ? []
    : USUALLY_LEFT.filter((thing) => thing.startsWith(fold(piece)) && thing !== fold(piece)).map(
        (thing) => ({ value: thing, label: thing }),
      );

type ComplaintDraft = Pick<
  TakeInDraft,
  'complaint' | 'symptoms' | 'condition' | 'leftWith' | 'fuel' | 'lastService'
>;

interface ComplaintFieldsProps {
  draft: ComplaintDraft;
  change: (part: Partial<ComplaintDraft>) => void;
  faults: Partial<Record<keyof ComplaintDraft, string>>;
}

/** Why the machine is here and in what state it came. */
export function ComplaintFields({ draft, change, faults }: ComplaintFieldsProps) {
  return (
    <Stack gap="xs">
      <Textarea
        label="Complaint, in the customer’s words"
        description="Shift+Enter begins a new line."
        data-field="complaint"
        data-autofocus
        required
        autosize
        minRows={2}
        maxRows={6}
        value={draft.complaint}
        onChange={(event) => change({ complaint: event.currentTarget.value })}
        error={tooLong(draft.complaint, 2000) ?? faults.complaint}
      />
      <TokenField
        label="Symptoms"
        field="symptoms"
        value={draft.symptoms}
        onChange={(symptoms) => change({ symptoms })}
        suggest={suggestSymptoms}
        understood={<UnderstoodSymptoms typed={draft.symptoms} />}
        placeholder="For example: won’t start, smokes"
        error={faults.symptoms}
      />
      <Textarea
        label="Condition and missing parts"
        data-field="condition"
        autosize
        minRows={1}
        maxRows={5}
        value={draft.condition}
        onChange={(event) => change({ condition: event.currentTarget.value })}
        error={tooLong(draft.condition, 1900) ?? faults.condition}
      />
      <TokenField
        label="Left with it"
        field="leftWith"
        value={draft.leftWith}
        onChange={(leftWith) => change({ leftWith })}
        suggest={suggestLeft}
        understood={<LeftThings typed={draft.leftWith} />}
        placeholder="For example: key, bag"
        error={faults.leftWith}
      />
      <div className={classes.wideAndShort}>
        <TextInput
          label="Fuel and its age"
          data-field="fuel"
          value={draft.fuel}
          onChange={(event) => change({ fuel: event.currentTarget.value })}
          error={faults.fuel}
          maxLength={200}
          autoComplete="off"
        />
        <TextInput
          label="Last service"
          data-field="lastService"
          value={draft.lastService}
          onChange={(event) => change({ lastService: event.currentTarget.value })}
          error={faults.lastService}
          maxLength={200}
          autoComplete="off"
        />
      </div>
    </Stack>
  );
}

function UnderstoodSymptoms({ typed }: { typed: string }) {
  const { symptoms, otherWords } = readSymptoms(typed);
  if (symptoms.length + otherWords.length === 0)
    return <Text size="xs">The first letters are enough; a comma between them.</Text>;
  return (
    <Group gap={4}>
      {symptoms.map((symptom) => (
        <Badge key={symptom} variant="light" leftSection={<IconCheck size={13} aria-hidden />}>
          {SYMPTOM_LABELS[symptom]}
        </Badge>
      ))}
      {otherWords.map((word) => (
        <Badge
          key={word}
          variant="outline"
          color="gray"
          leftSection={<IconPencil size={13} aria-hidden />}
        >
          {word}: noted with the condition
        </Badge>
      ))}
    </Group>
  );
}

function LeftThings({ typed }: { typed: string }) {
  const things = pieces(typed);
  if (things.length === 0) return <Text size="xs">A comma between them.</Text>;
  return (
    <Text size="xs">
      {things.length === 1 ? 'One thing' : `${things.length} things`}: {things.join(' · ')}
    </Text>
  );
}
