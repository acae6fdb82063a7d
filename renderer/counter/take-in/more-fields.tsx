import { Collapse, Stack, Textarea, TextInput, UnstyledButton } from '@mantine/core';
import { IconChevronDown, IconChevronRight } from '@tabler/icons-react';
import { useId, useState } from 'react';
import type { DraftPart } from './draft.ts';

/**
 * What is rarely asked at the counter. It comes after the button that takes the machine in, so that it
 * costs a hurried hand no key.
 */
export function MoreFields({ draft, change, faults }: DraftPart) {
  const filled = [draft.address, draft.note, draft.dateCode, draft.engineHours].some(
    (text) => text !== '',
  );
  const refused = Boolean(faults.address ?? faults.note ?? faults.dateCode ?? faults.engineHours);
  const [opened, setOpened] = useState(filled);
  const shown = opened || refused;
  const region = useId();
  const Chevron = shown ? IconChevronDown : IconChevronRight;
  return (
    <div>
      <UnstyledButton
        aria-expanded={shown}
        aria-controls={region}
        onClick={() => setOpened(!shown)}
        fw={600}
        fz="sm"
        py={6}
      >
        <Chevron size={16} aria-hidden style={{ verticalAlign: '-3px' }} /> Less often needed:
        address, note, date code and running hours of the engine
      </UnstyledButton>
      <Collapse expanded={shown} id={region}>
        <Stack gap="xs" pt={4}>
          {draft.knownCustomer === null && (
            <>
              <Textarea
                label="Address"
                data-field="address"
                autosize
                minRows={2}
                maxLength={400}
                value={draft.address}
                onChange={(event) => change({ address: event.currentTarget.value })}
                error={faults.address}
              />
              <Textarea
                label="Note on the customer"
                data-field="note"
                autosize
                minRows={1}
                maxLength={2000}
                value={draft.note}
                onChange={(event) => change({ note: event.currentTarget.value })}
                error={faults.note}
              />
            </>
          )}
          {draft.knownMachine === null && (
            <TextInput
              label="Date code of the engine"
              data-field="dateCode"
              maxLength={40}
              value={draft.dateCode}
              onChange={(event) => change({ dateCode: event.currentTarget.value })}
              error={faults.dateCode}
              autoComplete="off"
            />
          )}
          <TextInput
            label="Running hours of the engine"
            description="From its meter, or as the customer says."
            data-field="engineHours"
            inputMode="decimal"
            maxLength={12}
            value={draft.engineHours}
            onChange={(event) => change({ engineHours: event.currentTarget.value })}
            error={faults.engineHours}
            autoComplete="off"
          />
        </Stack>
      </Collapse>
    </div>
  );
}
