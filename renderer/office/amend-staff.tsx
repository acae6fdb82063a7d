import { Checkbox, Modal, Select, Stack, Text, TextInput } from '@mantine/core';
import { type SyntheticEvent, useState } from 'react';
import type { Staff } from '../../shared/contract/office.ts';
import { STAFF_ROLE_LABELS, STAFF_ROLES } from '../../shared/work/vocabulary.ts';
import { deskQuery } from '../common/desk.ts';
import { fieldErrors, RefusalAlert } from '../common/refusal.tsx';
import { SaveOrCancel } from '../common/save-or-cancel.tsx';
import { useBy } from '../common/station.tsx';
import { useWrite } from '../common/use-write.ts';

interface AmendStaffProps {
  person: Staff;
  onClose: () => void;
}

/** What somebody is called and does here, and whether they still work here. */
export function AmendStaff({ person, onClose }: AmendStaffProps) {
  const by = useBy();
  const [draft, setDraft] = useState(person);
  const amend = useWrite(deskQuery.office.amendStaff.mutationOptions({ onSuccess: onClose }));
  const change = (part: Partial<Staff>) => setDraft((before) => ({ ...before, ...part }));
  const submit = (event: SyntheticEvent) => {
    event.preventDefault();
    const { id, name, role, active } = draft;
    amend.mutate({ by, id, name, role, active });
  };
  return (
    <Modal opened onClose={onClose} title={`Change ${person.name}`}>
      <form onSubmit={submit} aria-label="Change somebody on the staff list">
        <Stack gap="sm">
          <TextInput
            label="Name"
            required
            data-autofocus
            autoComplete="off"
            maxLength={120}
            value={draft.name}
            error={fieldErrors(amend.error).name}
            onChange={(event) => change({ name: event.currentTarget.value })}
          />
          <Select
            label="Role"
            data={STAFF_ROLES.map((value) => ({ value, label: STAFF_ROLE_LABELS[value] }))}
            value={draft.role}
            allowDeselect={false}
            onChange={(role) => role !== null && change({ role })}
          />
          <Checkbox
            label="Works here"
            description="Who no longer does can’t be chosen at a station"
            checked={draft.active}
            onChange={(event) => change({ active: event.currentTarget.checked })}
          />
          <Text size="sm" c="dimmed">
            Papers that were issued keep the name that stands on them.
          </Text>
          <RefusalAlert error={amend.error} brief />
          <SaveOrCancel saving={amend.isPending} onCancel={onClose} />
        </Stack>
      </form>
    </Modal>
  );
}
