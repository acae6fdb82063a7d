import {
  Button,
  Collapse,
  Group,
  Modal,
  SimpleGrid,
  Stack,
  Text,
  Textarea,
  TextInput,
} from '@mantine/core';
import { type SyntheticEvent, useState } from 'react';
import type { JobDossier, PaperCard } from '../../../shared/contract/counter/index.ts';
import { deskQuery } from '../../common/desk.ts';
import { fieldErrors, RefusalAlert } from '../../common/refusal.tsx';
import { SaveOrCancel } from '../../common/save-or-cancel.tsx';
import { SignatureField, signatureInput } from '../../common/signature-field.tsx';
import { useBy } from '../../common/station.tsx';
import { useDraft } from '../../common/use-draft.ts';
import { useWrite } from '../../common/use-write.ts';
import { ReachByField } from '../take-in/agreed-fields.tsx';
import { ComplaintFields } from '../take-in/complaint-fields.tsx';
import { draftOf, factsOf } from './intake-draft.ts';
import { NewPapers } from './new-papers.tsx';

const HOURS = 'Give the running hours as a number, or leave them empty.';

interface AmendIntakeProps {
  job: JobDossier;
  onClose: () => void;
}

/** Mends what intake wrote down. What was signed stays; a new claim ticket names it. */
export function AmendIntake({ job, onClose }: AmendIntakeProps) {
  const by = useBy();
  const [draft, setDraft, clear] = useDraft(`amend.${job.code}`, draftOf(job));
  const [signs, setSigns] = useState(draft.signature !== null);
  const close = () => {
    clear();
    onClose();
  };
  const [papers, setPapers] = useState<readonly PaperCard[]>([]);
  const amend = useWrite(
    deskQuery.counter.amendIntake.mutationOptions({
      onSuccess: ({ claimTicket, tag }) => {
        clear();
        const issued = [claimTicket ?? [], tag ?? []].flat();
        if (issued.length === 0) onClose();
        else setPapers(issued);
      },
    }),
  );
  const change = (part: Partial<typeof draft>) => setDraft((before) => ({ ...before, ...part }));
  const facts = factsOf(draft);
  const errors = fieldErrors(amend.error);
  const submit = (event: SyntheticEvent) => {
    event.preventDefault();
    const { reason, signature } = draft;
    if (facts === null) return;
    const signed = signature && signatureInput(signature);
    amend.mutate({ by, jobId: job.id, ...facts, reason, signature: signed });
  };
  return (
    <Modal opened onClose={onClose} title={`Mend what came in with ${job.code}`} size="62rem">
      {papers.length > 0 ? (
        <NewPapers papers={papers} onClose={onClose} />
      ) : (
        <form onSubmit={submit} noValidate aria-label="Mend what came in">
          <Stack gap="xs">
            <Text size="sm" c="dimmed">
              The claim ticket that was signed stays as it is. A new one says what is mended here,
              and names the one before.
            </Text>
            <SimpleGrid cols={{ base: 1, sm: 2 }} spacing="lg">
              <ComplaintFields draft={draft} change={change} faults={errors} />
              <Stack gap="xs">
                <TextInput
                  label="Running hours of the engine"
                  inputMode="decimal"
                  maxLength={12}
                  autoComplete="off"
                  value={draft.engineHours}
                  error={facts === null ? HOURS : errors.engineHours}
                  onChange={(event) => change({ engineHours: event.currentTarget.value })}
                />
                <ReachByField
                  value={draft.reachBy}
                  onChange={(reachBy) => change({ reachBy })}
                  error={errors.reachBy}
                />
                <Textarea
                  label="Why it is mended"
                  description="It stands on the new claim ticket."
                  required
                  autosize
                  minRows={1}
                  maxLength={300}
                  value={draft.reason}
                  error={errors.reason}
                  onChange={(event) => change({ reason: event.currentTarget.value })}
                />
                {!signs && (
                  <Group>
                    <Button variant="subtle" onClick={() => setSigns(true)}>
                      The customer is here and signs
                    </Button>
                  </Group>
                )}
                <Collapse expanded={signs}>
                  <SignatureField
                    label="Customer’s signature"
                    value={draft.signature}
                    suggestedName={job.customerName}
                    onChange={(signature) => change({ signature })}
                  />
                </Collapse>
              </Stack>
            </SimpleGrid>
            <RefusalAlert error={amend.error} brief />
            <SaveOrCancel
              saving={amend.isPending}
              disabled={facts === null || draft.reason.trim() === ''}
              onCancel={close}
            />
          </Stack>
        </form>
      )}
    </Modal>
  );
}
