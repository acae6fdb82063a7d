import { Badge, Button, Select, Table, TextInput, VisuallyHidden } from '@mantine/core';
import { IconPencil, IconUserPlus } from '@tabler/icons-react';
import { useQuery } from '@tanstack/react-query';
import { type SyntheticEvent, useRef, useState } from 'react';
import type { Staff } from '../../shared/contract/office.ts';
import { STAFF_ROLE_LABELS, STAFF_ROLES, type StaffRole } from '../../shared/work/vocabulary.ts';
import { Card } from '../common/card.tsx';
import { deskQuery } from '../common/desk.ts';
import { Page, QueryView } from '../common/page.tsx';
import { fieldErrors, RefusalAlert } from '../common/refusal.tsx';
import { useBy, useStation } from '../common/station.tsx';
import { useDraft } from '../common/use-draft.ts';
import { useWrite } from '../common/use-write.ts';
import { AmendStaff } from './amend-staff.tsx';
import classes from './office.module.css';

/** Everybody who makes records; their names stand on papers. */
export function StaffPage() {
  const { staff: here } = useStation();
  const query = useQuery(deskQuery.office.staff.queryOptions({ input: {} }));
  const [changing, setChanging] = useState<Staff | null>(null);
  return (
    <Page
      title="Staff"
      description="Every reading, promise and payment names one of them. F8 changes who is at this station. The owner changes the list."
    >
      <div className={classes.form}>
        <Card title="On the list" flush>
          <QueryView query={query}>
            {(people) => (
              <Table horizontalSpacing="md" verticalSpacing="sm">
                <Table.Thead>
                  <Table.Tr>
                    <Table.Th>Name</Table.Th>
                    <Table.Th>Role</Table.Th>
                    <Table.Th>Standing</Table.Th>
                    <Table.Th>
                      <VisuallyHidden>Change</VisuallyHidden>
                    </Table.Th>
                  </Table.Tr>
                </Table.Thead>
                <Table.Tbody>
                  {people.map((person) => (
                    <Table.Tr key={person.id}>
                      <Table.Td fw={600}>{person.name}</Table.Td>
                      <Table.Td>{STAFF_ROLE_LABELS[person.role]}</Table.Td>
                      <Table.Td>
                        {person.active ? 'Works here' : 'No longer here'}
                        {person.id === here?.id && (
                          <Badge variant="light" ml="sm">
                            at this station
                          </Badge>
                        )}
                      </Table.Td>
                      <Table.Td ta="right">
                        <Button
                          variant="subtle"
                          aria-label={`Change ${person.name}`}
                          leftSection={<IconPencil size={18} aria-hidden />}
                          onClick={() => setChanging(person)}
                        >
                          Change
                        </Button>
                      </Table.Td>
                    </Table.Tr>
                  ))}
                </Table.Tbody>
              </Table>
            )}
          </QueryView>
        </Card>
        <AddStaff />
      </div>
      {changing !== null && (
        <AmendStaff key={changing.id} person={changing} onClose={() => setChanging(null)} />
      )}
    </Page>
  );
}

function AddStaff() {
  const by = useBy();
  const name = useRef<HTMLInputElement>(null);
  const [draft, setDraft, clear] = useDraft<{ name: string; role: StaffRole }>('staff.new', {
    name: '',
    role: 'bench',
  });
  const add = useWrite(
    deskQuery.office.addStaff.mutationOptions({
      onSuccess: () => {
        clear();
        name.current?.focus();
      },
    }),
  );
  const submit = (event: SyntheticEvent) => {
    event.preventDefault();
    add.mutate({ by, ...draft });
  };
  return (
    <Card title="Add somebody">
      <form onSubmit={submit}>
        <div className={classes.fields}>
          <TextInput
            ref={name}
            label="Name"
            required
            autoComplete="off"
            value={draft.name}
            error={fieldErrors(add.error).name}
            onChange={(event) => {
              const typed = event.currentTarget.value;
              setDraft((before) => ({ ...before, name: typed }));
            }}
          />
          <Select
            label="Role"
            data={STAFF_ROLES.map((value) => ({ value, label: STAFF_ROLE_LABELS[value] }))}
            value={draft.role}
            onChange={(role) => role !== null && setDraft((before) => ({ ...before, role }))}
          />
          <div className={classes.wide}>
            <RefusalAlert error={add.error} mb="sm" />
            <Button
              type="submit"
              loading={add.isPending}
              leftSection={<IconUserPlus size={20} aria-hidden />}
            >
              Add to the list
            </Button>
          </div>
        </div>
      </form>
    </Card>
  );
}
