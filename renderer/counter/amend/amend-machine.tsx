import { Fieldset, Modal, Select, SimpleGrid, Stack, TextInput } from '@mantine/core';
import { type SyntheticEvent, useState } from 'react';
import type { Machine, PaperCard } from '../../../shared/contract/counter/index.ts';
import { MACHINE_KIND_LABELS, MACHINE_KINDS } from '../../../shared/work/vocabulary.ts';
import { deskQuery } from '../../common/desk.ts';
import { fieldErrors, RefusalAlert } from '../../common/refusal.tsx';
import { SaveOrCancel } from '../../common/save-or-cancel.tsx';
import { useBy } from '../../common/station.tsx';
import { useDraft } from '../../common/use-draft.ts';
import { useWrite } from '../../common/use-write.ts';
import { NewPapers } from './new-papers.tsx';

const KINDS = MACHINE_KINDS.map((value) => ({ value, label: MACHINE_KIND_LABELS[value] }));

type OfMachine = 'make' | 'model' | 'serial';
type OfEngine = OfMachine | 'typeCode' | 'dateCode';

const platesOf = ({ kind, make, model, serial, engine }: Machine) => ({
  kind,
  make,
  model,
  serial,
  engine: {
    make: engine.make,
    model: engine.model,
    typeCode: engine.typeCode,
    serial: engine.serial,
    dateCode: engine.dateCode,
  },
});

interface AmendMachineProps {
  machine: Machine;
  onClose: () => void;
}

/** Mends what was read off the plates of a machine and its engine. */
export function AmendMachine({ machine, onClose }: AmendMachineProps) {
  const by = useBy();
  const [draft, setDraft, clear] = useDraft(`machine.${machine.id}`, platesOf(machine));
  const close = () => {
    clear();
    onClose();
  };
  const [papers, setPapers] = useState<readonly PaperCard[]>([]);
  const amend = useWrite(
    deskQuery.counter.amendMachine.mutationOptions({
      onSuccess: ({ tags }) => {
        clear();
        if (tags.length === 0) onClose();
        else setPapers(tags);
      },
    }),
  );
  const errors = fieldErrors(amend.error);
  const ofMachine = (name: OfMachine) => ({
    value: draft[name],
    error: errors[name],
    maxLength: 80,
    autoComplete: 'off',
    onChange: (event: { currentTarget: HTMLInputElement }) => {
      const { value } = event.currentTarget;
      setDraft((before) => ({ ...before, [name]: value }));
    },
  });
  const ofEngine = (name: OfEngine) => ({
    value: draft.engine[name],
    error: errors[`engine.${name}`],
    maxLength: name === 'dateCode' ? 40 : 80,
    autoComplete: 'off',
    onChange: (event: { currentTarget: HTMLInputElement }) => {
      const { value } = event.currentTarget;
      setDraft((before) => ({ ...before, engine: { ...before.engine, [name]: value } }));
    },
  });
  const submit = (event: SyntheticEvent) => {
    event.preventDefault();
    amend.mutate({ by, id: machine.id, ...draft });
  };
  return (
    <Modal opened onClose={onClose} title="Mend what stands on the plates" size="40rem">
      {papers.length > 0 ? (
        <NewPapers papers={papers} onClose={onClose} />
      ) : (
        <form onSubmit={submit} aria-label="Mend what stands on the plates">
          <Stack gap="md">
            <Fieldset legend="Machine">
              <SimpleGrid cols={{ base: 1, xs: 2 }} spacing="sm">
                <TextInput label="Serial number" data-autofocus {...ofMachine('serial')} />
                <Select
                  label="Kind"
                  data={KINDS}
                  searchable
                  allowDeselect={false}
                  value={draft.kind}
                  onChange={(kind) => kind !== null && setDraft((it) => ({ ...it, kind }))}
                />
                <TextInput label="Make" {...ofMachine('make')} />
                <TextInput label="Model" {...ofMachine('model')} />
              </SimpleGrid>
            </Fieldset>
            <Fieldset legend="Engine">
              <SimpleGrid cols={{ base: 1, xs: 2 }} spacing="sm">
                <TextInput label="Engine make" {...ofEngine('make')} />
                <TextInput label="Engine model" {...ofEngine('model')} />
                <TextInput label="Type code" {...ofEngine('typeCode')} />
                <TextInput label="Engine serial" {...ofEngine('serial')} />
                <TextInput label="Date code" {...ofEngine('dateCode')} />
              </SimpleGrid>
            </Fieldset>
            <RefusalAlert error={amend.error} brief />
            <SaveOrCancel saving={amend.isPending} onCancel={close} />
          </Stack>
        </form>
      )}
    </Modal>
  );
}
