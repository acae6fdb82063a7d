import { Stack, TextInput } from '@mantine/core';
import { useQueryClient } from '@tanstack/react-query';
import { type KeyboardEvent, useRef } from 'react';
import type { Machine } from '../../../shared/contract/counter/index.ts';
import { foldNumber } from '../../../shared/work/fold.ts';
import { deskQuery } from '../../common/desk.ts';
import type { DraftPart } from './draft.ts';
import { KindField } from './kind-field.tsx';
import { useMachinesLike, withSerial } from './lookups.ts';
import { machineInWords } from './machine-in-words.ts';
import { PlateInput, platesLike } from './plate-input.tsx';
import { SuggestingInput } from './suggesting-input.tsx';
import classes from './take-in.module.css';

interface MachineFieldsProps extends DraftPart {
  /** Somebody chose it. */
  onKnown: (machine: Machine) => void;
  /** The number that was left is exactly that of this machine. */
  onMet: (machine: Machine) => void;
  onKindEnter: (event: KeyboardEvent<HTMLInputElement>) => void;
  /** Machines of the make that is being typed, and the makes known from them. */
  plates: readonly { make: string; model: string }[];
  knownMakes: readonly string[];
}

/** The machine, serial number first: a known number fills in the rest. */
export function MachineFields(props: MachineFieldsProps) {
  const { draft, change, faults, onKnown, onMet, onKindEnter, plates, knownMakes } = props;
  const found = useMachinesLike(draft.serial, draft.knownCustomer?.id ?? null);
  const lookUp = useSerialLookUp(onMet);
  return (
    <Stack gap="xs">
      <div className={classes.pair}>
        <SuggestingInput
          label="Serial number"
          data-field="serial"
          value={draft.serial}
          onChange={(serial) => change({ serial })}
          suggestions={found.map((machine) => ({
            value: machine.id,
            label: [machineInWords(machine), machine.serial].filter(Boolean).join(', '),
            detail: machine.customerName,
          }))}
          eager={draft.knownCustomer !== null}
          dropdownWidth={300}
          onPick={(id) => {
            const picked = found.find((machine) => machine.id === id);
            if (picked) onKnown(picked);
          }}
          onBlur={() => lookUp(draft.serial)}
          error={faults.serial}
          maxLength={80}
        />
        <KindField
          value={draft.kind}
          onChange={(kind) => change({ kind })}
          error={faults.kind}
          onEnter={onKindEnter}
        />
      </div>
      <PlateInput
        label="Make and model of the machine"
        field="machine"
        value={draft.machine}
        onChange={(machine) => change({ machine })}
        knownMakes={knownMakes}
        suggestions={platesLike(plates, draft.machine)}
        onPick={(machine) => change({ machine })}
        error={faults.machine}
      />
    </Stack>
  );
}

/**
 * Asks once more when the field is left: a barcode reader is faster than the list of suggestions. One
 * machine with exactly this number is the machine; of several, somebody has to choose.
 */
function useSerialLookUp(onMet: (machine: Machine) => void): (serial: string) => void {
  const client = useQueryClient();
  const asked = useRef('');
  return (serial) => {
    const wanted = serial.trim();
    if (wanted === '' || wanted === asked.current) return;
    asked.current = wanted;
    client
      .fetchQuery(
        deskQuery.counter.findMachines.queryOptions({ input: { text: foldNumber(wanted) } }),
      )
      .then((machines) => {
        const [only, another] = withSerial(machines, wanted);
        if (only !== undefined && another === undefined) onMet(only);
      })
      .catch(() => {
        // The suggestions are help only; takeIn says so itself when the number is taken.
        asked.current = '';
      });
  };
}

interface EngineFieldsProps extends DraftPart {
  suggestions: { value: string; label: string; detail?: string }[];
  onPick: (id: string) => void;
  understood?: string;
  knownMakes: readonly string[];
}

/** The engine, as on its plate; a make and model that the spec book has are recognised. */
export function EngineFields(props: EngineFieldsProps) {
  const { draft, change, faults, suggestions, onPick, understood, knownMakes } = props;
  return (
    <Stack gap="xs">
      <PlateInput
        label="Make and model of the engine"
        field="engine"
        value={draft.engine}
        onChange={(engine) => change({ engine })}
        knownMakes={knownMakes}
        suggestions={suggestions}
        onPick={onPick}
        understood={understood}
        error={faults.engine}
      />
      <div className={classes.pair}>
        <TextInput
          label="Type code"
          data-field="typeCode"
          value={draft.typeCode}
          onChange={(event) => change({ typeCode: event.currentTarget.value })}
          error={faults.typeCode}
          maxLength={80}
          autoComplete="off"
        />
        <TextInput
          label="Engine serial"
          data-field="engineSerial"
          value={draft.engineSerial}
          onChange={(event) => change({ engineSerial: event.currentTarget.value })}
          error={faults.engineSerial}
          maxLength={80}
          autoComplete="off"
        />
      </div>
    </Stack>
  );
}
